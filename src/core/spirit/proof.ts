// Proof of the United States and of the former British (Sikes) scale.
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, degreesProof, litresOfAlcohol, massPercent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityOfSpirit } from './density.ts';
import { massPercentFromStrength } from './strength.ts';

const FAHRENHEIT_60 = celsius(15.5556); // 60 °F, °C; 27 CFR 19.1
const FAHRENHEIT_50 = celsius(10); // 50 °F, °C; where degrees over proof are made up, Alcoholic Liquor Duties Act 1979 s.2
const FAHRENHEIT_51 = celsius(10.5556); // 51 °F, °C; where proof spirit is weighed, the same Act
const US_GALLON = 3.785411784; // litres, 231 cubic inches; 27 CFR 19.1
const PURE = massPercent(100);

/** Volume of pure ethanol in a volume of spirit, both at one temperature: % vol at that temperature. */
function strengthAt(mass: Quantity<'massPercent'>, temperature: Quantity<'temperature'>): number {
  return (mass * densityOfSpirit(mass, temperature)) / densityOfSpirit(PURE, temperature);
}

/**
 * Degrees of US proof, twice the % vol at 60 °F, of spirit of 0–100 % vol at 20 °C. Source: 27 CFR 19.1.
 * @example usProof(strength(50.061)) // 100.0 (OIML R 22 at 60 °F, evaluated elsewhere)
 */
export function usProof(strength: Quantity<'strength'>): Quantity<'degreesProof'> {
  return degreesProof(2 * strengthAt(massPercentFromStrength(strength), FAHRENHEIT_60));
}

/**
 * Litres of pure alcohol at 20 °C in `gallons` US proof gallons: 50 % vol at 60 °F, brought to 20 °C.
 * @example alcoholFromUsProofGallons(1) // 1.9018 (3.785412 ÷ 2 × 1.004806)
 */
export function alcoholFromUsProofGallons(gallons: number): Quantity<'alcohol'> {
  within('The proof gallons', gallons, 0, Infinity);
  const expansion = densityOfSpirit(PURE, FAHRENHEIT_60) / densityOfSpirit(PURE, celsius(20));
  return litresOfAlcohol(gallons * US_GALLON * 0.5 * expansion);
}

/** Mass share of British proof spirit: it weighs 12/13 of as much water, both at 51 °F. */
const sikesProofSpirit = massPercent(
  bracketedRoot(
    (mass) =>
      densityOfSpirit(massPercent(mass), FAHRENHEIT_51) -
      (12 / 13) * densityOfSpirit(massPercent(0), FAHRENHEIT_51),
    40,
    60,
  ),
);

/**
 * Degrees of former UK (Sikes) proof, 100 for proof spirit, of spirit of 0–100 % vol at 20 °C:
 * the volumes of proof spirit that 100 volumes would make, by their alcohol at 50 °F.
 * Source: Alcoholic Liquor Duties Act 1979 s.2 as enacted.
 * @example sikesProof(strength(57.15)) // 100.0 (proof spirit is quoted as 57.15 % vol)
 */
export function sikesProof(strength: Quantity<'strength'>): Quantity<'degreesProof'> {
  const own = strengthAt(massPercentFromStrength(strength), FAHRENHEIT_50);
  return degreesProof((100 * own) / strengthAt(sikesProofSpirit, FAHRENHEIT_50));
}
