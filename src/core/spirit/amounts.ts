// A mixture as kilomoles of ethanol and of water: the form in which nothing is gained or lost.
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from '../constants.ts';
import {
  celsius,
  litres20,
  litresOfAlcohol,
  massPercent,
  moleFraction,
  strength,
  type Portion,
  type Quantity,
  type Spirit,
} from '../quantity.ts';
import { densityOfSpirit, ETHANOL_DENSITY } from './density.ts';
import { massPercentFromStrength } from './strength.ts';

/** Kilomoles of ethanol and of water. */
export interface Amounts {
  readonly ethanol: number;
  readonly water: number;
}

/**
 * The kilomoles in an amount of spirit given by its volume at 20 °C and its strength.
 * @example amountsOf({ volume: litres20(1000), strength: strength(100) }) // { ethanol: 17.13, water: 0 } (789.24 kg, OIML R 22, over 46.07 kg/kmol)
 */
export function amountsOf({ volume, strength }: Spirit): Amounts {
  const w = massPercentFromStrength(strength);
  const mass = (volume * densityOfSpirit(w, celsius(20))) / 1000;
  return {
    ethanol: (mass * w) / 100 / ETHANOL_MOLAR_MASS,
    water: (mass * (1 - w / 100)) / WATER_MOLAR_MASS,
  };
}

/**
 * Volume at 20 °C, strength and pure alcohol of a mixture given in kilomoles. Nothing at all has strength 0.
 * @example portionOf({ ethanol: 0, water: 1 }) // { volume: 18.05, strength: 0 } (18.015 kg of water at 0.9982 kg/L)
 */
export function portionOf({ ethanol, water }: Amounts): Portion {
  const ethanolMass = ethanol * ETHANOL_MOLAR_MASS;
  const mass = ethanolMass + water * WATER_MOLAR_MASS;
  const alcohol = (1000 * ethanolMass) / ETHANOL_DENSITY;
  if (!(mass > 0)) return { volume: litres20(0), strength: strength(0), alcohol: litresOfAlcohol(0) };
  const w = Math.min(100, Math.max(0, (100 * ethanolMass) / mass)); // rounding may step a hair outside
  const rho = densityOfSpirit(massPercent(w), celsius(20));
  const volume = (1000 * mass) / rho;
  return {
    volume: litres20(volume),
    strength: strength((100 * alcohol) / volume),
    alcohol: litresOfAlcohol(alcohol),
  };
}

/**
 * The two together.
 * @example plus({ ethanol: 1, water: 2 }, { ethanol: 3, water: 4 }) // { ethanol: 4, water: 6 } (1 + 3 and 2 + 4)
 */
export function plus(a: Amounts, b: Amounts): Amounts {
  return { ethanol: a.ethanol + b.ethanol, water: a.water + b.water };
}

/**
 * What is left of the first when the second is taken away.
 * @example minus({ ethanol: 3, water: 4 }, { ethanol: 1, water: 2 }) // { ethanol: 2, water: 2 } (3 − 1 and 4 − 2)
 */
export function minus(a: Amounts, b: Amounts): Amounts {
  return { ethanol: a.ethanol - b.ethanol, water: a.water - b.water };
}

/**
 * Mole fraction of ethanol in a mixture of a given mass share.
 * @example moleFractionFromMassPercent(massPercent(95.6)) // 0.8947 (the azeotrope, CRC Handbook)
 */
export function moleFractionFromMassPercent(w: Quantity<'massPercent'>): Quantity<'moleFraction'> {
  const ethanol = w / ETHANOL_MOLAR_MASS;
  return moleFraction(ethanol / (ethanol + (100 - w) / WATER_MOLAR_MASS));
}

/**
 * Mass share of ethanol in a mixture of a given mole fraction.
 * @example massPercentFromMoleFraction(moleFraction(0.8943)) // 95.58 (the azeotrope, Perry)
 */
export function massPercentFromMoleFraction(x: Quantity<'moleFraction'>): Quantity<'massPercent'> {
  const ethanol = x * ETHANOL_MOLAR_MASS;
  return massPercent((100 * ethanol) / (ethanol + (1 - x) * WATER_MOLAR_MASS));
}
