// A wort cooler of plates: how cold it can go, and the water it takes.
import { celsius, litres, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';

/** Heat of a litre of wort, kJ/(L K): water’s, 4.18; sugar makes wort heavier and each kilogram hold less, to within 1 % up to 20 °P; from memory. */
export const WORT_HEAT = 4.18;

export interface Cooler {
  readonly wort: Quantity<'volume20'>;
  readonly from: Quantity<'temperature'>;
  readonly wanted: Quantity<'temperature'>;
  /** Cooling water as it comes, and as it may leave. */
  readonly water: Quantity<'temperature'>;
  readonly leaves: Quantity<'temperature'>;
  /** How near the cooler comes to the water’s temperature, K. */
  readonly near: Quantity<'temperatureDifference'>;
}
export interface Cooled {
  /** The coldest that this water can make the wort, °C. */
  readonly coldest: Quantity<'temperature'>;
  /** What the wort leaves at: as wanted, or as cold as can be. */
  readonly reached: Quantity<'temperature'>;
  readonly heat: Quantity<'energy'>;
  readonly litres: Quantity<'volume'>;
}

/**
 * Wort and water run past each other the other way, 0–100 °C, no heat lost to the room: what the wort gives the water takes.
 * Refuses water no colder than the wort by `near`, and water that would leave hotter than the wort comes, less `near`.
 * Source: balance of heat.
 * @example coolWort({ wort: litres20(1000), from: celsius(60), wanted: celsius(20), water: celsius(10), leaves: celsius(50), near: kelvins(2) }) // { coldest: 12, reached: 20, heat: 167.2, litres: 1000 } (1000 × 4.18 × 40 ÷ 1000, and the water warms by as much as the wort cools)
 */
export function coolWort({ wort, from, wanted, water, leaves, near }: Cooler): Cooled | Refusal {
  within('The wort, L,', wort, 0, 1e9);
  for (const each of [from, wanted, water, leaves]) within('The temperature, °C,', each, 0, 100);
  within('The nearness, K,', near, 0, 50);
  const coldest = celsius(water + near);
  if (from <= coldest) return refuse('Water so warm cannot cool this wort at all.');
  if (wanted >= from) return refuse('The wort is no warmer than it is wanted; it needs no cooler.');
  if (leaves <= water) return refuse('The water must leave warmer than it came, or it took no heat.');
  if (leaves > from - near) return refuse('The water cannot leave so hot: the wort that warms it is not hot enough.'); // prettier-ignore
  const reached = celsius(Math.max(wanted, coldest));
  const fall = from - reached;
  return {
    coldest,
    reached,
    heat: quantity('energy', (wort * WORT_HEAT * fall) / 1000),
    litres: litres((wort * fall) / (leaves - water)),
  };
}
