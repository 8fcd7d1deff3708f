// A text's quantities: each number with its unit, its place, and whether it was said as about.
import { numbersIn, tidy, type Said } from './numbers.ts';
import type { Token } from './tokens.ts';
import { unitAt, type Dimension } from './units.ts';

export interface Quantity {
  /** Where it stands in the text, in UTF-16 units, its unit included. */
  readonly start: number;
  readonly end: number;
  /** One value, or the ends of a range. */
  readonly value?: number;
  readonly range?: readonly [number, number];
  readonly unit: string;
  readonly dimension: Dimension;
  readonly approximate: boolean;
  /** First and second number of a fall, as in "from 72 down to 60". */
  readonly fall?: 'from' | 'to';
}

interface Found {
  start: number;
  end: number;
  numberEnd: number;
  value: number;
  low?: number;
  said: Said;
  unit: string;
  dimension: Dimension;
  fall?: 'from' | 'to';
  next: number;
  year: boolean;
}

const money: Readonly<Record<string, string>> = { '£': '£', $: '$', '€': '€' };
const vague = new Set('about around roughly approximately approx some nearly almost near under over circa ca c ~ ≈ maybe perhaps say call something like close upwards up least most than bit best pushing couple give odd'.split(' ')); // prettier-ignore
const vagueAfter =
  /^[\s,-]*(?:or so\b|ish\b|odd\b|give or take|or thereabouts|or thereabout|near enough|or near|more or less|roughly|\+)/i;
const yearBefore = new Set('in since from until till by of early late founded established est built opened around about circa spring summer autumn winter january february march april may june july august september october november december year to and between before after'.split(' ')); // prettier-ignore

const oneIn = /^\s+(?:in|out\s+of)\s+(?:every\s+)?(?:\d{1,2}\b|five|six|eight|ten|twelve|twenty|thirty|forty|fifty|a\s+hundred)/i;

/** Numbers that count nothing: "one of the best", "the 1st", "CO2", "that one". */
function idle(text: string, tokens: readonly Token[], { first, next, value }: Said, dimension: Dimension): boolean {
  const [before, token, after] = [tokens[first - 1], tokens[first]!, tokens[next]];
  if (token.kind === 'figure' && token.joined && before?.kind === 'word') return true;
  if (token.kind === 'figure' && after?.joined && /^(?:st|nd|rd|th)$/.test(after.text)) return true;
  if (token.text !== 'one' || next !== first + 1 || value !== 1) return false;
  if (oneIn.test(text.slice(token.end, token.end + 24))) return false;
  if (dimension === 'casks' || dimension === 'bottles' || dimension === 'mashes') return true;
  return dimension === 'bare' ? !/^(?:number|no|#)$/.test(before?.text ?? '')
    : /^days?$/.test(after?.text ?? '');
}

function attach(text: string, tokens: readonly Token[], said: Said): Found | undefined {
  const first = tokens[said.first]!;
  const numberEnd = tokens[said.next - 1]!.end;
  const of = /^\s+of\s+(?:a\s+|an\s+)?/iy;
  of.lastIndex = numberEnd;
  const skipped = said.fraction || tokens[said.first + 1]?.text === 'couple' ? of.exec(text) : null;
  const unit = unitAt(text, numberEnd + (skipped?.[0].length ?? 0));
  const found: Found = {
    start: first.start,
    end: unit?.end ?? numberEnd,
    numberEnd,
    value: said.value,
    said,
    unit: unit?.unit ?? '',
    dimension: unit?.dimension ?? (said.fraction ? 'share' : 'bare'),
    next: said.next,
    year: false,
  };
  if (idle(text, tokens, said, found.dimension)) return undefined;
  const before = tokens[said.first - 1];
  if (found.unit === '° over proof') Object.assign(found, { unit: '° proof', value: 100 + found.value });
  if (found.unit === '° under proof') Object.assign(found, { unit: '° proof', value: 100 - found.value });
  const sign = before && money[before.text];
  if (sign) return { ...found, start: before.start, end: numberEnd, unit: sign, dimension: 'money' };
  if (found.unit === 'lb' && (said.scale >= 1e6 || found.value >= 1e5))
    return { ...found, unit: '£', dimension: 'money' };
  if (found.dimension === 'clock')
    return { ...found, value: clock(first, found.value, text.slice(numberEnd, found.end)) };
  if (before?.text === 'past' && found.dimension === 'bare')
    return tokens[said.first - 2]?.text === 'half'
      ? { ...found, start: tokens[said.first - 2]!.start, value: found.value + 0.5, dimension: 'clock' }
      : { ...found, dimension: 'clock' };
  found.year =
    found.dimension === 'bare' && Number.isInteger(found.value) && found.value >= 1500 && found.value <= 2100 &&
    (first.kind === 'word' ? tokens[said.first]!.text !== 'a' && said.scale === 1 : /^\d{4}$/.test(first.text)) &&
    (yearBefore.has(before?.text ?? '') || before?.text === '('); // prettier-ignore
  return found;
}

/** 5.30 pm as 17.5 hours. */
function clock(figure: Token, value: number, after: string): number {
  const [, hours, minutes] = /^(\d{1,2})[.:](\d{2})$/.exec(figure.text) ?? [];
  const hour = hours === undefined ? value : Number(hours) + Number(minutes) / 60;
  return tidy(/p/i.test(after) && hour < 12 ? hour + 12 : hour);
}

/** "A tonne and a half", "an hour and a half", "six tonnes and a half". */
function andAHalf(text: string, at: number): { adds: number; end: number } | undefined {
  const tail = /\s+and\s+an?\s+(half|quarter)\b(?!\s+(?:million|thousand|hundred))/iy;
  tail.lastIndex = at;
  const found = tail.exec(text);
  return found
    ? { adds: found[1]!.toLowerCase() === 'half' ? 0.5 : 0.25, end: at + found[0].length }
    : undefined;
}
const measured = new Set<Dimension>(['mass', 'volume', 'time', 'length']);

const inHundred = /\s+(?:in|out\s+of)\s+(?:the|a|every|each|one)\s+hundred\b/iy;

function gather(text: string, tokens: readonly Token[], numbers: readonly Said[]): Found[] {
  const found: Found[] = [];
  let taken = 0;
  let at = 0;
  for (let i = 0; i < tokens.length; i++) {
    const said = numbers[at]?.first === i ? numbers[at++] : undefined;
    const token = tokens[i]!;
    if (token.start < taken) continue;
    if (said) {
      const one = attach(text, tokens, said);
      if (!one) continue;
      const half = measured.has(one.dimension) ? andAHalf(text, one.end) : undefined;
      if (half) Object.assign(one, { value: one.value + half.adds, end: half.end });
      inHundred.lastIndex = one.end;
      const share = inHundred.exec(text);
      if (share) Object.assign(one, { end: one.end + share[0].length, unit: '%', dimension: 'percent' });
      taken = one.end;
      found.push(one);
    } else if (token.text === 'a' || token.text === 'an') {
      const unit = unitAt(text, token.end);
      const half = unit && measured.has(unit.dimension) ? andAHalf(text, unit.end) : undefined;
      if (!unit || !half) continue;
      const said = { value: 1 + half.adds, first: i, next: i + 1, scale: 1, fraction: false };
      found.push({ ...unit, start: token.start, end: half.end, numberEnd: token.end, value: said.value, said, next: i + 1, year: false }); // prettier-ignore
      taken = half.end;
    }
  }
  return found;
}

const scaleOf = ({ said, value }: Found) =>
  said.scale > 1
    ? said.scale
    : value >= 1000 && value % 1000 === 0
      ? 1000
      : value >= 1000 && value % 100 === 0
        ? 1000
        : 1;

/** Whether two neighbours are the ends of one range, a fall, or apart. */
function relation(text: string, tokens: readonly Token[], a: Found, b: Found): 'range' | 'fall' | undefined {
  const between = text.slice(a.end, b.start);
  if (between.length > 24) return undefined;
  const word = between.replace(/[\s,]+/g, ' ').trim().toLowerCase(); // prettier-ignore
  const before = tokens[a.said.first - 1]?.text;
  const sameUnit = a.dimension === b.dimension && a.unit === b.unit;
  const fits = sameUnit || a.dimension === 'bare';
  if (!fits || b.dimension === 'clock') return undefined;
  if (/^(?:(?:right |all the way )?down to|falling to|dropping to|to|until|till|-|–|—)$/.test(word)) {
    if (word === '-' && a.said.first > 0 && before === '-') return undefined;
    if (b.value < a.value && word !== '-' && b.dimension !== 'time') return 'fall';
  }
  const ascending = lifted(a, b) < b.value;
  if (/^(?:to|up to|till|until|-|–|—)$/.test(word)) return ascending ? 'range' : undefined;
  if (word === 'or') return ascending && b.value <= 2.5 * lifted(a, b) ? 'range' : undefined;
  if (word === 'and' && before === 'between') return ascending ? 'range' : undefined;
  return undefined;
}

/** The first end of a range as meant: the 5 of "5-6,000" is five thousand. */
function lifted(a: Found, b: Found): number {
  const scale = scaleOf(b);
  return a.dimension === 'bare' && a.said.scale === 1 && scale > 1 && a.value < 1000 && a.value * scale < b.value && a.value < b.value / 50
    ? a.value * scale
    : a.value; // prettier-ignore
}

function joinRanges(text: string, tokens: readonly Token[], found: readonly Found[]): Found[] {
  const joined: Found[] = [];
  for (const next of found) {
    const last = joined.at(-1);
    const how = last && last.low === undefined ? relation(text, tokens, last, next) : undefined;
    if (last && how === 'range') {
      joined[joined.length - 1] = { ...next, start: last.start, low: lifted(last, next), said: { ...next.said, first: last.said.first }, year: last.year }; // prettier-ignore
    } else if (last && how === 'fall') {
      if (last.dimension === 'bare') Object.assign(last, { unit: next.unit, dimension: next.dimension });
      last.fall = 'from';
      joined.push({ ...next, fall: 'to' });
    } else joined.push(next);
  }
  return joined;
}

const inList = /^\s*(?:,|\/|&|;|and|or|then|,\s*(?:and|or|then)(?:\s+then)?)\s*$/i;
const passedOn = new Set<Dimension>([
  'percent',
  'strength',
  'temperature',
  'time',
  'volume',
  'clock',
  'length',
]);

const carried = new Set<Dimension>(['percent', 'strength', 'temperature']);
const carrier = /(?:^|\s)(?:at|to|from)\s+$/i;

/** In "on at 73 per cent and off at 62" the second is per cent as well: same sentence, a bare number after "at" or "to". */
function carryUnits(text: string, found: readonly Found[]): void {
  for (let i = 1; i < found.length; i++) {
    const [a, b] = [found[i - 1]!, found[i]!];
    if (b.dimension !== 'bare' || b.year || !carried.has(a.dimension) || b.start - a.end > 80 || (a.dimension === 'percent' && b.value > 100)) continue;
    const between = text.slice(a.end, b.start);
    if (!/[.;!?]\s|\n/.test(between) && carrier.test(between) && !/^\s+[a-z]+s\b/i.test(text.slice(b.end, b.end + 20)))
      Object.assign(b, { unit: a.unit, dimension: a.dimension });
  }
} // prettier-ignore

/** In "64, 75 and 85 degrees" all three are degrees. */
function shareUnits(text: string, found: readonly Found[]): void {
  for (let i = found.length - 2; i >= 0; i--) {
    const [a, b] = [found[i]!, found[i + 1]!];
    if (a.dimension !== 'bare' || a.year || !passedOn.has(b.dimension) || b.start - a.end > 12) continue;
    const between = text.slice(a.end, b.start);
    if (inList.test(between)) Object.assign(a, { unit: b.unit, dimension: b.dimension });
  }
}

const chance = /^\s*(?:in|out of)\s*$/i;

/** "One in thirty" is one share, not two numbers. */
function joinShares(text: string, found: readonly Found[]): Found[] {
  const joined: Found[] = [];
  for (const next of found) {
    const last = joined.at(-1);
    if (
      last &&
      last.dimension === 'bare' &&
      next.dimension === 'bare' &&
      !next.year &&
      last.value < next.value &&
      Number.isInteger(next.value) &&
      next.start - last.end < 9 &&
      chance.test(text.slice(last.end, next.start))
    ) {
      const hundred = next.value === 100;
      joined[joined.length - 1] = {
        ...last,
        end: next.end,
        value: hundred ? last.value : last.value / next.value,
        unit: hundred ? '%' : '',
        dimension: hundred ? 'percent' : 'share',
      };
    } else joined.push(next);
  }
  return joined; // prettier-ignore
}

function saidVaguely(text: string, tokens: readonly Token[], { said, end }: Found): boolean {
  for (let back = 1; back <= 4; back++) {
    const token = tokens[said.first - back];
    if (!token || token.kind === 'figure' || /^[.,;:!?]$/.test(token.text)) break;
    if (vague.has(token.text)) return true;
  }
  return tokens[said.first + 1]?.text === 'couple' || vagueAfter.test(text.slice(end, end + 24));
}

/** Every quantity of a text, in order. Takes any text. */
export function quantitiesIn(text: string): Quantity[] {
  const { tokens, numbers } = numbersIn(text);
  const found = joinShares(
    text,
    joinRanges(text, tokens, gather(text, tokens, numbers)),
  );
  shareUnits(text, found);
  carryUnits(text, found);
  return found.map((each) => ({
    start: each.start,
    end: each.end,
    ...(each.low === undefined
      ? { value: tidy(each.value) }
      : { range: [tidy(each.low), tidy(each.value)] as const }),
    unit: each.unit,
    dimension: each.year ? 'date' : each.dimension,
    approximate: saidVaguely(text, tokens, each),
    ...(each.fall ? { fall: each.fall } : {}),
  }));
}
