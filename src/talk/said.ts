// A figure as a guide types it: "5,500", "about 42,500", "5,500 to 6,000", "exactly 63.5".
import { parseNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import type { Said } from '../core/line/quoted.ts';

const ABOUT = /^(about|around|roughly|some|approx\.?|approximately|circa|c\.|~|≈)\s*/i;
const EXACT = /^(exactly|precisely|just)\s+|\s+exactly$/i;
const BETWEEN = /^(?:from|between)?\s*(\S.*?)\s*(?:–|—|-|\bto\b|\band\b|\bdown to\b)\s*(\S.*)$/i;

/** A number that may carry a unit behind it, and a gravity in degrees. */
function numberIn(text: string, kind: KindName): number | undefined {
  const number = parseNumber(text.replace(/\s*[^\d\s.,'’]+.*$/u, ''));
  return kind === 'gravity' && number !== undefined && number > 500 ? number / 1000 : number;
}

/** What a text says of a figure of a kind, in the kind's own unit; undefined when it says no number. */
export function readSaid(text: string, kind: KindName): Said | undefined {
  const plain = text.trim();
  const between = BETWEEN.exec(plain.replace(ABOUT, ''));
  if (between) {
    const ends = [between[1]!, between[2]!].map((end) => numberIn(end, kind));
    if (ends[0] !== undefined && ends[1] !== undefined) {
      return { as: 'range', low: Math.min(ends[0], ends[1]), high: Math.max(ends[0], ends[1]) };
    }
  }
  const value = numberIn(plain.replace(ABOUT, '').replace(EXACT, ''), kind);
  if (value === undefined) return undefined;
  if (ABOUT.test(plain)) return { as: 'about', value };
  return EXACT.test(plain) ? { as: 'exact', value } : { as: 'rounded', value };
}
