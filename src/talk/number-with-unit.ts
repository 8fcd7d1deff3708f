// A number of a text with the unit that stands beside it, and what it is by that: money, degrees, a time of day, a year.
import { tidy, type SaidNumber } from '../core/reading/numbers.ts';
import type { Token } from '../core/reading/tokens.ts';
import { belowZero } from './below-zero.ts';
import { hourIn } from './clock-times.ts';
import { idle, oneStill } from './counts-nothing.ts';
import type { FoundNumber } from './found.ts';
import { yearOf } from './short-years.ts';
import { unitAt, type SaidDimension } from './units.ts';

const money: Readonly<Record<string, string>> = { '£': '£', $: '$', '€': '€' };
const yearBefore = new Set('in since from until till by of early late founded established est built opened around about circa spring summer autumn winter january february march april may june july august september october november december year to and between before after'.split(' ')); // prettier-ignore

/** “Two pairs”: so many stills twice. */
const pairOf = /^\s+(?:identical\s+|big\s+)?pairs?\b(?!\s+of\s+(?!stills|pots))/i;

/** A number with the unit that it is said in; nothing where it counts nothing. */
export function withUnit(text: string, tokens: readonly Token[], said: SaidNumber): FoundNumber | undefined {
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
