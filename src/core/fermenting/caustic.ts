// Caustic soda: litres of stock for a strength, and its strength by titration.
import { kilograms, litres, massPercent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const CAUSTIC_MOLAR_MASS = 40.0; // g/mol, NaOH; IUPAC standard atomic weights
const DENSITY_RISE = 0.011; // part by which each per cent by mass makes a weak solution heavier than water, up to 10 %; from memory
const WATER = 0.998; // kg/L at 20 °C

/**
 * Density of a weak solution, kg/L, 0–10 % by mass, at 20 °C. From memory, to a part in two hundred.
 * @example weakDensity(massPercent(0)) // 0.998 (water)
 */
export const weakDensity = (percent: Quantity<'massPercent'>) =>
  WATER * (1 + DENSITY_RISE * within('The caustic, % by mass,', percent, 0, 10));

/**
 * Stock, kg and L, that `volume` L of a solution of `wanted` % need beyond the `there` % it has; stock of `stock` % by mass and `density` kg/m³. Source: balance of mass.
 * @example stockFor(litres(1000), massPercent(2), massPercent(2), { stock: massPercent(50), density: density(1525) }) // { mass: 0, litres: 0 } (it has what is wanted)
 */
export function stockFor(
  volume: Quantity<'volume'>,
  there: Quantity<'massPercent'>,
  wanted: Quantity<'massPercent'>,
  { stock, density }: { readonly stock: Quantity<'massPercent'>; readonly density: Quantity<'density'> },
): { readonly mass: Quantity<'mass'>; readonly litres: Quantity<'volume'> } {
  within('The stock, % by mass,', stock, wanted + 1e-9, 100);
  const solution = volume * weakDensity(there);
  // Stock added is part of the solution that it strengthens.
  const mass = Math.max(0, (solution * (wanted - there)) / (stock - wanted));
  return { mass: kilograms(mass), litres: litres((1000 * mass) / density) };
}

/**
 * Caustic, % by mass, of a sample, mL, that so much acid, mL of `strength` mol/L of one hydrogen each, just turned. Source: one mole to one mole.
 * @example byTitration(quantity('millilitres', 10), quantity('millilitres', 5.1), quantity('molarity', 1)) // 2.00 (by hand, 20.4 g/L over 1.02 kg/L)
 */
export function byTitration(
  sample: Quantity<'millilitres'>,
  acid: Quantity<'millilitres'>,
  strength: Quantity<'molarity'>,
): Quantity<'massPercent'> {
  within('The sample, mL,', sample, Number.MIN_VALUE, 1e6);
  const gramsPerLitre = (acid * strength * CAUSTIC_MOLAR_MASS) / sample;
  // A hundredth more caustic makes the litre heavier, so the per cent is found from p × density(p) = g/L ÷ 10.
  const b = gramsPerLitre / (10 * WATER);
  return massPercent((Math.sqrt(1 + 4 * DENSITY_RISE * b) - 1) / (2 * DENSITY_RISE));
}

/**
 * Grams of caustic in a litre of stock.
 * @example heldBy(massPercent(50), density(1525)) // 762.5 (half of 1525)
 */
export const heldBy = (stock: Quantity<'massPercent'>, density: Quantity<'density'>) =>
  quantity('gramsPerLitre', (density * stock) / 100);
