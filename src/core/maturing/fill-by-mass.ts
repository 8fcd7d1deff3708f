// A bottle filled on scales: what its litres weigh.
import { celsius, litres20, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { densityInAir } from '../spirit/density-in-air.ts';
import { densityFromStrength } from '../spirit/strength.ts';

export interface Fill {
  /** Mass of the contents, and what scales in air show for it, g. */
  readonly mass: Quantity<'grams'>;
  readonly shown: Quantity<'grams'>;
}

const at20 = (strength: Quantity<'strength'>) => densityFromStrength(strength, celsius(20));

/**
 * What so many litres at 20 °C weigh, 0–100 % vol, whatever their temperature on the scales. Source: OIML R 22 density; air as in OIML D 28.
 * @example weightOfFill(litres20(0.7), strength(40)) // { mass: 663.6 } (0.7 × 948.05, OIML R 22)
 */
export function weightOfFill(volume: Quantity<'volume20'>, strength: Quantity<'strength'>): Fill {
  within('The volume, L,', volume, 0, 1e6);
  const density = at20(strength);
  return {
    mass: quantity('grams', volume * density),
    shown: quantity('grams', volume * densityInAir(density)),
  };
}

/**
 * Litres at 20 °C of contents that scales in air show as `shown` g; undoes `weightOfFill`.
 * @example litresOfFill(weightOfFill(litres20(0.7), strength(40)).shown, strength(40)) // 0.7 (back again)
 */
export function litresOfFill(shown: Quantity<'grams'>, strength: Quantity<'strength'>): Quantity<'volume20'> {
  within('The weight, g,', shown, 0, 1e9);
  return litres20(shown / densityInAir(at20(strength)));
}
