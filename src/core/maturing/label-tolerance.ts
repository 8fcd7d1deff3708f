// How far the strength in the bottle may be from the one on its label.
import { quantity, strength, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Either way, % vol, for drinks not named otherwise; Regulation (EU) 1169/2011, Annex XII. */
export const EU_TOLERANCE = 0.3;

export interface Allowed {
  readonly lowest: Quantity<'strength'>;
  readonly highest: Quantity<'strength'>;
  readonly off: Quantity<'strengthDifference'>;
  /** From the reading to the nearer edge; below nothing when it lies outside. */
  readonly room: Quantity<'strengthDifference'>;
}

/**
 * Edges around a label, 0–100 % vol, and where a reading lies between them.
 * @example againstLabel(strength(40), strength(40.2), quantity('strengthDifference', 0.3)) // { lowest: 39.7, highest: 40.3, off: 0.2, room: 0.1 } (40 ± 0.3)
 */
export function againstLabel(
  label: Quantity<'strength'>,
  measured: Quantity<'strength'>,
  tolerance: Quantity<'strengthDifference'>,
): Allowed {
  within('The label, % vol,', label, 0, 100);
  within('The strength measured, % vol,', measured, 0, 100);
  within('The tolerance, % vol,', tolerance, 0, 5);
  const off = measured - label;
  return {
    lowest: strength(label - tolerance),
    highest: strength(label + tolerance),
    off: quantity('strengthDifference', off),
    room: quantity('strengthDifference', tolerance - Math.abs(off)),
  };
}
