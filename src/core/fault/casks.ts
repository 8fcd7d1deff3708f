// A cask with one thing wrong, regauged after some years: followed month by month as the house's casks are.
import { followCask, lossInStore, MOST_LOSS, type CaskPlan } from '../maturing/cask.ts';
import { afterFirstDrink } from '../maturing/to-bottle.ts';
import {
  celsius,
  litres20,
  percent,
  quantity,
  strength,
  years,
  type Quantity,
  type Spirit,
} from '../quantity.ts';
import { refuse } from '../refusal.ts';
import { portionOf } from '../spirit/amounts.ts';
import { standsAt } from '../shift/still/samples.ts';
import { valueAtSize, type TruthOf } from './truth.ts';

export type CaskCause = 'leak' | 'hot' | 'drawn' | 'thirsty' | 'short' | 'dip' | 'cold-glass';
export type CaskReading = 'light' | 'volume' | 'strength' | 'damp' | 'redip' | 'bench' | 'sample' | 'store' | 'humid' | 'neighbours' | 'ticket' | 'first' | 'seal'; // prettier-ignore

/** The house's filling and store; temperatures in °C. */
export interface CaskSetup {
  readonly filling: Spirit;
  readonly indrink: number;
  readonly alcoholLoss: Quantity<'percent'>;
  readonly steadyHumidity: Quantity<'percent'>;
  readonly humidity: number;
  readonly foundAt: number;
}
/** What differs from cask to cask and does no harm: its age in years, K and % of this store, % more first drink, °C of the sample. */
export interface CaskDay {
  readonly years: number;
  readonly warmer: number;
  readonly damper: number;
  readonly drinks: number;
  readonly sample: number;
}

// The least and the most of each that is drawn; no source.
const sizes = {
  leak: [0.4, 0.7], // L a month, in the last two years
  hot: [9, 13], // K warmer than where the loss was found, and so much drier
  drawn: [10, 18], // L drawn after the first year and not written down
  thirsty: [5, 8], // % of the filling that the wood drank beyond the house's
  short: [10, 18], // L that were never filled
  dip: [10, 18], // L by which the rod was read short
  'cold-glass': [6, 10], // °C of a sample that was read as if it were at 20
} as const;
const DRIER = 2.5; // % of humidity less for each K warmer; no source
const LEAKS = 24; // months that a leak has run; no source
const NEIGHBOURS = 0.25; // of what the store does to a cask, by which six of its neighbours show less of it, as they lie at other heights; no source

/**
 * The readings of a cask. Refuses a store that takes more than a cask can be followed with.
 * @example caskBench({ filling: { volume: 200, strength: 63.5 }, indrink: 2, alcoholLoss: percent(2), steadyHumidity: percent(65), humidity: 65, foundAt: 10 }, { years: 3, warmer: 0, damper: 0, drinks: 0, sample: 20 })({ cause: 'nothing', size: 0 }) // { light: 0.00, damp: 0, ticket: 200, seal: 0 } (nothing is wrong, and no cask differs)
 */
export const caskBench = (setup: CaskSetup, day: CaskDay): TruthOf<CaskCause, CaskReading> => ({ cause, size }) => {
  const of = (id: keyof typeof sizes) => (cause === id ? valueAtSize(sizes[id], size) : 0);
  const months = Math.round(12 * day.years);
  const follow = (warmer: number, damper: number, drinks: number, short: number, drawn: number, leak: number) => {
    const { volume } = setup.filling;
    const plan: CaskPlan = {
      volume: afterFirstDrink(litres20(volume - short), percent(setup.indrink + drinks)),
      strength: strength(setup.filling.strength),
      cask: { size: quantity('volume', volume) },
      store: { alcoholLoss: setup.alcoholLoss, steadyHumidity: setup.steadyHumidity, humidity: percent(Math.min(98, Math.max(20, setup.humidity + damper))), temperature: celsius(setup.foundAt + warmer), measuredAt: celsius(setup.foundAt) },
      years: years(day.years),
    };
    if (lossInStore(plan) > MOST_LOSS) return undefined;
    const { filled, after } = followCask(plan);
    let left = filled;
    let first = portionOf(left);
    const less = (litres: number) => {
      const by = 1 - litres / portionOf(left).volume;
      left = { ethanol: left.ethanol * by, water: left.water * by };
    };
    for (let month = 1; month <= months; month++) {
      left = after(left, 1 / 12);
      if (month === 12) first = portionOf(left);
      if (month === 18 && drawn > 0) less(drawn);
      if (leak > 0 && month > months - LEAKS) less(leak);
    }
    return { now: portionOf(left), first };
  };
  const usual = follow(0, 0, 0, 0, 0, 0);
  const [warmer, damper] = [day.warmer + of('hot'), day.damper - DRIER * of('hot')];
  const cask = follow(warmer, damper, day.drinks + of('thirsty'), of('short'), of('drawn'), of('leak'));
  const next = follow(warmer * (1 - NEIGHBOURS), damper * (1 - NEIGHBOURS), 0, 0, 0, 0);
  if (!usual || !cask || !next) return refuse('The store takes more of the alcohol than a cask is followed with.');
  const { now, first } = cask;
  const sample = of('cold-glass') || day.sample;
  const volume = now.volume - of('dip');
  const shown = cause === 'cold-glass' ? standsAt(now.strength, celsius(sample)) : now.strength;
  const light = (alcohol: number, than: number) => 100 * (1 - alcohol / than);
  return {
    light: light((volume * shown) / 100, usual.now.alcohol),
    volume,
    strength: shown,
    damp: cause === 'leak' ? 1 : 0,
    redip: now.volume,
    bench: now.strength,
    sample,
    store: setup.foundAt + warmer,
    humid: setup.humidity + damper,
    neighbours: light(next.now.alcohol, usual.now.alcohol),
    ticket: setup.filling.volume - of('short'),
    first: light(first.alcohol, usual.first.alcohol),
    seal: cause === 'drawn' ? 1 : 0,
  };
}; // prettier-ignore
