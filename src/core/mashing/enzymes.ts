// What heat leaves of the two amylases.
import { percent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

export type Enzyme = 'alpha' | 'beta';

/** A rest: so many minutes at one temperature. */
export interface Rest {
  readonly minutes: Quantity<'minutes'>;
  readonly temperature: Quantity<'temperature'>;
}

const GAS_CONSTANT = 8.314462618; // J/(mol K); SI, 2019
const LOSS = {
  alpha: { rate: 6.9e30, energy: 224_200 }, // 1/s and J/mol; Brandam et al. 2003, recalled
  beta: { rate: 7.6e60, energy: 410_700 }, // the same
} as const;

/** Above this, °C, the constants for beta-amylase mean nothing. */
export const HOTTEST_FOR_BETA = 68;

/** Part of the enzyme that is lost in a minute, of what there is, at 40–80 °C. Source: Brandam et al. 2003, from memory. */
function lossPerMinute(enzyme: Enzyme, temperature: Quantity<'temperature'>): number {
  within('The temperature of a rest, °C,', temperature, 40, 80);
  const { rate, energy } = LOSS[enzyme];
  return 60 * Math.exp(Math.log(rate) - energy / (GAS_CONSTANT * (temperature + 273.15)));
}

/**
 * Minutes in which half of an enzyme is lost, at 40–80 °C; for beta-amylase it means nothing above 68.
 * @example enzymeSurvival('alpha', [{ minutes: halfLife('alpha', celsius(70)), temperature: celsius(70) }]) // 50.000 (by definition)
 */
export function halfLife(enzyme: Enzyme, temperature: Quantity<'temperature'>): Quantity<'minutes'> {
  return quantity('minutes', Math.LN2 / lossPerMinute(enzyme, temperature));
}

/**
 * Part of an enzyme that is still alive after rests, one after another, %: first-order loss at each.
 * @example enzymeSurvival('beta', []) // 100 (no rest, no loss)
 */
export function enzymeSurvival(enzyme: Enzyme, rests: readonly Rest[]): Quantity<'percent'> {
  const loss = rests.reduce((sum, { minutes, temperature }) => {
    return sum + within('The minutes of a rest', minutes, 0, Infinity) * lossPerMinute(enzyme, temperature);
  }, 0);
  return percent(100 * Math.exp(-loss));
}

/**
 * The rests as they stand after so many minutes of the whole path.
 * @example restsUntil([{ minutes: 60, temperature: 64 }, { minutes: 20, temperature: 72 }], 70) // [{ minutes: 60 }, { minutes: 10 }] (60 + 10)
 */
export function restsUntil(rests: readonly Rest[], minutes: number): readonly Rest[] {
  let left = minutes;
  return rests.map((rest) => {
    const spent = Math.max(0, Math.min(rest.minutes, left));
    left -= rest.minutes;
    return { ...rest, minutes: quantity('minutes', spent) };
  });
}
