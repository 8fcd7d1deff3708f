// Sums of what is served: a measure into a bottle, a drink with so much water or soda, standard drinks of other countries.
import { formatNumber, formatWorking } from '../core/format.ts';
import { ETHANOL_DENSITY } from '../core/spirit/density.ts';
import { resultInWords, type Numbered, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const VISITORS = { at: 'safety/visitors/', place: 'Safety: with visitors' };
/** Grams of alcohol that a country calls one standard drink; all from memory. */
const STANDARD: readonly (readonly [RegExp, string, number])[] = [
  [/austral|new zealand|\baussie\b/i, 'Australian', 10],
  [/canad/i, 'Canadian', 13.45],
  [/german|french|europe/i, 'European, in many countries', 10],
  [/japan/i, 'Japanese', 20],
  [/./, 'American', 14],
];
const MIXER = /soda|water|ginger|tonic|cola|coke|mixer|lemonade|highball|hot toddy|tea/i;
const RATIO =
  /\b(\d+(?:\.\d+)?|one|two|three|half)\s*(?:parts?\s+)?(?::|to|and|\/)\s*(\d+(?:\.\d+)?|one|two|three|four|five|six)\b(?:\s*parts?)?/i;
const NUMBER: Readonly<Record<string, number>> = {
  half: 0.5,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};
const numberOf = (text: string) => NUMBER[text.toLowerCase()] ?? Number(text);
const WISE = 'what is wise to drink is for medical advice.';

/** How much alcohol a drink holds in the standard drinks of a country. */
export const standardDrinks: Reckoner = (asked) => {
  const { text, line } = asked;
  if (!/\bstandard\b.{0,16}\bdrinks?\b/i.test(text)) return undefined;
  const { volumes, strengths } = spiritSaid(asked);
  const [given] = volumes;
  if (!given || volumes.length > 1 || strengths.length > 1 || given.litres > 10) return undefined;
  const at = strengths[0] ?? line.bottling.strength;
  const grams = (given.litres * at * ETHANOL_DENSITY) / 100;
  const [, country, each] = STANDARD.find(([says]) => says.test(text))!;
  const count = grams / each;
  return {
    says: `${/\bsame|equal/i.test(text) ? (Math.abs(count - 1) < 0.06 ? 'Yes, near enough: ' : 'No: ') : ''}${given.said} at ${resultInWords(at, 'strength')} holds ${formatNumber(grams, 1)} g of alcohol, ${formatNumber(count, 1)} ${country} standard drinks of ${formatWorking(each)} g; ${WISE}`,
    sum: `${formatWorking(1000 * given.litres)} mL × ${formatWorking(at)} % × 0.789 g`,
    ...VISITORS,
    rests: 'memory',
    paths: strengths.length === 0 ? ['bottling.strength'] : [],
  };
}; // prettier-ignore

/** The strength of a drink of so many parts of spirit and of something without alcohol. */
export const mixedDrink: Reckoner = (asked: Numbered) => {
  const { text, quantities, line } = asked;
  const ratio = RATIO.exec(text);
  if (!ratio || !MIXER.test(text) || !/how strong|strength|abv|per ?cent|%|strong/i.test(text) || quantities.some(({ dimension }) => dimension === 'mass' || dimension === 'temperature')) return undefined;
  const [spirit, other] = [numberOf(ratio[1]!), numberOf(ratio[2]!)];
  const strength = quantities.find(({ number, unit, start, end }) => number >= 20 && number <= 80 && (unit === undefined || unit === '%' || unit === '% vol') && !(start >= ratio.index && end <= ratio.index + ratio[0].length));
  const isOwn = strength === undefined && quantities.length <= 2;
  const at = strength?.number ?? (isOwn ? line.bottling.strength : undefined);
  if (at === undefined || !(spirit > 0) || !(other > 0) || other > 20 || spirit > 20) return undefined;
  return {
    says: `About ${resultInWords((at * spirit) / (spirit + other), 'strength')}; ${WISE}`,
    sum: `${formatWorking(at)} × ${formatWorking(spirit)} ÷ (${formatWorking(spirit)} + ${formatWorking(other)}), and a trifle more as spirit and water shrink`,
    at: 'sums/blend-two-spirits/',
    place: 'Two spirits together',
    paths: isOwn ? ['bottling.strength'] : [],
  };
}; // prettier-ignore
