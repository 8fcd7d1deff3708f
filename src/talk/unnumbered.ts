// What counts or measures with no number said: twice, a full week, a hundred kilos, the other tenth, half the casks, an hour and a half.
import { andAHalf } from '../core/reading/halves.ts';
import type { Token } from '../core/reading/tokens.ts';
import { aloneScale, isLonePart, lastPart } from './alone.ts';
import type { FoundNumber } from './found.ts';
import { unitAt, type SaidDimension } from './units.ts';

const fullWeek = /(?<!\b(?:in|per|of|each)\s)$/i;
/** One of a unit, and not so much for each: “takes an hour”, “it's a tonne”. */
const wholeOne =
  /(?:\b(?:than|takes?|does|is|it['’]s|sit|say|so|be|do|nearly|exactly|about|use|off|over)\s+|[.?!\n]\s*)an?\s+(?:whole\s+)?(?:tonne|ton|hour|litre|liter|month|fortnight|week|gallon)\b(?!\s+(?:and|of\s+th))|\bas\s+an?\s+metre\s+(?=[1-9])|\ban?\s+metre\s+(?=(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b)/i;
/** “Wait an hour”, “clean for a week”, “in copper a day”: so long or so much, and not so much for each. */
const wholeTime =
  /\b(?:for|takes?|wait|stays?|stop|within|was|be|about|that['’]s|so|the)\s+an?\s+(?:whole\s+)?(?:hour|minute|day|week|month|year|fortnight|century|hundredweight|gramme|gram)\b(?!['’]|\s+(?:and\b|of\s+th|each|at|from|or))/i;
const aPart = /^\s+hour\s+(?:and\s+)?(?:[1-5]\d|five|ten|fifteen|twenty|twenty-\w+|thirty|forty|fifty)\b/i;
const halfPercent = /^half\s+(?:a\s+|(?:of\s+|o\s+)?(?:one|een|wan|1)\s+)?per\s?cent\b/i;
/** “The first gallon and a half”, with no one before it. */
const halved = new Set(['gallon', 'tonne', 'ton', 'litre', 'hour']);
const halfSoon = /\sand\s+(?:an?\s+)?(?:half|quarter|three[\s-]quarters?)\b/i;
const measured = new Set<SaidDimension>(['mass', 'volume', 'time', 'length']);

/** What is found at a token that is no number, if it measures something. */
type Unnumbered = (text: string, tokens: readonly Token[], i: number) => FoundNumber | undefined;

const bare = { unit: '', dimension: 'bare' as SaidDimension };
/** So much of a unit, said at a token. */
function found(i: number, value: number, start: number, end: number, { unit, dimension }: Pick<FoundNumber, 'unit' | 'dimension'>, of: { readonly scale?: number; readonly fraction?: boolean } = {}): FoundNumber {
  const said = { value, first: i, next: i + 1, scale: of.scale ?? 1, fraction: of.fraction ?? false };
  return { start, end, value, said, unit, dimension, year: false };
} // prettier-ignore
const share = { unit: '', dimension: 'share' as SaidDimension };

const times: Unnumbered = (_, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  const value = word === 'twice' ? 2 : word === 'thrice' ? 3 : undefined;
  return value && found(i, value, start, end, { ...bare, dimension: 'times' });
};

/** “A full week”, and not so much in a full week. */
const aFullWeek: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  const isFull = word === 'a' && /^\s+(?:full|whole)\s+week\b/i.test(text.slice(end, end + 20)) && fullWeek.test(text.slice(Math.max(0, start - 6), start));
  if (!isFull) return undefined;
  const unit = unitAt(text, end)!;
  return found(i, 1, start, unit.end, unit);
}; // prettier-ignore

/** “Hundred kilos”, of those who have no article. */
const scaleAlone: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  const value = aloneScale[word];
  if (value === undefined || tokens[i - 1]?.kind === 'figure') return undefined;
  const unit = unitAt(text, end);
  return unit && unit.unit !== '' && unit.end !== end ? found(i, value, start, unit.end, unit, { scale: value }) : undefined;
}; // prettier-ignore

const lastOfAWhole: Unnumbered = (text, tokens, i) => {
  const { start, end } = tokens[i]!;
  const value = lastPart(text, tokens[i]!);
  return value === undefined ? undefined : found(i, value, start, end, share, { fraction: true });
};

const lonePart: Unnumbered = (text, tokens, i) => {
  if (!isLonePart(text, tokens, i)) return undefined;
  const { text: word, start, end } = tokens[i]!;
  return word === 'half'
    ? found(i, 0.5, start, end, share, { fraction: true })
    : found(i, 0.333, tokens[i - 1]!.start, end, share, { fraction: true });
};

const halfOfOnePercent: Unnumbered = (text, tokens, i) => {
  const { text: word, start } = tokens[i]!;
  const said = word === 'half' ? halfPercent.exec(text.slice(start, start + 30)) : null;
  return said ? found(i, 0.5, start, start + said[0].length, { unit: '%', dimension: 'percent' }) : undefined;
};

/** “Gallon and a half”. */
const oneAndAHalf: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  const half = halved.has(word) && tokens[i - 1]?.kind !== 'figure' ? andAHalf(text, end) : undefined;
  return half && found(i, 1 + half.adds, start, half.end, unitAt(text, start - 1)!);
};

/** “Half a litre”, “half hour”. */
const halfOfAUnit: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  const unit = word === 'half' ? unitAt(text, end) : undefined;
  const isMeasure = unit && measured.has(unit.dimension) && /^\W?(?:lit|gal|hour|year|ton|kil)/i.test(text.slice(end));
  return isMeasure ? found(i, 0.5, start, unit.end, unit) : undefined;
}; // prettier-ignore

/** “The first quarter of an hour”. */
const quarterOfAnHour: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  if (word !== 'quarter' || !/^(?:first|last|good|full|bare)$/.test(tokens[i - 1]?.text ?? '')) return undefined;
  const of = /^(?:\s+of\s+an|[\s-]+)\s*hour\b/i.exec(text.slice(end, end + 16));
  return of ? found(i, 15, start, end + of[0].length, { unit: 'min', dimension: 'time' }) : undefined;
}; // prettier-ignore

/** “Takes an hour”, “a tonne and a quarter an hour”: one of a unit, and not so much for each. */
const oneOfAUnit: Unnumbered = (text, tokens, i) => {
  const { text: word, start, end } = tokens[i]!;
  if (word !== 'a' && word !== 'an') return undefined;
  const [about, behind] = [text.slice(Math.max(0, start - 14), end + 20), text.slice(end, end + 40)];
  const isOne =
    wholeOne.test(about) ||
    wholeTime.test(about) ||
    aPart.test(behind.slice(0, 20)) ||
    halfSoon.test(behind) ||
    /^\s+hour\s+and\s+(?!all\b)\w+(?:[\s-]\w+)?\s+min/i.test(behind);
  const unit = isOne ? unitAt(text, end) : undefined;
  if (unit?.dimension === 'milling') return found(i, 1, start, unit.end, unit);
  if (!unit || !measured.has(unit.dimension)) return undefined;
  const half = andAHalf(text, unit.end) ?? { adds: 0, end: unit.end };
  const hourly = unit.unit === 't' ? /^\s+(?:per|an)\s+hour\b/i.exec(text.slice(half.end)) : null;
  return found(i, 1 + half.adds, start, half.end + (hourly?.[0].length ?? 0), hourly ? { unit: 't/h', dimension: 'milling' } : unit);
}; // prettier-ignore

/** In the order in which they are tried. */
const unnumbered: readonly Unnumbered[] = [times, aFullWeek, scaleAlone, lastOfAWhole, lonePart, halfOfOnePercent, oneAndAHalf, halfOfAUnit, quarterOfAnHour, oneOfAUnit]; // prettier-ignore

/** What counts or measures at a token that is no number; nothing where none does. */
export function unnumberedAt(...at: Parameters<Unnumbered>): FoundNumber | undefined {
  for (const one of unnumbered) {
    const measures = one(...at);
    if (measures) return measures;
  }
  return undefined;
}
