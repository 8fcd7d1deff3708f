// Several waters through one bed: what each carries off, and what the grains keep.
import { formatNumber as n } from '../format.ts';
import { kilograms, litres, litres20, percent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { WATER_DENSITY } from '../spirit/density.ts';
import { gravityFromPlato } from '../wort/extract.ts';
import { massOfWater } from './hot-water.ts';
import { HYDROLYSIS_WATER } from './wort.ts';

/** The grist in its tun. */
export interface Bed {
  readonly malt: Quantity<'mass'>;
  readonly moisture: Quantity<'percent'>;
  readonly extract: Quantity<'percent'>;
  /** Water that the drained grains keep, kg for each kg of grist. */
  readonly held: Quantity<'liquorRatio'>;
  /** Part of what the grains hold that a later water mixes with, 0–1. */
  readonly washing: Quantity<'share'>;
}
export interface Water {
  /** Litres, at its own temperature, for each kg of grist. */
  readonly ratio: Quantity<'liquorRatio'>;
  readonly temperature: Quantity<'temperature'>;
}
/** A runoff, or any mixture of runoffs: its water and its extract. */
export interface Runoff {
  readonly water: Quantity<'mass'>;
  readonly extract: Quantity<'mass'>;
}
export interface Drained {
  readonly runoffs: readonly Runoff[];
  /** What stays in the draff. */
  readonly left: Runoff;
}

/**
 * What each of the waters weighs, kg.
 * @example waterMasses({ malt: kilograms(100) }, [{ ratio: litresPerKilogram(10), temperature: celsius(20) }]) // [998.2] (IAPWS-95, 998.207)
 */
export function waterMasses({ malt }: Bed, waters: readonly Water[]): readonly Quantity<'mass'>[] {
  return waters.map(({ ratio, temperature }) => massOfWater(litres(malt * ratio), temperature));
}

/**
 * Water, kg, that the malt adds to the first water: its moisture less what its starch takes up; below 0 it takes.
 * @example ownWater({ malt: kilograms(1000), moisture: percent(4), extract: percent(75) }) // 10 (40 kg of moisture less 0.04 × 750)
 */
export function ownWater({ malt, moisture, extract }: Bed): number {
  return (malt * (moisture - HYDROLYSIS_WATER * extract)) / 100;
}

/**
 * Drains one water after another. The first dissolves all extract, is stirred evenly and leaves the grains full.
 * Each later water mixes evenly with the part `washing` of what they hold; the rest stays as it is, and the
 * grains are full again. `borrowed` is extract, kg, that the first water brings along. The malt's own moisture joins the
 * first water, and what starch takes up as it becomes sugar leaves it. Water and extract are conserved.
 * @example drainWaters({ malt: kilograms(1000), moisture: percent(4), extract: percent(75), held: litresPerKilogram(1), washing: share(1) }, [{ ratio: litresPerKilogram(0.5), temperature: celsius(20) }]) // refuses: nothing runs off (the grains keep more)
 */
export function drainWaters(
  bed: Bed,
  waters: readonly Water[],
  borrowed: Quantity<'mass'> = kilograms(0),
): Drained | Refusal {
  within('The part washed', bed.washing, 0, 1);
  within('The water held by the grains, kg/kg,', bed.held, Number.MIN_VALUE, 10);
  const held = bed.malt * bed.held;
  const own = ownWater(bed);
  let extract = (bed.malt * bed.extract) / 100 + borrowed;
  const runoffs: Runoff[] = [];
  for (const [i, water] of waterMasses(bed, waters).entries()) {
    const first = i === 0;
    const drained = first ? water + own - held : water;
    if (drained <= 0) {
      return refuse(
        `The first water, with the malt’s own moisture and less what the starch takes up, is ${n(water + own, 0)} kg, and the grains keep ${n(held, 0)} kg; nothing runs off.`,
      );
    }
    const mixed = first ? 1 : bed.washing;
    const carried = (mixed * extract * drained) / (drained + mixed * held);
    runoffs.push({ water: kilograms(drained), extract: kilograms(carried) });
    extract -= carried;
  }
  return { runoffs, left: { water: kilograms(held), extract: kilograms(extract) } };
}

/**
 * Several runoffs run together.
 * @example runoffsTogether([{ water: 100, extract: 20 }, { water: 50, extract: 5 }]) // { water: 150, extract: 25 } (100 + 50 and 20 + 5)
 */
export function runoffsTogether(runoffs: readonly Runoff[]): Runoff {
  const sum = (of: keyof Runoff) => kilograms(runoffs.reduce((total, runoff) => total + runoff[of], 0));
  return { water: sum('water'), extract: sum('extract') };
}

const STRONGEST = 34; // °P, where the sugar tables end

/**
 * Strength, gravity and volume at 20 °C of a liquid; refused above 34 °P, where the tables of sugar end.
 * @example asWort({ water: kilograms(88), extract: kilograms(12) }) // { plato: 12, gravity: 1.0483 } (12 of 100; Plato’s table)
 */
export function asWort({ water, extract }: Runoff):
  | {
      readonly plato: Quantity<'plato'>;
      readonly gravity: Quantity<'gravity'>;
      readonly volume: Quantity<'volume20'>;
    }
  | Refusal {
  const plato = quantity('plato', (100 * extract) / (water + extract));
  if (plato > STRONGEST) {
    return refuse(
      `So little water would make a wort of ${n(plato, 1)} °P; the tables of sugar end at ${STRONGEST}.`,
    );
  }
  const gravity = gravityFromPlato(plato);
  return { plato, gravity, volume: litres20(((water + extract) / gravity / WATER_DENSITY) * 1000) };
}

/**
 * Moisture of the draff, %, when the grains hold what is left.
 * @example draffMoistureOf({ malt: kilograms(1000), moisture: percent(4.5), extract: percent(77) }, { water: kilograms(765.109), extract: kilograms(0) }) // 78.00 (the draff of 980.909 kg worked by hand, of which 215.8 are dry)
 */
export function draffMoistureOf({ malt, moisture, extract }: Bed, left: Runoff): Quantity<'percent'> {
  const husks = (malt * (100 - moisture - extract * (1 - HYDROLYSIS_WATER))) / 100;
  return percent((100 * left.water) / (left.water + left.extract + husks));
}
