// Adding water and blending: masses add, volumes at 20 °C do not.
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from '../constants.ts';
import { kilograms, litres20, type Portion, type Quantity, type Spirit } from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { WATER_DENSITY } from './density.ts';
import { amountsOf, plus, portionOf } from './amounts.ts';
import { massPercentFromStrength } from './strength.ts';

export interface Reduction {
  readonly waterVolume: Quantity<'volume20'>;
  readonly waterMass: Quantity<'mass'>;
  readonly volume: Quantity<'volume20'>;
  readonly contraction: Quantity<'volume20'>;
}

/**
 * The water that brings a spirit down to the strength `to`, litres at 20 °C and kg,
 * with the volume made and the volume that vanishes in mixing.
 * Refuses (throws) a strength above the spirit's own, and 0 % vol, which no amount of water reaches.
 * Source: mass balance on OIML R 22 densities.
 * @example reduce({ volume: litres20(1000), strength: strength(70) }, strength(63.5)).waterVolume // 108.0 (balance of mass by hand with printed densities, 108.03 L)
 */
export function reduce({ volume, strength }: Spirit, to: Quantity<'strength'>): Reduction {
  within('The volume, L,', volume, 0, VERY_MUCH);
  within('The strength wanted, % vol,', to, Number.MIN_VALUE, strength);
  const before = amountsOf({ volume, strength });
  const spiritMass = before.ethanol * ETHANOL_MOLAR_MASS + before.water * WATER_MOLAR_MASS;
  const waterMass = spiritMass * (massPercentFromStrength(strength) / massPercentFromStrength(to) - 1);
  const after = portionOf(plus(before, { ethanol: 0, water: waterMass / WATER_MOLAR_MASS }));
  const waterVolume = (1000 * waterMass) / WATER_DENSITY;
  return {
    waterVolume: litres20(waterVolume),
    waterMass: kilograms(waterMass),
    volume: after.volume,
    contraction: litres20(volume + waterVolume - after.volume),
  };
}

export interface Blend extends Portion {
  readonly contraction: Quantity<'volume20'>;
}

/**
 * Any number of spirits put together: volume at 20 °C, strength, pure alcohol,
 * and the volume that vanishes in mixing. Masses and alcohol add exactly.
 * @example blend([{ volume: litres20(100), strength: strength(60) }, { volume: litres20(100), strength: strength(60) }]) // { volume: 200.00, strength: 60.00, alcohol: 120.00, contraction: 0.00 } (a blend of a thing with itself)
 */
export function blend(parts: readonly Spirit[]): Blend {
  const together = portionOf(parts.map(amountsOf).reduce(plus, { ethanol: 0, water: 0 }));
  const poured = parts.reduce((sum, { volume }) => sum + within('The volume, L,', volume, 0, VERY_MUCH), 0);
  return { ...together, contraction: litres20(poured - together.volume) };
}
