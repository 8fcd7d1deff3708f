// A number in plain figures, which needs none of the rest of the reader: what nearly everybody types.
import type { KindName } from '../kinds.ts';
import { unitOf, type Unit } from '../units.ts';
import { gravityFrom } from './gravity.ts';

const PLAIN = /^\s*([-−]?)(\d{1,9}(?:\.\d{1,9})?)\s*$/;
const FIGURES = 12; // of a number that is read, as `numbers.ts` keeps them

/**
 * Reads a text of figures, with a decimal point or none and nothing else, exactly as `readQuantity` does; in the unit
 * named, or the kind's own. Undefined for any other text: that is for `readQuantity`.
 * @example readAtOnce('12.5', { kind: 'mass' }) // { as: 'rounded', value: 12.5 } (figures in the kind’s own unit)
 */
export function readAtOnce(
  text: string,
  { kind, unit: name, plain }: { readonly kind: KindName; readonly unit?: string; readonly plain?: boolean },
): { readonly as: 'rounded'; readonly value: number; readonly unit: Unit } | undefined {
  const [, sign, figures] = PLAIN.exec(text) ?? [];
  if (figures === undefined) return undefined;
  const number = Number(figures) * (sign === '' ? 1 : -1);
  const unit = unitOf(kind, plain ? undefined : name);
  const isGravity = kind === 'gravity' && unit.unit === '' && !plain;
  const value = isGravity ? gravityFrom(number) : Number(unit.toCore(number).toPrecision(FIGURES));
  return { as: 'rounded', value, unit };
}
