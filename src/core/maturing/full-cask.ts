// What a full cask weighs: its spirit and its wood.
import { kilograms, litres, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityFromStrength } from '../spirit/strength.ts';

/** Casks whose wood has a weight that is remembered: size, L, and wood, kg; all from memory, and casks differ. */
export const WOOD = {
  barrel: { size: litres(200), wood: kilograms(50) },
  hogshead: { size: litres(250), wood: kilograms(60) },
  butt: { size: litres(500), wood: kilograms(125) },
} as const;

export interface FullCask {
  readonly spirit: Quantity<'mass'>;
  readonly total: Quantity<'mass'>;
}

/**
 * Mass of the spirit in a cask, and of the cask with it, kg. Spirit of 0–100 % vol at −20…40 °C. Source: OIML R 22 density.
 * @example fullCask({ size: litres(200), wood: kilograms(50) }, strength(40), celsius(20)) // { spirit: 189.61, total: 239.61 } (0.2 × 948.05, OIML R 22)
 */
export function fullCask(
  cask: { readonly size: Quantity<'volume'>; readonly wood: Quantity<'mass'> },
  strength: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
): FullCask {
  within('The cask, L,', cask.size, 0, Infinity);
  within('The wood, kg,', cask.wood, 0, Infinity);
  const spirit = (cask.size * densityFromStrength(strength, temperature)) / 1000;
  return { spirit: kilograms(spirit), total: kilograms(spirit + cask.wood) };
}
