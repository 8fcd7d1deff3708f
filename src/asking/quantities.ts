// The quantities in a question: each number with the unit behind it, and the unit that the answer is wanted in.
import { tidy } from '../core/reading/numbers.ts';
import { numeralAt } from '../core/reading/numeral.ts';
import { tokensOf } from '../core/reading/tokens.ts';
import { unitNames } from '../core/reading/unit-names.ts';
import type { UnitCountry } from '../core/reading/country.ts';
import type { Dimension } from '../core/measures.ts';

export interface AskedQuantity {
  readonly number: number;
  /** As `measures.ts` prints it; nothing for a bare number. */
  readonly unit?: string;
  readonly dimension?: Dimension;
  /** The unit of the other country, where none was named and it would be another size. */
  readonly or?: string;
  readonly start: number;
  readonly end: number;
}

const named = unitNames.flatMap(({ unit, dimension, says, known }) =>
  [says, /^(?:US proof gal|mg|% mass|mbar|MJ|kJ|GJ|kWh|min|µm)$/.test(unit) ? known : undefined]
    .filter((each) => each !== undefined)
    .map((each) => ({ unit, dimension, pattern: new RegExp(`^(?:${each})(?![a-z])`, 'i') })),
);

/** The unit whose name stands at the beginning of a text. */
function unitAt(text: string, country?: UnitCountry) {
  let best: { unit: string; dimension: Dimension; length: number } | undefined;
  for (const { unit, dimension, pattern } of named) {
    const length = pattern.exec(text)?.[0].length ?? 0;
    if (length > (best?.length ?? 0)) best = { unit: localUnit(unit, country), dimension, length };
  }
  return best;
}

const elsewhere = (unit: string, country?: UnitCountry) =>
  country === undefined && unit === 'UK gal' ? { or: 'US gal' } : {};

/** Gallons and proof of the country whose units are meant; where none is named, British gallons, as every door takes them, and the only proof still in use. */
function localUnit(unit: string, country?: UnitCountry): string {
  if (unit === 'gal') return `${country ?? 'UK'} gal`;
  if (unit === '° proof') return country === 'UK' ? '° former UK proof' : '° US proof';
  return unit;
}

/** The country that a question names. */
export const countryIn = (text: string): UnitCountry | undefined =>
  /\b(?:us|u\.s\.|american?|states)\b/i.test(text)
    ? 'US'
    : /\b(?:uk|imperial|british|english|former|old|navy|naval|gunpowder|sikes|grand(?:ad|dad|pa|father))\b/i.test(
          text,
        )
      ? 'UK'
      : undefined;

/** Measures of a kitchen or a bar that stand for so many of another unit; those of the two countries where they differ. */
const kitchen: readonly { readonly says: RegExp; readonly unit: string; readonly UK: number; readonly US: number; readonly usual?: UnitCountry }[] = [
  { says: /^quarts?(?![a-z])/i, unit: 'pints', UK: 2, US: 2 },
  { says: /^(?:us |american |metric )?cups?(?![a-z])/i, unit: 'mL', UK: 250, US: 236.588 }, // metric cup; US cup of 8 US fl oz, NIST Handbook 44
  { says: /^(?:tablespoon(?:ful)?s?|tbsps?)(?![a-z])/i, unit: 'mL', UK: 15, US: 14.787 }, // metric; half a US fl oz
  { says: /^(?:teaspoon(?:ful)?s?|tsps?)(?![a-z])/i, unit: 'mL', UK: 5, US: 4.929 }, // metric; a sixth of a US fl oz
  { says: /^mils?(?![a-z])/i, unit: 'mL', UK: 1, US: 1 },
  { says: /^(?:fl(?:uid)?\.?\s*)?(?:oz|ounces?)(?![a-z])/i, unit: 'mL', UK: 28.413, US: 29.574, usual: 'US' }, // fluid; bars outside the United States pour millilitres
  { says: /^gills?(?![a-z])/i, unit: 'mL', UK: 142.065, US: 118.294 }, // a quarter of a pint, of either country
]; // prettier-ignore
/** The measure of a kitchen that stands at the beginning of a text. */
function kitchenAt(text: string, country?: UnitCountry) {
  for (const { says, unit, UK, US, usual } of kitchen) {
    const found = says.exec(text)?.[0];
    if (!found) continue;
    const half = /^\s+and\s+(?:a\s+)?half\b/i.exec(text.slice(found.length))?.[0].length ?? 0;
    return { unit, each: /^(?:us|american)/i.test(found) || (country ?? usual) === 'US' ? US : UK, half: half > 0 ? 0.5 : 0, length: found.length + half };
  }
  return undefined;
} // prettier-ignore

const CORRECTS =
  /^[\w\s,.…?!-]{0,40}?\b(?:no|sorry|i mean|or rather|make that|scratch that)\b[\s,.…]*(?:sorry[\s,]*|but\s+)?$/i;
/** What is meant of what was said: “6 tonnes … no, 3 tonnes” is 3. */
const meantOf = (text: string, found: readonly AskedQuantity[]): readonly AskedQuantity[] =>
  found.filter((each, i) => {
    const next = found.slice(i + 1).find(({ dimension, number }) => dimension === each.dimension && number !== 1);
    return !(next && next.dimension === each.dimension && CORRECTS.test(text.slice(each.end, next.start)));
  }); // prettier-ignore

/** Every number of a question that is written in figures or words, with its unit. */
export const quantitiesAsked = (text: string, country?: UnitCountry): readonly AskedQuantity[] =>
  meantOf(text, allIn(text, country));

function allIn(text: string, country?: UnitCountry): readonly AskedQuantity[] {
  const tokens = tokensOf(text);
  const found: AskedQuantity[] = [];
  let from = 0;
  tokens.forEach((token, i) => {
    if (token.start < from || /\b(?:co|h)$/i.test(text.slice(0, token.start))) return;
    if (token.kind === 'word' && /^(?:a|an|one|once|half|first|second|third)$/.test(token.text)) {
      const one = /^(?:an?|one)\s+/i.exec(text.slice(token.start));
      const unit = one && unitAt(text.slice(token.start + one[0].length), country);
      const cup = kitchenAt(text.slice(token.start + (one?.[0].length ?? 0)), country);
      if (one && cup) {
        from = token.start + one[0].length + cup.length;
        found.push({
          number: tidy(cup.each * (1 + cup.half)),
          unit: cup.unit,
          dimension: 'volume',
          start: token.start,
          end: from,
        });
        return;
      }
      if (unit && /^(?:mass|volume|area)$/.test(unit.dimension) && !/^(?:lb|pints|fl oz)$/.test(unit.unit)) {
        from = token.start + one[0].length + unit.length;
        found.push({
          number: 1,
          unit: unit.unit,
          dimension: unit.dimension,
          ...elsewhere(unit.unit, country),
          start: token.start,
          end: from,
        });
        return;
      }
      if (!/^(?:a|one)\s+(?:hundred|thousand|million|dozen)\b/i.test(text.slice(token.start))) return;
    }
    const numeral = numeralAt(text, tokens, i, 'count');
    if (!numeral) return;
    const rest = text.slice(numeral.end);
    const gap = /^[\s-]*/.exec(rest)![0].length;
    const cups = kitchenAt(rest.slice(gap), country);
    if (cups) {
      from = numeral.end + gap + cups.length;
      found.push({ number: tidy(cups.each * (numeral.value + cups.half)), unit: cups.unit, dimension: 'volume', start: token.start, end: from }); // prettier-ignore
      return;
    }
    const unit = unitAt(rest.slice(gap), country);
    const sign = tokens[i - 1]?.text === '-' && token.joined && !tokens[i - 1]!.joined ? -1 : 1;
    from = numeral.end + (unit ? gap + unit.length : 0);
    found.push({
      number: tidy(sign * numeral.value),
      ...(unit && { unit: unit.unit, dimension: unit.dimension, ...elsewhere(unit.unit, country) }),
      start: token.start,
      end: from,
    });
  });
  return found;
}

const WANTED =
  /\b(?:in(?:to|\s+terms\s+of)?|as|to|how\s+many|how\s+much|what|equals?|makes?)\s+(?:(?:degrees?|the|old|proper|is|that|it)\s+)*/gi;

/** The unit that a question wants its answer in: “in gallons”, “how many pints”, “to Fahrenheit”. */
export function wantedUnit(
  text: string,
  country?: UnitCountry,
): { unit: string; dimension: Dimension } | undefined {
  let found: { unit: string; dimension: Dimension } | undefined;
  for (const match of text.matchAll(WANTED)) {
    const rest = text.slice(match.index + match[0].length);
    const unit = unitAt(rest, country) ?? otherUnit(rest, country);
    const isIn = /^(?:in|as|to)/i.test(match[0]);
    if (unit && !(unit.unit === 'm' || (unit.unit === 't' && /^t\b/i.test(rest) && !isIn)))
      found = isIn || !found ? { unit: unit.unit, dimension: unit.dimension } : found;
  }
  return found;
}

/** Names that stand for a unit only where one is asked for. */
const others: readonly (readonly [RegExp, string, Dimension])[] = [
  [/^abv\b|^% ?abv\b|^alcohol by volume\b|^per ?cent(?:age)?\b|^%/i, '% vol', 'strength'],
  [/^(?:us |american )?proof gallons?\b/i, 'US proof gal', 'alcohol'],
  [/^plato\b/i, '°P', 'gravity'],
  [/^(?:specific )?gravity\b|^s\.?g\.?\b|^og\b/i, 'gravity', 'gravity'],
  [/^brix\b/i, '° Brix', 'gravity'],
  [/^(?:lpa|laa|pure alcohol|litres? of (?:pure )?alcohol)\b/i, 'L pure alcohol', 'alcohol'],
  [/^fahrenheit\b|^f\b/i, '°F', 'temperature'],
  [/^c\b|^celsius\b|^centigrade\b/i, '°C', 'temperature'],
  [/^(?:his|her|their|old|navy|grandad['’]?s) (?:old )?money\b/i, '° former UK proof', 'strength'],
  [/^american money\b/i, '$', 'money'],
];
function otherUnit(text: string, country?: UnitCountry) {
  for (const [pattern, unit, dimension] of others) {
    const length = pattern.exec(text)?.[0].length ?? 0;
    if (length > 0) return { unit: localUnit(unit, country), dimension, length };
  }
  return undefined;
}
