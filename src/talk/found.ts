// Each number of a text with the unit that it is said in, and what measures with no number said, in order.
import { andAHalf } from '../core/reading/halves.ts';
import { tidy, type SaidNumber } from '../core/reading/numbers.ts';
import { timeAt } from '../core/reading/times.ts';
import type { Token } from '../core/reading/tokens.ts';
import { clockAt } from './clock-times.ts';
import { withUnit } from './number-with-unit.ts';
import { unnumberedAt } from './unnumbered.ts';
import type { SaidDimension } from './units.ts';

/** A number with its unit while the text is being read. */
export interface FoundNumber {
  start: number;
  end: number;
  /** Where the number ends, before its unit. */
  numberEnd?: number;
  value: number;
  low?: number;
  said: SaidNumber;
  unit: string;
  dimension: SaidDimension;
  fall?: 'from' | 'to';
  year: boolean;
  /** Said with so much less or more behind it. */
  around?: number;
  /** Said as degrees, and not of what. */
  degrees?: boolean;
}

const halves = new Set<SaidDimension>(['mass', 'volume', 'time', 'length', 'casks']);
const inHundred =
  /\s+(?:in|out\s+of)\s+(?:the|a|every|each|one)\s+hundred\b(?!\s+(?:and\s+)?(?:\d|one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty)\b)/iy; // and not “in a hundred and ninety”

/** A number as a time that a clock shows, or with its unit and the half, the hour or the hundred behind it. */
function numbered(text: string, tokens: readonly Token[], said: SaidNumber): FoundNumber | undefined {
  const token = tokens[said.first]!;
  const time = token.kind === 'figure' ? timeAt(text, token.start, false) : undefined;
  const one: FoundNumber | undefined = time
    ? { start: token.start, end: time.end, value: tidy(time.hours), said, unit: 'h', dimension: 'time', year: false }
    : withUnit(text, tokens, said);
  if (!one) return undefined;
  const half = halves.has(one.dimension) ? andAHalf(text, one.end) : undefined;
  if (half) Object.assign(one, { value: one.value + half.adds, end: half.end });
  const hourly = half && one.unit === 't' ? /^\s+(?:per|an)\s+hour\b/i.exec(text.slice(half.end)) : null;
  if (hourly) Object.assign(one, { end: one.end + hourly[0].length, unit: 't/h', dimension: 'milling' });
  inHundred.lastIndex = one.end;
  const share = inHundred.exec(text);
  if (share) Object.assign(one, { end: one.end + share[0].length, unit: '%', dimension: 'percent' });
  return one;
} // prettier-ignore

/** Every number that counts or measures something, with its unit, in order. */
export function gather(
  text: string,
  tokens: readonly Token[],
  numbers: readonly SaidNumber[],
): FoundNumber[] {
  const found: FoundNumber[] = [];
  let taken = 0;
  let at = 0;
  tokens.forEach((token, i) => {
    const said = numbers[at]?.first === i ? numbers[at++] : undefined;
    if (token.start < taken) return;
    const one = clockFound(text, token, i) ?? (said ? numbered(text, tokens, said) : unnumberedAt(text, tokens, i));
    if (!one) return;
    taken = one.end;
    found.push(one);
  });
  return found;
} // prettier-ignore

/** A time of day at a token. */
function clockFound(text: string, token: Token, i: number): FoundNumber | undefined {
  const clock = clockAt(text, token);
  if (!clock) return undefined;
  const { hours: value, end } = clock;
  const said = { value, first: i, next: i + 1, scale: 1, fraction: false };
  return { start: token.start, end, value, said, unit: '', dimension: 'clock', year: false };
}
