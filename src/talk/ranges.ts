// Two numbers that are one: the ends of a range, a fall from one to the other, one in so many.
import { lifted } from '../core/reading/ends.ts';
import type { Token } from '../core/reading/tokens.ts';
import type { FoundNumber } from './found.ts';
import { inUnit, type SaidDimension } from './units.ts';

/** Whether two neighbours are the ends of one range, a fall, or apart. */
function relation(
  text: string,
  tokens: readonly Token[],
  a: FoundNumber,
  b: FoundNumber,
): 'range' | 'fall' | undefined {
  const between = text.slice(a.end, b.start);
  if (between.length > 24) return undefined;
  const word = between.replace(/[\s,]+/g, ' ').trim().toLowerCase(); // prettier-ignore
  const before = tokens[a.said.first - 1]?.text;
  const sameUnit = a.dimension === b.dimension && a.unit === b.unit;
  const fits = sameUnit || a.dimension === 'bare';
  if (!fits || b.dimension === 'clock' || /\n\s*\S/.test(between)) return undefined;
  if (isYear(b) && (a.value < 1000 || !/^[-–—]$/.test(word)) && b.dimension === 'bare') return undefined;
  if (between.includes('—') && /\s—\s/.test(between)) return undefined; // a thought between two, not a range
  if (word === 'until' && between.includes(',')) return undefined;
  if (
    /^[-–—]$/.test(word) &&
    (/^\s*[-–—]\s*\d/.test(text.slice(b.end, b.end + 5)) ||
      /\d\s*[-–—]\s*$/.test(text.slice(Math.max(0, a.start - 5), a.start)))
  )
    return undefined; // 18 – 72 – 10
  if (word === '' && between.includes(',') && follows(a, b)) return 'range';
  if (/^(?:(?:right |all the way )?down to|falling to|dropping to|to|until|till|-|–|—)$/.test(word)) {
    if (word === '-' && a.said.first > 0 && before === '-') return undefined;
    if (b.value < a.value && word !== '-' && b.dimension !== 'time') return 'fall';
  }
  const ascending = liftedEnd(a, b) < b.value;
  if (/^(?:to|up to|till|until|-|–|—)$/.test(word)) return ascending ? 'range' : undefined;
  if (word === 'or' && between.includes(',')) return undefined;
  if (word === 'or') return ascending && b.value <= 2.5 * liftedEnd(a, b) ? 'range' : undefined;
  if (word === 'and' && before === 'between') return ascending ? 'range' : undefined;
  return undefined;
}

/** “Seven, eight hours”, “seventy-five, seventy-six thousand”: one number and the next, for a little more than one. */
const follows = (a: FoundNumber, b: FoundNumber): boolean =>
  a.dimension === 'bare' &&
  Number.isInteger(a.value) &&
  (b.dimension !== 'bare' || a.value >= 20) &&
  !isYear(b) &&
  Math.abs(liftedEnd(a, b) / b.said.scale - b.value / b.said.scale + 1) < 1e-9;

const isYear = ({ value }: FoundNumber) => Number.isInteger(value) && value >= 1700 && value <= 2100;

/** The first end of a range as meant; one with a unit of its own stands as it is. */
const liftedEnd = (a: FoundNumber, b: FoundNumber): number =>
  a.dimension === 'bare'
    ? lifted({ value: a.value, scale: a.said.scale }, { value: b.value, scale: b.said.scale })
    : a.value;

/** Ranges joined into one, falls marked. */
export function joinRanges(
  text: string,
  tokens: readonly Token[],
  found: readonly FoundNumber[],
): FoundNumber[] {
  const joined: FoundNumber[] = [];
  for (const next of found) {
    const last = joined.at(-1);
    const how = last && last.low === undefined ? relation(text, tokens, last, next) : undefined;
    if (last && how === 'range') {
      joined[joined.length - 1] = { ...next, start: last.start, low: liftedEnd(last, next), said: { ...next.said, first: last.said.first }, year: last.year }; // prettier-ignore
    } else if (last && how === 'fall') {
      if (last.dimension === 'bare') Object.assign(last, { unit: next.unit, dimension: next.dimension });
      last.fall = 'from';
      joined.push({ ...next, fall: 'to' });
    } else joined.push(next);
  }
  return joined;
}

const chance =
  /^\s*(?:casks?\s+|parts?\s+)?(?:in|from|out of|of(?=\s+(?:each\s|every\s|ten\b|10\b)))\s*(?:every\s+|each\s+)?$/i;
const counted = new Set<SaidDimension>(['bare', 'casks']);

/** "One in thirty" is one share, not two numbers. */
export function joinShares(text: string, found: readonly FoundNumber[]): FoundNumber[] {
  const joined: FoundNumber[] = [];
  for (const next of found) {
    const last = joined.at(-1);
    if (
      last &&
      counted.has(last.dimension) &&
      counted.has(next.dimension) &&
      next.value <= 100 &&
      !next.year &&
      last.value < next.value &&
      Number.isInteger(next.value) &&
      next.start - last.end < 20 &&
      chance.test(text.slice(last.end, next.start))
    ) {
      const hundred = next.value === 100;
      joined[joined.length - 1] = {
        ...last,
        end: next.dimension === 'bare' ? next.end : (next.numberEnd ?? next.end),
        value: hundred ? last.value : last.value / next.value,
        unit: hundred ? '%' : '',
        dimension: hundred ? 'percent' : 'share',
      };
    } else joined.push(next);
  }
  return joined; // prettier-ignore
}

const inTenths = [/\bhusks?\s+(?:is\s+)?$/i, /\bgrits?\s+(?:is\s+)?$/i, /\bflour\s+(?:is\s+)?$/i];
/** “Husk two, grits seven, flour one”: three parts that make ten. */
export function tenthsOfGrist(text: string, found: readonly FoundNumber[]): void {
  for (let i = 0; i + 2 < found.length; i++) {
    const three = found.slice(i, i + 3);
    const isGrist = three.every(({ dimension, start }, k) => dimension === 'bare' && inTenths[k]!.test(text.slice(Math.max(0, start - 12), start)));
    if (isGrist && three[0]!.value + three[1]!.value + three[2]!.value === 10)
      for (const each of three) Object.assign(each, { value: each.value / 10, dimension: 'share' });
  }
} // prettier-ignore

const plusMinus = /^\s*(?:±|\+\s*\/?\s*[-−–]|,?\s*plus\s+or\s+minus)\s*$/i;
const andMore = /^\s+(?:and\s+)?$/i;
const inParts = new Set<SaidDimension>(['time', 'mass']);

/** "42 ± 2" is one figure, and so is "seven hours and thirty-six minutes". */
export function joinParts(text: string, found: readonly FoundNumber[]): FoundNumber[] {
  const joined: FoundNumber[] = [];
  for (const next of found) {
    const last = joined.at(-1);
    const between = last && text.slice(last.end, next.start);
    const clock = last && clockOf(last, next, between!);
    if (last && clock !== undefined)
      Object.assign(last, { end: next.end, value: clock, unit: '', dimension: 'clock' });
    else if (last && plusMinus.test(between!)) {
      const unit = last.dimension === 'bare' ? { unit: next.unit, dimension: next.dimension } : {};
      Object.assign(last, unit, {
        end: next.end,
        around: inUnit(next.value, next.unit, last.unit || next.unit),
      });
    } else if (last && andMore.test(between!) && isSmaller(next, last))
      Object.assign(last, { end: next.end, value: last.value + inUnit(next.value, next.unit, last.unit) });
    else if (last && /^[\s-]+$/.test(between!) && isBroken(text, last, next))
      Object.assign(last, { end: next.end, value: next.value < 10 ? 1000 * last.value + 100 * next.value : 1000 * last.value + next.value }); // prettier-ignore
    else if (last && /^[\s-]+$/.test(between!) && isHalf(text, last, next))
      Object.assign(last, { end: next.end, value: last.value + 0.5 });
    else if (last && /^,\s+$/.test(between!) && isThousands(text, last, next))
      Object.assign(last, {
        end: next.end,
        value: last.value + next.value,
        unit: next.unit,
        dimension: next.dimension,
      });
    else if (last && isSaidApart(text, last, next, between!))
      Object.assign(last, { end: next.end, value: 100 * last.value + next.value });
    else if (last && last.unit === 'lb' && /^\s+$/.test(between!) && isPence(text, last, next))
      Object.assign(last, {
        end: next.end,
        value: last.value + next.value / 100,
        unit: '£',
        dimension: 'money',
      });
    else if (
      last &&
      next.year &&
      monthBetween.test(between!) &&
      last.dimension === 'bare' &&
      last.value <= 31
    )
      joined[joined.length - 1] = { ...next, start: last.start };
    else if (
      last &&
      isUnsaid(next, last) &&
      (last.unit === 'h' || last.unit === 'm' ? andMore : /^\s+$/).test(between!)
    )
      Object.assign(last, { end: next.end, value: last.value + next.value / inOne[last.unit]! });
    else joined.push(next);
  }
  return joined;
}

/** “Seven minutes past eight”, “ten to six”, in hours. */
function clockOf(minutes: FoundNumber, hour: FoundNumber, between: string): number | undefined {
  const [, side] = /^\s*(past|to)\s+$/i.exec(between) ?? [];
  const isTime = (minutes.dimension === 'bare' || minutes.unit === 'min') && (hour.dimension === 'clock' || hour.dimension === 'bare'); // prettier-ignore
  if (!side || !isTime || hour.value > 12 || minutes.value >= 60 || !Number.isInteger(minutes.value)) return undefined;
  if (/past/i.test(side)) return hour.value + minutes.value / 60;
  return minutes.dimension === 'bare' && minutes.value > hour.value && minutes.value % 5 === 0
    ? hour.value - minutes.value / 60
    : undefined;
} // prettier-ignore

/** How many of the next smaller unit are in one: “five hours forty”, “six foot four”, “two ton six hundred”. */
const inOne: Readonly<Record<string, number>> = { h: 60, feet: 12, t: 1000, m: 100, '£': 100, '€': 100 };
const isUnsaid = (part: FoundNumber, whole: FoundNumber): boolean =>
  part.dimension === 'bare' &&
  whole.low === undefined &&
  Number.isInteger(whole.value) &&
  Number.isInteger(part.value) &&
  part.value < (inOne[whole.unit] ?? 0) &&
  (whole.unit !== 't' || part.value % 50 === 0);

/** “Three pound eighty”. */
const isPence = (text: string, { start, end }: FoundNumber, { dimension, value, low }: FoundNumber): boolean =>
  /pounds?$/i.test(text.slice(start, end)) && dimension === 'bare' && low === undefined && Number.isInteger(value) && value >= 10 && value < 100; // prettier-ignore
const monthBetween =
  /^\s+(?:january|february|march|april|may|june|july|august|september|october|november|december)\s+$/i;

/** Whether one is less than one of the other, in a smaller unit of the same. */
const isSmaller = (part: FoundNumber, whole: FoundNumber): boolean =>
  part.dimension === whole.dimension &&
  inParts.has(part.dimension) &&
  part.low === undefined &&
  inUnit(1, part.unit, whole.unit) < 1 &&
  inUnit(part.value, part.unit, whole.unit) < 1;

const inWords = (text: string, { start, end }: FoundNumber) => !/\d/.test(text.slice(start, end));
const isBareWhole = ({ dimension, value, low, said }: FoundNumber) =>
  dimension === 'bare' && low === undefined && Number.isInteger(value) && said.scale === 1;

/** “Ten three” is 10,300 and “three nine-sixty” 3,960: thousands, and then hundreds. */
const isBroken = (text: string, thousands: FoundNumber, rest: FoundNumber): boolean =>
  isBareWhole(thousands) &&
  isBareWhole(rest) &&
  inWords(text, thousands) &&
  inWords(text, rest) &&
  thousands.value >= 2 &&
  thousands.value < 40 && // “sixty-three five” is a strength
  ((rest.value >= 1 && rest.value < 10 && thousands.value >= 10) || (rest.value > 100 && rest.value < 1000));

/** “Sixty-three five” is a strength and a half. */
const isHalf = (text: string, whole: FoundNumber, rest: FoundNumber): boolean =>
  isBareWhole(whole) && isBareWhole(rest) && inWords(text, whole) && inWords(text, rest) && rest.value === 5 && whole.value > 56 && whole.value < 76 && whole.value % 10 !== 0; // prettier-ignore

/** “One thousand, two hundred and ninety-five litres”. */
const isThousands = (text: string, thousands: FoundNumber, rest: FoundNumber): boolean =>
  thousands.dimension === 'bare' && inWords(text, thousands) && /thousand$/i.test(text.slice(thousands.start, thousands.end)) && rest.value >= 100 && rest.value < 1000 && /hundred/i.test(text.slice(rest.start, rest.end)); // prettier-ignore

/** “10 58” is a gravity that was heard in two. */
const isSaidApart = (text: string, first: FoundNumber, rest: FoundNumber, between: string): boolean =>
  between === ' ' &&
  first.value === 10 &&
  isBareWhole(first) &&
  isBareWhole(rest) &&
  rest.value >= 20 &&
  rest.value < 100 &&
  /^\d\d$/.test(text.slice(rest.start, rest.end));
