// Caustic soda: litres of stock for a strength, and its strength by titration.
import { kilograms, litres, massPercent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const CAUSTIC_MOLAR_MASS = 40.0; // g/mol, NaOH; IUPAC standard atomic weights
const DENSITY_RISE = 0.011; // part by which each per cent by mass makes a weak solution heavier than water, up to 10 %; from memory
const WATER = 0.998; // kg/L at 20 °C

/** Density of a weak solution, kg/L, 0–10 % by mass, at 20 °C. From memory, to a part in two hundred. */
export const weakDensity = (percent: Quantity<'massPercent'>) =>
  WATER * (1 + DENSITY_RISE * within('The caustic, % by mass,', percent, 0, 10));

/** Stock, kg and L, that `volume` L of a solution of `wanted` % need beyond the `there` % it has; stock of `stock` % by mass and `density` kg/m³. Source: balance of mass. */
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

/** Caustic, % by mass, of a sample, mL, that so much acid, mL of `strength` mol/L of one hydrogen each, just turned. Source: one mole to one mole. */
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

/** Grams of caustic in a litre of stock. */
export const heldBy = (stock: Quantity<'massPercent'>, density: Quantity<'density'>) =>
  quantity('gramsPerLitre', (density * stock) / 100);
