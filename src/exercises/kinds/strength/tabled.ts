// Densities at 20 °C as a printed table gives them.
import { celsius, strength } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';

/** Density, kg/m³, of a strength in % vol, rounded as printed. */
export const tabled = (percent: number, digits = 1): number =>
  Number(densityFromStrength(strength(percent), celsius(20)).toFixed(digits));
