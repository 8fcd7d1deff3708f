// What dissolved solids hide from a hydrometer.
import { quantity, strength, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Strength hidden by a gram of solids in a litre, % vol: 0.1 g in 100 mL hides 0.4° of United States proof, between 80 and 100; 27 CFR 30.32(b). */
export const HIDDEN_BY_A_GRAM = 0.2;

/**
 * Strength, % vol, that solids, 0–60 g/L, hide. Source: 27 CFR 30.32(b), a rule of experience for 40–50 % vol.
 * @example obscuration(quantity('gramsPerLitre', 5)) // 1.0 (0.2 for each gram, 27 CFR 30.32)
 */
export function obscuration(solids: Quantity<'gramsPerLitre'>): Quantity<'strengthDifference'> {
  return quantity('strengthDifference', HIDDEN_BY_A_GRAM * within('The solids, g/L,', solids, 0, 60));
}

/**
 * True strength of a spirit that a hydrometer at 20 °C shows as `apparent`, 0–90 % vol, with solids in it.
 * @example trueStrength(strength(39), quantity('gramsPerLitre', 5)) // 40.0 (39 + 5 × 0.2)
 */
export function trueStrength(
  apparent: Quantity<'strength'>,
  solids: Quantity<'gramsPerLitre'>,
): Quantity<'strength'> {
  return strength(within('The strength shown, % vol,', apparent, 0, 85) + obscuration(solids));
}
