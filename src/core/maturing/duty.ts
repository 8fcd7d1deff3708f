// Duty on spirit in bottles, at a rate that the reader brings.
import { litresOfAlcohol, quantity, strength, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

export type Rounding = 'down' | 'none';

const HAIR = 1e-9; // so that 40.1, held a hair below, is not cut to 40.0

/**
 * Strength on which duty is reckoned, % vol: as it is, or cut to one decimal, 7.59 to 7.5.
 * Source of the cutting: HMRC, Alcoholic products technical guide, section 11.
 * @example dutyStrength(strength(7.59), 'down') // 7.5 (HMRC, Alcoholic products technical guide, section 11)
 */
export function dutyStrength(found: Quantity<'strength'>, rounding: Rounding): Quantity<'strength'> {
  within('The strength, % vol,', found, 0, 100);
  return rounding === 'down' ? strength(Math.floor(10 * found + HAIR) / 10) : found;
}

export interface Duty {
  readonly alcohol: Quantity<'alcohol'>;
  readonly duty: Quantity<'money'>;
  readonly perBottle: Quantity<'money'>;
}

/**
 * Pure alcohol in so many bottles (centilitres each), and the duty on it at a rate to a litre of pure alcohol.
 * @example dutyOn(count(1200), quantity('bottle', 75), strength(40), quantity('money', 19.56)) // { alcohol: 360, duty: 7041.60 } (HMRC manual HMEXSH5030)
 */
export function dutyOn(
  bottles: Quantity<'count'>,
  bottle: Quantity<'bottle'>,
  reckoned: Quantity<'strength'>,
  rate: Quantity<'money'>,
): Duty {
  within('The bottles', bottles, 0, Infinity);
  within('The rate', rate, 0, Infinity);
  const perBottle = ((bottle / 100) * reckoned) / 100;
  return {
    alcohol: litresOfAlcohol(bottles * perBottle),
    duty: quantity('money', bottles * perBottle * rate),
    perBottle: quantity('money', perBottle * rate),
  };
}
