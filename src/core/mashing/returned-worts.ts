// Weak worts that become the next mash's first water, in balance.
import { formatNumber as n } from '../format.ts';
import { kilograms, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import {
  drainWaters,
  runoffsTogether,
  waterMasses,
  type Bed,
  type Drained,
  type Runoff,
  type Water,
} from './waters.ts';

export interface Returned {
  /** What is drained when the house is in balance: the same at every mash. */
  readonly drained: Drained;
  readonly wort: Runoff;
  readonly weak: Runoff;
  /** Extract in the wort of a house that lets its weak worts go, kg. */
  readonly withoutReturn: Quantity<'mass'>;
  /** Fresh water that fills up the first water, kg. */
  readonly fresh: Quantity<'mass'>;
  /** Part of the extract in the tun that one mash passes on to the next, 0–1. */
  readonly passedOn: number;
}

/**
 * The balance of a house that returns every runoff after the first `collected`. All that a mash does to its
 * extract is in proportion: of extract E in the grist and y in the first water, a part s is passed on. In balance
 * y = s (E + y), so y = s E ÷ (1 − s). The first water holds as much water as it would if it were fresh.
 * Refuses when there is nothing to return, or more than the first water takes.
 * @example returnWeakWorts({ malt: kilograms(1000), moisture: percent(4), extract: percent(78), held: litresPerKilogram(0.9), washing: share(0.8) }, [{ ratio: litresPerKilogram(4), temperature: celsius(64) }], 1) // refuses: none is left to return (the one runoff goes to the washback)
 */
export function returnWeakWorts(bed: Bed, waters: readonly Water[], collected: number): Returned | Refusal {
  within('The runoffs collected', collected, 1, Infinity);
  if (collected >= waters.length) {
    return refuse(
      `All ${waters.length} runoffs go to the washback, so none is left to return; take fewer, or add a water.`,
    );
  }
  const once = drainWaters(bed, waters);
  if (isRefusal(once)) return once;
  const weakOnce = runoffsTogether(once.runoffs.slice(collected));
  const fresh = waterMasses(bed, waters)[0]! - weakOnce.water;
  if (fresh < 0) {
    return refuse(
      `The weak worts hold ${n(-fresh, 0)} kg more water than the first water takes; make the later waters smaller.`,
    );
  }
  const grist = (bed.malt * bed.extract) / 100;
  const passedOn = weakOnce.extract / grist;
  const drained = drainWaters(bed, waters, kilograms((passedOn * grist) / (1 - passedOn)));
  if (isRefusal(drained)) return drained;
  return {
    drained,
    wort: runoffsTogether(drained.runoffs.slice(0, collected)),
    weak: runoffsTogether(drained.runoffs.slice(collected)),
    withoutReturn: runoffsTogether(once.runoffs.slice(0, collected)).extract,
    fresh: kilograms(fresh),
    passedOn,
  };
}

/**
 * Extract in the wort of the first, second and each later mash, kg, when the very first begins with fresh water.
 * @example firstMashes({ wort: { extract: 800 }, passedOn: 0.1 }, 2) // [720, 792] (800 × 0.9 and 800 × 0.99)
 */
export function firstMashes({ wort, passedOn }: Returned, mashes: number): readonly Quantity<'mass'>[] {
  return Array.from({ length: mashes }, (_, i) => kilograms(wort.extract * (1 - passedOn ** (i + 1))));
}
