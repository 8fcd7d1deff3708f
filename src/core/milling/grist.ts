// Malt through the mill: the split of the grist and the time it takes.
import { hours, kilograms, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { VERY_MUCH, within } from '../range.ts';

export interface Grist {
  readonly husk: Quantity<'mass'>;
  readonly grits: Quantity<'mass'>;
  readonly flour: Quantity<'mass'>;
}

/**
 * Husk, grits and flour, kg, of a mass of malt; the grits are what is neither husk nor flour.
 * @example splitGrist(kilograms(1000), { husk: percent(20), flour: percent(10) }) // { husk: 200, grits: 700, flour: 100 } (what is neither is grits)
 */
export function splitGrist(
  malt: Quantity<'mass'>,
  { husk, flour }: { readonly husk: Quantity<'percent'>; readonly flour: Quantity<'percent'> },
): Grist | Refusal {
  within('The malt, kg,', malt, 0, VERY_MUCH);
  within('The husk, %,', husk, 0, 100);
  within('The flour, %,', flour, 0, 100);
  if (husk + flour > 100) return refuse(`Husk ${husk} % and flour ${flour} % are more than the whole grist.`);
  const part = (percent: number) => kilograms((malt * percent) / 100);
  return { husk: part(husk), grits: part(100 - husk - flour), flour: part(flour) };
}

/**
 * Hours to mill a mass of malt, kg, at a rate in tonnes an hour.
 * @example millingTime(kilograms(9000), quantity('milling', 3.5)) // 2.57143 (9 ÷ 3.5)
 */
export function millingTime(malt: Quantity<'mass'>, rate: Quantity<'milling'>): Quantity<'hours'> {
  within('The malt, kg,', malt, 0, VERY_MUCH);
  within('The rate of the mill, t/h,', rate, Number.MIN_VALUE, Infinity);
  return hours(malt / 1000 / rate);
}
