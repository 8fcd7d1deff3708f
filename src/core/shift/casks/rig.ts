// One filling in two stores, made ready for a shift: the casks, their stores, and how many bottles are wanted of each.
import { bottleSpirit } from '../../maturing/bottling.ts';
import { followCask, lossInStore, MOST_LOSS, type CaskPlan } from '../../maturing/cask.ts';
import { afterFirstDrink } from '../../maturing/to-bottle.ts';
import { count, litres20, percent, quantity, years, type Quantity, type Spirit } from '../../quantity.ts';
import { refuse, type Refusal } from '../../refusal.ts';
import { portionOf, type Amounts } from '../../spirit/amounts.ts';

export const MONTHS = 12; // in a year; a step is a month
export const LONGEST_IN_STORE = 30; // years that a cask is followed in a shift
export const SAMPLE_VOLUME = 0.2; // L that a regauge or a nosing takes; common practice, no source
const PER_CASE = 6; // bottles; it changes nothing in their number

export interface StoreOf {
  readonly name: string;
  /** Temperature, °C, and relative humidity, %. */
  readonly temperature: Quantity<'temperature'>;
  readonly humidity: Quantity<'percent'>;
}

/** What a shift is about: a filling, two stores, the house's loss and how it bottles. */
export interface CasksSetup {
  readonly filling: Spirit;
  readonly indrink: Quantity<'percent'>;
  readonly stores: readonly [StoreOf, StoreOf];
  /** The house's loss, found at a temperature, and the humidity at which its filling keeps its strength. */
  readonly alcoholLoss: Quantity<'percent'>;
  readonly foundAt: Quantity<'temperature'>;
  readonly steadyHumidity: Quantity<'percent'>;
  readonly residue: Quantity<'volume20'>;
  readonly filterLoss: Quantity<'percent'>;
  readonly bottle: Quantity<'bottle'>;
  readonly strength: Quantity<'strength'>;
}

/** What a number draws: the age that is wanted, how much longer each cask may lie, and what goes wrong. Months from the filling. */
export interface CasksEvents {
  readonly age: number;
  readonly slack: readonly [number, number];
  /** A cask leaks from a month on, L a month. */
  readonly leak: { readonly cask: 0 | 1; readonly from: number; readonly litres: number };
  readonly asks?: { readonly at: number };
}

export interface Rig {
  readonly setup: CasksSetup;
  readonly events: CasksEvents;
  readonly casks: readonly [Follow, Follow];
  /** Bottles wanted of each cask. */
  readonly wanted: readonly [number, number];
  /** Each cask by itself, month by month, as it would be without leak or sample: what a regauge is held against. */
  readonly expected: readonly [readonly Amounts[], readonly Amounts[]];
}
export type Follow = ReturnType<typeof followCask>;

/** The plan of a cask in one of the stores. */
function planOf(setup: CasksSetup, store: StoreOf): CaskPlan {
  const { filling, indrink, alcoholLoss, steadyHumidity, foundAt } = setup;
  return {
    volume: afterFirstDrink(filling.volume, indrink),
    strength: filling.strength,
    cask: { size: quantity('volume', filling.volume) },
    store: { alcoholLoss, steadyHumidity, humidity: store.humidity, temperature: store.temperature, measuredAt: foundAt }, // prettier-ignore
    years: years(LONGEST_IN_STORE),
  };
}

/**
 * Whole bottles from what is in a cask; none where it is weaker than the bottle.
 * @example bottlesInCask({ residue: 5 }, { ethanol: 0, water: 0 }) // 0 (an empty cask)
 */
export function bottlesInCask({ residue, filterLoss, bottle, strength }: CasksSetup, left: Amounts): number {
  const { volume, strength: is } = portionOf(left);
  if (volume <= residue || is < strength) return 0;
  const plan = { to: strength, lost: filterLoss, bottle, perCase: count(PER_CASE) };
  return bottleSpirit({ volume: litres20(volume - residue), strength: is }, plan).bottles;
}

/**
 * Makes two casks ready. Refuses a filling weaker than the bottle, and a store that takes more than can be followed.
 * @example rigOfCasks({ filling: { strength: 40 }, strength: 46 }, {}) // refuses: no stronger than it bottles (40 is below 46)
 */
export function rigOfCasks(setup: CasksSetup, events: CasksEvents): Rig | Refusal {
  if (!(setup.filling.strength > setup.strength)) return refuse('The house fills its casks no stronger than it bottles.');
  const plans = setup.stores.map((store) => planOf(setup, store));
  if (plans.some((plan) => lossInStore(plan) > MOST_LOSS)) return refuse('A store takes more of the alcohol than a cask is followed with.');
  const casks = plans.map(followCask);
  const expected = casks.map(({ filled, after }) => {
    const months = [filled];
    for (let month = 1; month <= LONGEST_IN_STORE * MONTHS; month++) months.push(after(months.at(-1)!, 1 / MONTHS));
    return months;
  });
  const wanted = expected.map((months, i) => bottlesInCask(setup, months[events.age + events.slack[i]!]!));
  if (Math.min(...wanted) < 1) return refuse('No whole bottle would be left when the age that is wanted is reached.');
  return { setup, events, casks: casks as [Follow, Follow], wanted: wanted as [number, number], expected: expected as [Amounts[], Amounts[]] };
} // prettier-ignore

/**
 * The loss of each store in a year, %.
 * @example lossOfStores({ setup: { filling: { volume: 200, strength: 60 }, indrink: 2, alcoholLoss: 2, steadyHumidity: 65, foundAt: 10, stores: [{ humidity: 70, temperature: 10 }] } }, 0) // 2 (as warm as where the loss was found)
 */
export const lossOfStores = ({ setup }: Rig, i: 0 | 1): Quantity<'percent'> => percent(lossInStore(planOf(setup, setup.stores[i]))); // prettier-ignore
