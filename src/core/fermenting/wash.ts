// Wort into wash: the same balance for a whole washback.
import { kilograms, litres20, litresOfAlcohol, type Portion, type Quantity } from '../quantity.ts';
import { ETHANOL_DENSITY, WATER_DENSITY } from '../spirit/density.ts';
import { wortMass, type Wort } from '../mashing/wort.ts';
import { attenuate, type Attenuation } from '../wort/attenuation.ts';

export interface Fermentation extends Portion {
  readonly attenuation: Attenuation;
  readonly washMass: Quantity<'mass'>;
  readonly carbonDioxide: Quantity<'mass'>;
  readonly yeastGrown: Quantity<'mass'>;
}

/**
 * A wort fermented to a final gravity: volume at 20 °C, strength and alcohol of the wash, carbon dioxide and yeast.
 * Mass in = wash + gas + yeast; no gas stays dissolved and no alcohol goes off with it. Source: Balling, see `attenuate`.
 * @example fermentWort({ volume: litres20(1000), gravity: gravity(1.05) }, gravity(1.05)) // { volume: 1000.000, strength: 0, alcohol: 0, carbonDioxide: 0 } (nothing fell)
 */
export function fermentWort(wort: Wort, final: Quantity<'gravity'>): Fermentation {
  const attenuation = attenuate({ original: wort.gravity, final });
  const mass = wortMass(wort);
  const washMass = mass * attenuation.wash;
  const volume = (1000 * washMass) / (final * WATER_DENSITY);
  return {
    attenuation,
    volume: litres20(volume),
    strength: attenuation.strength,
    alcohol: litresOfAlcohol((1000 * mass * attenuation.ethanol) / ETHANOL_DENSITY),
    washMass: kilograms(washMass),
    carbonDioxide: kilograms(mass * attenuation.carbonDioxide),
    yeastGrown: kilograms(mass * attenuation.yeast),
  };
}
