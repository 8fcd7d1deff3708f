// A spirit charge made up: low wines and what came back, let down with water where they are stronger than the house allows.
import { litres20, type Quantity } from '../quantity.ts';
import { amountsOf, type Amounts } from '../spirit/amounts.ts';

/**
 * The charge, kmol, that low wines and the receiver make, let down to the strength allowed, % vol; and the water for it, kmol.
 * @example makeUp({ ethanol: 1, water: 9 }, strength(60)) // { charge: { ethanol: 1, water: 9 }, added: 0 } (it is weaker than that already)
 */
export function makeUp({ ethanol, water }: Amounts, limit: Quantity<'strength'> | undefined) {
  if (limit === undefined) return { charge: { ethanol, water }, added: 0 };
  const wanted = amountsOf({ volume: litres20(1), strength: limit });
  const needed = Math.max(water, (ethanol * wanted.water) / wanted.ethanol);
  return { charge: { ethanol, water: needed }, added: needed - water };
}
