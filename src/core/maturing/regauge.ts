// A cask measured again: what should be in it, what is, and what the difference means.
import { litres, litresOfAlcohol, percent, type Portion, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { ageCask, type Store } from './cask.ts';
import { afterFirstDrink } from './to-bottle.ts';

export interface Regauged {
  readonly filled: Spirit;
  /** Part of the filling that the dry wood drank in its first days, %. */
  readonly indrink: Quantity<'percent'>;
  readonly store: Store;
  readonly years: Quantity<'years'>;
}

/**
 * What the cask should hold now: the filling, less what the wood drank, aged in its store.
 * @example expectedNow({ filled: { volume: litres20(200), strength: strength(60) }, indrink: percent(2), store: { alcoholLoss: percent(0), humidity: percent(65), steadyHumidity: percent(65) }, years: years(0) }) // { volume: 196.000, strength: 60.00 } (2 % to the wood, and no time passed)
 */
export function expectedNow({ filled, indrink, store, years }: Regauged): Portion {
  return ageCask({
    volume: afterFirstDrink(filled.volume, indrink),
    strength: filled.strength,
    cask: { size: litres(filled.volume) },
    store,
    years,
  }).at(-1)!;
}

export type RegaugeVerdict = 'as expected' | 'too little' | 'too much';

export interface Difference {
  /** Alcohol that should be there and is not; below 0 when there is more than expected. */
  readonly missing: Quantity<'alcohol'>;
  /** The same, % of the alcohol expected. */
  readonly part: Quantity<'percent'>;
  readonly verdict: RegaugeVerdict;
}

/**
 * Sets what was found against what was expected; a difference of up to `allowed` %, either way, is as expected.
 * @example compareRegauge(litresOfAlcohol(95), litresOfAlcohol(100), percent(3)) // { missing: 5, part: 5, verdict: 'too little' } (5 of 100)
 */
export function compareRegauge(
  found: Quantity<'alcohol'>,
  expected: Quantity<'alcohol'>,
  allowed: Quantity<'percent'>,
): Difference {
  within('The alcohol expected, L,', expected, Number.MIN_VALUE, Infinity);
  const missing = expected - found;
  const part = (100 * missing) / expected;
  const verdict = part > allowed ? 'too little' : part < -allowed ? 'too much' : 'as expected';
  return { missing: litresOfAlcohol(missing), part: percent(part), verdict };
}
