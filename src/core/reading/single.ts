// One figure with its unit, and nothing else: 6.5 tonnes, half a million, about 7 h 36 min.
import { kinds, type KindName } from '../kinds.ts';
import { andAHalf } from './halves.ts';
import { mayBegin, shortScales, tidy } from './numbers.ts';
import { numeralAt, type Numeral } from './numeral.ts';
import { tokensOf, type Token } from './tokens.ts';
import type { UnitCountry } from './country.ts';
import { unitNamed, type NamedUnit } from './unit-named.ts';
import { vagueManner, vagueAfter } from './vague.ts';

export interface Single extends NamedUnit {
  /** In the unit as written. */
  readonly number: number;
  /** Size of its last digit. */
  readonly place: number;
  /** What its last word multiplied by. */
  readonly scale: number;
  readonly unitText: string;
  readonly manner: 'about' | 'exact' | 'plain';
}

const BEFORE = 8; // words before a figure that are looked at
const sign = /^[-+−–]$/;
const nameLike = /^[\p{L}%°º£$€¥℃][^\d<>=]*[23]?$/u; // what may be the name of a unit, known or not
const currency = /^[£$€¥]$/;
const tail =
  /[\s,-]+(?:or so|ish|odd|give or take|or thereabouts?|near enough|or near|more or less|roughly)$|\+$/i;
const exactly = /\s+(?:exactly|precisely)$/i;

/** "An hour and a half": one of a unit, and its part. */
function oneAndAHalf(text: string, { start, end, text: word }: Token, kind: KindName, country?: UnitCountry) {
  if (word !== 'a' && word !== 'an') return undefined;
  const half = /\s+and\s+an?\s+(?:half|quarter)$/i.exec(text);
  if (!half || half.index <= start) return undefined;
  const unitText = text.slice(end, half.index).trim();
  const named = unitNamed(unitText, kind, country);
  const adds = andAHalf(text, half.index)!.adds;
  return typeof named.unit === 'string' ? undefined : { ...named, unitText, number: 1 + adds };
}

/** Behind a number: its unit, a short scale before it, a half or a smaller unit after it. */
function behind(
  numeral: Numeral,
  text: string,
  kind: KindName,
  country?: UnitCountry,
): Omit<Single, 'manner' | 'scale'> {
  const counted = inMillions(numeral, text, kind);
  if (counted) return { ...counted, place: numeral.place / (numeral.value / counted.number || 1) };
  const { value: number, place } = numeral;
  const rest = text
    .slice(numeral.end)
    .replace(numeral.part ? /^\s+of\s+(?:an?\s+)?/i : /^\s?-\s?(?=[a-z])/i, '');
  const unitText = rest.trim();
  const named = numeral.unit && unitText === '' ? { unit: numeral.unit } : unitNamed(unitText, kind, country);
  if (named.unit !== 'other' || named.either) return { ...named, number, place, unitText };
  const [, short, after] = /^(k|m|mn|mln|mio|bn)(?![a-zà-ÿ])\s*(.*)$/is.exec(unitText) ?? [];
  if (short !== undefined) {
    const scale = shortScales[short.toLowerCase()]!;
    const scaled = unitNamed(after!, kind, country);
    if (scaled.unit !== 'other' || scaled.either)
      return { ...scaled, number: number * scale, place: place * scale, unitText: after! };
  }
  return withMore(number, place, unitText, kind, country) ?? { ...named, number, place, unitText };
}

/** Where the unit itself says million, as for cells in a millilitre, "50 million" is fifty of it. */
function inMillions({ value, end }: Numeral, text: string, kind: KindName) {
  const [word] = /^[mb]illion(?=\/)/.exec(kinds[kind].unit) ?? [];
  if (word === undefined || !text.slice(0, end).toLowerCase().endsWith(word)) return undefined;
  const unitText = text.slice(end).trim();
  const named = unitText === '' ? { unit: 'none' as const } : unitNamed(word + unitText, kind);
  return { ...named, unitText, number: tidy(value / (word === 'million' ? 1e6 : 1e9)) };
}

/** "Six tonnes and a half", "7 h 36 min": more of the same behind the unit. */
function withMore(number: number, place: number, rest: string, kind: KindName, country?: UnitCountry) {
  const half = /\s+and\s+an?\s+(?:half|quarter)$/i.exec(rest);
  const halved = half && unitNamed(rest.slice(0, half.index), kind, country);
  if (halved && typeof halved.unit !== 'string')
    return { ...halved, number: number + andAHalf(rest, half.index)!.adds, place, unitText: rest };
  const next =
    /^([^\d]*?[^\d\s,])(?:\s*,?\s*(?:and\s+)?)(?=\d|\b(?!and\b)[a-z]+(?:-[a-z]+)?\s+[a-z]+\.?$)(.+)$/is.exec(
      rest,
    );
  const large = next ? unitNamed(next[1]!, kind, country) : undefined;
  if (!large || typeof large.unit === 'string' || large.unit.toCore(0) !== 0) return undefined;
  const small = single(next![2]!, kind, country);
  if (!small || typeof small.unit === 'string' || small.number < 0) return undefined;
  const parts = small.unit.toCore(small.number) / large.unit.toCore(1);
  const isSmaller = Math.abs(small.unit.toCore(1)) < Math.abs(large.unit.toCore(1)) && parts < 1;
  if (!isSmaller) return undefined;
  const smallPlace = (small.place * small.unit.toCore(1)) / large.unit.toCore(1);
  return { ...large, number: number + parts, place: smallPlace, unitText: rest };
}

/**
 * One figure with its unit, when a text says that and nothing else.
 * @example single('7 h 36 min', 'hours').number // 7.6 (36 ÷ 60)
 */
export function single(text: string, kind: KindName, country?: UnitCountry): Single | undefined {
  const bare = text.trim().replace(/(?<=\d)[.,]$/, '');
  const body = bare.replace(exactly, '').replace(tail, '').trim();
  const tokens = tokensOf(body);
  for (let i = 0; i < Math.min(tokens.length, BEFORE); i++) {
    const signed = sign.test(tokens[i]!.text);
    const at = signed ? i + 1 : i;
    const before = tokens.slice(0, i).map((token) => token.text);
    const manner = vagueManner(kind === 'money' ? before.filter((word) => !currency.test(word)) : before);
    if (manner === undefined && i > 0 && !signed && mayBegin(tokens[i]!)) return undefined;
    const told = exactly.test(bare) ? 'exact' : tail.test(bare) ? 'about' : (manner ?? 'plain');
    const one = tokens[at] && oneAndAHalf(body, tokens[at], kind, country);
    if (one && manner !== undefined) return { ...one, place: 0.5, scale: 1, manner: told };
    const numeral = numeralAt(body, tokens, at, kind);
    if (!numeral || !Number.isFinite(numeral.value)) continue;
    if (manner === undefined) return undefined;
    const loose = numeral.unit ? null : vagueAfter.exec(body.slice(numeral.end));
    const end = numeral.end + (loose?.[0].length ?? 0);
    const read = behind({ ...numeral, end }, body, kind, country);
    if (read.unit === 'other' && !nameLike.test(read.unitText)) return undefined;
    const negative = signed && tokens[i]!.text !== '+';
    return {
      ...read,
      number: tidy(negative ? -read.number : read.number) + 0,
      scale: numeral.scale,
      manner: loose ? 'about' : told,
    };
  }
  return undefined;
}
