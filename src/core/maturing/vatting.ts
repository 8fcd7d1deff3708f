// Casks put together: what they make, and how old it may be called.
import { years, type Quantity, type Spirit } from '../quantity.ts';
import { blend, type Blend } from '../spirit/mixing.ts';

export interface AgedSpirit extends Spirit {
  readonly age: Quantity<'years'>;
}

export interface Vatting extends Blend {
  /** Whole years of the youngest part: what a label may state. */
  readonly age: Quantity<'years'>;
  /** Mean of the ages, each part counting by its alcohol; says nothing that a label may. */
  readonly meanAge: Quantity<'years'>;
}

/**
 * Puts matured spirits together: volume at 20 °C, strength, alcohol, contraction, age and mean age.
 * Needs at least one part with alcohol in it. Source: mass balance; the age is the youngest part's, SI 2009/2890.
 * @example vat([{ volume: litres20(100), strength: strength(60), age: years(10.5) }, { volume: litres20(100), strength: strength(60), age: years(20.5) }]) // { volume: 200.00, strength: 60.00, age: 10, meanAge: 15.5 } (the youngest in whole years)
 */
export function vat(parts: readonly AgedSpirit[]): Vatting {
  const alcohol = parts.map(({ volume, strength }) => volume * strength);
  const whole = alcohol.reduce((sum, part) => sum + part, 0);
  if (!(whole > 0)) throw new RangeError('There is no alcohol in the parts; at least one must hold some.');
  return {
    ...blend(parts),
    age: years(Math.floor(Math.min(...parts.map(({ age }) => age)))),
    meanAge: years(parts.reduce((sum, { age }, i) => sum + age * alcohol[i]!, 0) / whole),
  };
}
