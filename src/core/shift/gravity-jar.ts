// A jar of wash with a hydrometer in it: what it stands at warm, and what that is at 20 °C.
import { bracketedRoot } from '../numerics/root.ts';
import { celsius, gravity, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { gravityAt20, WARMEST_READING } from '../wort/warm-reading.ts';

export interface GravitySample {
  readonly was: Quantity<'gravity'>;
  readonly stands: Quantity<'gravity'>;
  readonly temperature: Quantity<'temperature'>;
}

/**
 * What a hydrometer for 20 °C stands at in a liquid of a true gravity of 0.99–1.11 at 0–40 °C; undoes `gravityAt20`.
 * @example standsIn(gravity(1.05), celsius(20)) // 1.0500 (at the glass’s own temperature)
 */
export const standsIn = (was: Quantity<'gravity'>, temperature: Quantity<'temperature'>): Quantity<'gravity'> =>
  gravity(bracketedRoot((shown) => gravityAt20(gravity(shown), temperature) - was, 0.98, 1.12)); // prettier-ignore

/**
 * A jar of a liquid at a temperature. Refuses one that is too warm to read.
 * @example jarOf(gravity(1.05), 60) // refuses: too warm to read (the formula for water ends at 40 °C)
 */
export function jarOf(was: Quantity<'gravity'>, at: number): GravitySample | Refusal {
  if (at > WARMEST_READING) return refuse(`The sample is at ${Math.round(at)} °C, too warm to read: let it cool in its jar.`);
  const temperature = celsius(Math.max(0, at));
  return { was, stands: standsIn(was, temperature), temperature };
} // prettier-ignore
