// Density as a balance in air tells it, and density in vacuo: about 1.05 kg/m³ apart for spirit and water.
import { density, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

const AIR_DENSITY = 1.2; // kg/m³, customary density of air when weighing; OIML D 28, from memory
const WEIGHT_DENSITY = 8000; // kg/m³, customary density of weights; OIML D 28, from memory
const WEIGHTS_LIFTED = 1 - AIR_DENSITY / WEIGHT_DENSITY; // part of their own weight that weights keep in air

/**
 * Density in air, kg/m³, of a liquid of a density in vacuo, 500–1200 kg/m³: what a litre of it seems to weigh
 * against weights of 8,000 kg/m³ in air of 1.2 kg/m³. Air lifts the liquid more than the weights.
 * Source: law of Archimedes; customary values of OIML D 28, from memory.
 * @example densityInAir(density(998.2)) // 997.15 (by hand, 997.0 ÷ 0.99985)
 */
export function densityInAir(inVacuo: Quantity<'density'>): Quantity<'densityInAir'> {
  return quantity(
    'densityInAir',
    (within('The density in vacuo, kg/m³,', inVacuo, 500, 1200) - AIR_DENSITY) / WEIGHTS_LIFTED,
  );
}

/**
 * Density in vacuo, kg/m³, from one in air, 500–1200 kg/m³; undoes `densityInAir`.
 * @example densityInVacuo(quantity('densityInAir', 997.15)) // 998.20 (by hand, 997.15 × 0.99985 + 1.2)
 */
export function densityInVacuo(inAir: Quantity<'densityInAir'>): Quantity<'density'> {
  return density(within('The density in air, kg/m³,', inAir, 500, 1200) * WEIGHTS_LIFTED + AIR_DENSITY);
}
