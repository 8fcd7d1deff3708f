// Extract and gravity of sugar solutions, as for wort.
import { bracketedRoot } from '../numerics/root.ts';
import { gravity, plato, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const AIR = 0.0012; // density of air over that of water at 20 °C; rounded, NBS Circular C440
const [LOWEST, HIGHEST] = [0.98, 1.15]; // gravity 20/20 for which the cubic is used here; below 1 it reads spirit in wash

/**
 * Extract, °P, of a solution of gravity 20/20 °C (in vacuo, as 1.058), 0.98–1.15.
 * Below 1.000 the extract is negative: what a saccharometer shows in wash lightened by alcohol.
 * Source: cubic fitted to the National Bureau of Standards sugar table, for gravity in air.
 * @example platoFromGravity(gravity(1.04831)) // 12.00 (Plato’s table)
 */
export function platoFromGravity(sg: Quantity<'gravity'>): Quantity<'plato'> {
  within('The gravity', sg, LOWEST, HIGHEST);
  const s = (sg - AIR) / (1 - AIR);
  return plato(((182.46007 * s - 775.68212) * s + 1262.7794) * s - 669.56218);
}

/**
 * Gravity 20/20 °C of a solution of −5…34 °P; undoes `platoFromGravity`.
 * @example gravityFromPlato(plato(12)) // 1.0483 (Plato’s table)
 */
export function gravityFromPlato(extract: Quantity<'plato'>): Quantity<'gravity'> {
  within('The extract, °P,', extract, -5, 34);
  return gravity(bracketedRoot((sg) => platoFromGravity(gravity(sg)) - extract, LOWEST, HIGHEST));
}
