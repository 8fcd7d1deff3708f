// Each number of a text with the unit that it is said in.
import { andAHalf } from '../core/reading/halves.ts';
import { tidy, type SaidNumber } from '../core/reading/numbers.ts';
import { timeAt } from '../core/reading/times.ts';
import type { Token } from '../core/reading/tokens.ts';
import { aloneScale, isLonePart, lastPart } from './alone.ts';
import { belowZero } from './below-zero.ts';
import { clockAt, hourIn } from './clock-times.ts';
import { idle, oneStill } from './counts-nothing.ts';
import { unitAt, type SaidDimension } from './units.ts';
import { yearOf } from './short-years.ts';

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

const money: Readonly<Record<string, string>> = { '£': '£', $: '$', '€': '€' };
const yearBefore = new Set('in since from until till by of early late founded established est built opened around about circa spring summer autumn winter january february march april may june july august september october november december year to and between before after'.split(' ')); // prettier-ignore

/** “Two pairs”: so many stills twice. */
const pairOf = /^\s+(?:identical\s+|big\s+)?pairs?\b(?!\s+of\s+(?!stills|pots))/i;

function attach(text: string, tokens: readonly Token[], said: SaidNumber): FoundNumber | undefined {
  const first = tokens[said.first]!;
  const numberEnd = tokens[said.next - 1]!.end;
  const of = /\s+of\s+(?:a\s+|an\s+)?/iy;
  of.lastIndex = numberEnd;
  const skipped = said.fraction || tokens[said.first + 1]?.text === 'couple' ? of.exec(text) : null;
  const odd = /^[\s-]?(?:odd|some)\b/i.exec(text.slice(numberEnd, numberEnd + 6));
  const unit = unitAt(text, numberEnd + ((skipped ?? odd)?.[0].length ?? 0));
  const found: FoundNumber = {
    start: first.start,
    end: unit?.end ?? numberEnd,
    numberEnd,
    value: said.value,
    said,
    unit: unit?.unit ?? '',
    dimension: unit?.dimension ?? (said.fraction ? 'share' : 'bare'),
    year: false,
  };
  const pairs = pairOf.exec(text.slice(numberEnd, numberEnd + 40));
  if (pairs && Number.isInteger(found.value) && (found.dimension === 'bare' || found.dimension === 'stills'))
    return { ...found, value: 2 * found.value, unit: '', dimension: 'stills', end: Math.max(numberEnd + pairs[0].length, found.dimension === 'stills' ? found.end : 0) };
  const still = found.value === 1 && found.dimension === 'bare' && first.text === 'one' ? oneStill.exec(text.slice(numberEnd, numberEnd + 40)) : null;
  if (still) return { ...found, dimension: 'stills', end: numberEnd + still[0].length };
  if (/^[2-9]\.000$|^[1-9]\d{1,2}\.000$/.test(first.text) && said.next === said.first + 1 && found.value < 1000) found.value *= 1000; // “4.000 litres”, said where a dot parts the thousands
  if (found.unit === 'kt') Object.assign(found, { value: tidy(1000 * found.value), unit: 't' });
  if (found.unit === 'quintals') Object.assign(found, { value: tidy(100 * found.value), unit: 'kg' });
  if (found.unit === 'pence') Object.assign(found, { value: tidy(found.value / 100), unit: '£' });
  if (found.unit === 'kL') Object.assign(found, { value: tidy(1000 * found.value), unit: 'L' });
  const fifties =
    found.dimension === 'bare' && found.value < 10 ? inFifties.exec(text.slice(numberEnd)) : null;
  if (fifties) Object.assign(found, { value: 100 * found.value + 50, end: numberEnd + fifties[0].length });
  if (found.unit === 'years' && found.value > 200)
    Object.assign(found, { unit: '', dimension: 'bare', end: numberEnd }); // “8,940 yr” of a crib is so many a year
  if (said.fraction && parted.has(found.dimension))
    Object.assign(found, { dimension: 'share', end: numberEnd }); // “a quarter hogsheads”
  if (idle(text, tokens, said, found.dimension)) return undefined;
  const before = tokens[said.first - 1];
  if (
    before?.text === 'minus' &&
    tokens[said.first - 2]?.text !== 'or' &&
    tokens[said.first - 2]?.kind !== 'figure' && // “1,058 minus 245”
    found.value <= COLDEST &&
    (found.dimension === 'bare' || found.dimension === 'temperature')
  )
    Object.assign(found, { start: before.start, value: -found.value });
  const below = found.dimension === 'bare' || found.unit === '°' ? belowZero(text, found) : undefined;
  if (below) return { ...found, value: -found.value, end: below, ...(found.unit === '°' ? { unit: '° gravity', dimension: 'gravity' } : {}) };
  if (found.unit === '° over proof') Object.assign(found, { unit: '° proof', value: 100 + found.value });
  if (found.unit === '° under proof') Object.assign(found, { unit: '° proof', value: 100 - found.value });
  const sign = before && money[before.text];
  if (sign) return { ...found, start: before.start, end: numberEnd, unit: sign, dimension: 'money' };
  if (found.unit === 'm' && text.slice(numberEnd, found.end) === 'M')
    return { ...found, unit: '', dimension: 'bare', value: tidy(1e6 * found.value), said: { ...said, scale: 1e6 } }; // 2.5M of a crib
  const millions = found.unit === 'm' ? unitAt(text, found.end) : undefined;
  if (millions && inMillions.has(millions.dimension))
    return { ...found, ...millions, value: tidy(1e6 * found.value), said: { ...said, scale: 1e6 } };
  if (found.dimension === 'bare' && isDegrees(found.value) && gravityBefore.test(text.slice(Math.max(0, first.start - 40), first.start)))
    return { ...found, unit: '° gravity', dimension: 'gravity' }; // prettier-ignore
  if (found.unit === 'lb' && (said.scale >= 1e6 || found.value >= 1e5))
    return { ...found, unit: '£', dimension: 'money' };
  if (found.dimension === 'clock')
    return { ...found, value: clock(first, found.value, text.slice(numberEnd, found.end)) };
  const hour = found.dimension === 'bare' ? hourIn(text, found.start, numberEnd, found.value) : undefined;
  if (hour) return { ...found, value: hour.hours, end: hour.end, dimension: 'clock' };
  if (before?.text === 'past' && found.dimension === 'bare')
    return ['half', 'quarter'].includes(tokens[said.first - 2]?.text ?? '')
      ? {
          ...found,
          start: tokens[said.first - 2]!.start,
          value: found.value + (tokens[said.first - 2]!.text === 'half' ? 0.5 : 0.25),
          dimension: 'clock',
        }
      : { ...found, dimension: 'clock' };
  const apostrophe =
    /['’]/.test(text[first.start - 1] ?? '') && /^\d\d$/.test(first.text) && found.dimension === 'bare';
  if (apostrophe) return { ...found, start: first.start - 1, value: (found.value <= SOON ? 2000 : 1900) + found.value, year: true }; // prettier-ignore
  const year = found.dimension === 'bare' ? yearOf(text, tokens, said, found) : undefined;
  if (year) return { ...found, start: year.start, value: year.value, year: true };
  found.year =
    found.dimension === 'bare' && Number.isInteger(found.value) && found.value >= 1500 && found.value <= 2100 &&
    (first.kind === 'word' ? tokens[said.first]!.text !== 'a' && said.scale === 1 : /^\d{4}$/.test(first.text)) &&
    (yearBefore.has(before?.text ?? '') || before?.text === '('); // prettier-ignore
  return found;
} // prettier-ignore

const COLDEST = 60; // below zero: a larger number behind “minus” is taken away
const SOON = 30; // '09 is of this century, '77 of the last

/** What 1.6m is a million and a bit of, and not metres. */
const inMillions = new Set<SaidDimension>(['volume', 'alcohol', 'mass', 'casks', 'bottles', 'people']);

/** "A gravity of 58": degrees of gravity, told by the word before. */
const gravityBefore =
  /\bgravit(?:y|ies)(?:\s+(?:is|was|of|at|comes|out|to|about|around|roughly|some|nearly)){0,3}\s+$/i;
const isDegrees = (value: number) => value >= 20 && value <= 130;

/** 5.30 pm as 17.5 hours. */
function clock(figure: Token, value: number, after: string): number {
  const [, hours, minutes] = /^(\d{1,2})[.:](\d{2})$/.exec(figure.text) ?? [];
  const hour = hours === undefined ? value : Number(hours) + Number(minutes) / 60;
  return tidy(/p/i.test(after) && hour < 12 ? hour + 12 : hour);
}

/** “Two-fifties” are casks of 250, “seven-fifties” bottles of 750. */
const inFifties = /^[\s-]fifties\b/i;
const parted = new Set<SaidDimension>(['casks', 'bottles']);
const fullWeek = /(?<!\b(?:in|per|of|each)\s)$/i;
/** One of a unit, and not so much for each: “takes an hour”, “it's a tonne”. */
const wholeOne =
  /(?:\b(?:than|takes?|is|it['’]s|sit|say|so|be|do|nearly|exactly|about|use|off|over)\s+|[.?!\n]\s*)an?\s+(?:whole\s+)?(?:tonne|ton|hour|litre|liter|month|fortnight|week|gallon)\b(?!\s+(?:and|of\s+th))|\bas\s+an?\s+metre\s+(?=[1-9])|\ban?\s+metre\s+(?=(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b)/i;
/** “Wait an hour”, “clean for a week”, “in copper a day”: so long or so much, and not so much for each. */
const wholeTime =
  /\b(?:for|takes?|wait|stays?|stop|within|was|be|about|that['’]s|so|the)\s+an?\s+(?:whole\s+)?(?:hour|minute|day|week|month|year|fortnight|century|hundredweight|gramme|gram)\b(?!['’]|\s+(?:and\b|of\s+th|each|at|from|or))/i;
const aPart = /^\s+hour\s+(?:and\s+)?(?:[1-5]\d|five|ten|fifteen|twenty|twenty-\w+|thirty|forty|fifty)\b/i;
const halfPercent = /^half\s+(?:of\s+|o\s+)?(?:one|een|wan|1)\s+per\s?cent\b/i;
/** “The first gallon and a half”, with no one before it. */
const halved = new Set(['gallon', 'tonne', 'ton', 'litre', 'hour']);
const halfSoon = /\sand\s+(?:an?\s+)?(?:half|quarter|three[\s-]quarters?)\b/i;
const measured = new Set<SaidDimension>(['mass', 'volume', 'time', 'length']);
const halves = new Set<SaidDimension>([...measured, 'casks']);

const inHundred =
  /\s+(?:in|out\s+of)\s+(?:the|a|every|each|one)\s+hundred\b(?!\s+(?:and\s+)?(?:\d|one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty)\b)/iy; // and not “in a hundred and ninety”

/** Every number that counts or measures something, with its unit, in order. */
export function gather(
  text: string,
  tokens: readonly Token[],
  numbers: readonly SaidNumber[],
): FoundNumber[] {
  const found: FoundNumber[] = [];
  let taken = 0;
  let at = 0;
  for (let i = 0; i < tokens.length; i++) {
    const said = numbers[at]?.first === i ? numbers[at++] : undefined;
    const token = tokens[i]!;
    if (token.start < taken) continue;
    const clock = clockAt(text, token);
    if (clock) {
      const said = { value: clock.hours, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ start: token.start, end: clock.end, value: clock.hours, said, unit: '', dimension: 'clock', year: false }); // prettier-ignore
      taken = clock.end;
    } else if (said) {
      const time = token.kind === 'figure' ? timeAt(text, token.start, false) : undefined;
      const one: FoundNumber | undefined = time
        ? {
            start: token.start,
            end: time.end,
            value: tidy(time.hours),
            said,
            unit: 'h',
            dimension: 'time',
            year: false,
          }
        : attach(text, tokens, said);
      if (!one) continue;
      const half = halves.has(one.dimension) ? andAHalf(text, one.end) : undefined;
      if (half) Object.assign(one, { value: one.value + half.adds, end: half.end });
      const hourly = half && one.unit === 't' ? /^\s+(?:per|an)\s+hour\b/i.exec(text.slice(half.end)) : null;
      if (hourly) Object.assign(one, { end: one.end + hourly[0].length, unit: 't/h', dimension: 'milling' });
      inHundred.lastIndex = one.end;
      const share = inHundred.exec(text);
      if (share) Object.assign(one, { end: one.end + share[0].length, unit: '%', dimension: 'percent' });
      taken = one.end;
      found.push(one);
    } else if (token.text === 'twice' || token.text === 'thrice') {
      const value = token.text === 'twice' ? 2 : 3;
      const said = { value, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({
        start: token.start,
        end: token.end,
        value,
        said,
        unit: '',
        dimension: 'times',
        year: false,
      });
      taken = token.end;
    } else if (
      token.text === 'a' &&
      /^\s+(?:full|whole)\s+week\b/i.test(text.slice(token.end, token.end + 20)) &&
      fullWeek.test(text.slice(Math.max(0, token.start - 6), token.start))
    ) {
      const unit = unitAt(text, token.end)!;
      const said = { value: 1, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ ...unit, start: token.start, value: 1, said, year: false });
      taken = unit.end;
    } else if (
      aloneScale[token.text] !== undefined &&
      tokens[i - 1]?.kind !== 'figure' &&
      unitAt(text, token.end)
    ) {
      const unit = unitAt(text, token.end)!;
      if (unit.unit === '' || unit.end === token.end) continue;
      const value = aloneScale[token.text]!;
      const said = { value, first: i, next: i + 1, scale: value, fraction: false };
      found.push({ ...unit, start: token.start, value, said, year: false });
      taken = unit.end;
    } else if (lastPart(text, token) !== undefined) {
      const said = { value: lastPart(text, token)!, first: i, next: i + 1, scale: 1, fraction: true };
      found.push({ start: token.start, end: token.end, value: said.value, said, unit: '', dimension: 'share', year: false }); // prettier-ignore
      taken = token.end;
    } else if (isLonePart(text, tokens, i)) {
      const start = token.text === 'half' ? token.start : tokens[i - 1]!.start;
      const said = {
        value: token.text === 'half' ? 0.5 : 0.333,
        first: i,
        next: i + 1,
        scale: 1,
        fraction: true,
      };
      found.push({
        start,
        end: token.end,
        value: said.value,
        said,
        unit: '',
        dimension: 'share',
        year: false,
      });
      taken = token.end;
    } else if (token.text === 'half' && halfPercent.test(text.slice(token.start, token.start + 30))) {
      const end = token.start + halfPercent.exec(text.slice(token.start, token.start + 30))![0].length;
      const said = { value: 0.5, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ start: token.start, end, value: 0.5, said, unit: '%', dimension: 'percent', year: false });
      taken = end;
    } else if (halved.has(token.text) && tokens[i - 1]?.kind !== 'figure' && andAHalf(text, token.end)) {
      const half = andAHalf(text, token.end)!;
      const said = { value: 1 + half.adds, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ ...unitAt(text, token.start - 1)!, start: token.start, end: half.end, value: said.value, said, year: false }); // prettier-ignore
      taken = half.end;
    } else if (token.text === 'half') {
      const unit = unitAt(text, token.end);
      if (
        !unit ||
        !measured.has(unit.dimension) ||
        !/^\W?(?:lit|gal|hour|year|ton|kil)/i.test(text.slice(token.end))
      )
        continue;
      const said = { value: 0.5, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ ...unit, start: token.start, value: 0.5, said, year: false });
      taken = unit.end;
    } else if (token.text === 'a' || token.text === 'an') {
      if (
        !wholeOne.test(text.slice(Math.max(0, token.start - 14), token.end + 20)) &&
        !wholeTime.test(text.slice(Math.max(0, token.start - 14), token.end + 20)) &&
        !aPart.test(text.slice(token.end, token.end + 20)) &&
        !halfSoon.test(text.slice(token.end, token.end + 40)) &&
        !/^\s+hour\s+and\s+(?!all\b)\w+(?:[\s-]\w+)?\s+min/i.test(text.slice(token.end, token.end + 40))
      )
        continue;
      const unit = unitAt(text, token.end);
      if (!unit || !measured.has(unit.dimension)) continue;
      const half = andAHalf(text, unit.end) ?? { adds: 0, end: unit.end };
      const said = { value: 1 + half.adds, first: i, next: i + 1, scale: 1, fraction: false };
      const hourly = unit.unit === 't' ? /^\s+(?:per|an)\s+hour\b/i.exec(text.slice(half.end)) : null;
      const end = half.end + (hourly?.[0].length ?? 0);
      found.push({ ...unit, ...(hourly ? { unit: 't/h', dimension: 'milling' as const } : {}), start: token.start, end, value: said.value, said, year: false }); // prettier-ignore
      taken = end;
    }
  }
  return found;
}
