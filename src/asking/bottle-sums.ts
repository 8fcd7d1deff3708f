// Sums of bottles and measures with the asker’s own numbers: bottles from so much spirit, sizes beside each other, units of drink.
import { formatNumber, formatWorking } from '../core/format.ts';
import { inCore, resultInWords, type Reckoner } from './reckoned.ts';
import { spiritSaid, type Volume } from './spirit-said.ts';

const VISITORS = { at: 'safety/visitors/', place: 'Safety: with visitors' };
const PURE = { at: 'strength-and-volume/#the-litre-of-pure-alcohol', place: 'The litre of pure alcohol' };
const BRITISH_UNIT = 0.01; // L of pure alcohol; UK Chief Medical Officers’ guidelines 2016

const COUNTS: Readonly<Record<string, number>> = { 'half a': 0.5, 'half the': 0.5, 'a half': 0.5, 'a dozen': 12, 'dozen': 12, 'a case of': 6 }; // prettier-ignore

const BLOOD =
  /\bblood\b|\bsystem\b|\b(?:can|when|may|safe|okay|ok) .{0,20}\bdrive\b|breathal|over the limit|sober/i;

/** So many of the house’s bottles; nothing where it is just one, which the list answers. */
function bottlesIn({ text, quantities, house }: Parameters<Reckoner>[0]): readonly Volume[] {
  const word = /\b(half an?|half the|a half|a dozen|dozen|a case of)(?:\s+of)?\s+bottles?\b/i.exec(text)?.[1]?.toLowerCase();
  const [first] = quantities;
  const counted = first && first.unit === undefined && /^\s*bottles?\b/i.test(text.slice(first.end)) ? first.number : undefined;
  const count = counted ?? (word && COUNTS[word]);
  if (!count || !(count > 0) || count === 1) return [];
  return [{ litres: (count * house.bottleSize) / 100, said: `${formatNumber(count, count % 1 === 0 ? 0 : 1)} of our bottles` }];
} // prettier-ignore

/** What a pub or a shop calls by name, L. */
const served: readonly (readonly [RegExp, string, number])[] = [
  [/\bpub singles?\b|\bsingles?\b(?! (?:malt|cask|grain))/i, 'A single of 25\u00a0mL', 0.025],
  [/\bdoubles?\b/i, 'A double of 50\u00a0mL', 0.05],
  [/\b(?:dram|tot|nip|shot)\b/i, 'A dram of 25\u00a0mL', 0.025],
  [/\bminiature\b/i, 'A miniature of 50\u00a0mL', 0.05],
];
const servedIn = ({ text, house }: Parameters<Reckoner>[0]): readonly Volume[] => [
  ...served.flatMap(([says, said, litres]) => (says.test(text) ? [{ litres, said }] : [])),
  ...(/\bbottle\b/i.test(text)
    ? [{ litres: house.bottleSize / 100, said: `A bottle of ${house.bottleSize}\u00a0cL` }]
    : []),
];

/** British units of drink in so much, at the strength of the house’s bottle where none is told. */
export const unitsOfDrink: Reckoner = (asked) => {
  const { text, line } = asked;
  const isGone = BLOOD.test(text);
  if (!/\bunits?\b/i.test(text) && !isGone) return undefined;
  const { volumes, strengths } = spiritSaid(asked);
  const names = volumes.length === 0 && strengths.length > 0 && !isGone ? servedIn(asked) : [];
  const [given, other] = volumes.length === 0 ? [...bottlesIn(asked), ...names] : volumes;
  if (!given || volumes.length > 1 || strengths.length > 1 || given.litres > 50) return undefined;
  const at = strengths[0] ?? line.bottling.strength;
  const units = (given.litres * at) / 100 / BRITISH_UNIT;
  if (isGone)
    return {
      says: `${given.said} at ${resultInWords(at, 'strength')} is ${formatNumber(units, 1)} British units. A rule of thumb gives an hour to each, after an hour’s wait: some ${formatNumber(Math.ceil(units + 1), 0)} hours or more, and bodies differ, so it promises nothing. If you drive, drink none; the limit is local law’s.`,
      sum: `${formatWorking(1000 * given.litres)} mL × ${formatWorking(at)} ÷ 1000; a unit is 10 mL of pure alcohol`,
      ...VISITORS,
      rests: 'memory',
      paths: strengths.length === 0 ? ['bottling.strength'] : [],
    };
  return {
    says: `${given.said} at ${resultInWords(at, 'strength')} is ${formatNumber(units, 1)} British units${other && names.includes(other) ? `, and ${other.said[0]!.toLowerCase()}${other.said.slice(1)} ${formatNumber((other.litres * at) / 100 / BRITISH_UNIT, 1)}` : ''}; what is wise to drink is for medical advice, and what is lawful for local law.`,
    sum: `${formatWorking(1000 * given.litres)} mL × ${formatWorking(at)} ÷ 1000; a unit is 10 mL of pure alcohol`,
    ...VISITORS,
    paths: strengths.length === 0 ? ['bottling.strength'] : [],
  };
};

/** Bottles of the house’s size and strength, or those that are told, from so much spirit. */
export const bottlesFromSpirit: Reckoner = (asked) => {
  const { text, quantities, house, line, wanted } = asked;
  if (!/how many .{0,24}bottles|\b(?:in|into|as|to) bottles|bottles of it|number of bottles/i.test(text)) return undefined; // prettier-ignore
  if (quantities.some(({ unit }) => unit === 'years') || wanted?.dimension === 'strength') return undefined;
  const { volumes, strengths } = spiritSaid(asked);
  const strong = Math.max(...strengths); // water only makes it weaker, whichever was said first
  const small = volumes.find(({ litres }) => litres <= 2 && volumes.length === 2);
  const large = volumes.find((each) => each !== small);
  const given = quantities.find(({ dimension }) => dimension === 'alcohol');
  const alcohol = given ? inCore(given, 'alcohol') : large && strengths.length > 0 ? (large.litres * strong) / 100 : undefined; // prettier-ignore
  if (alcohol === undefined || volumes.length > 2 || !(alcohol > 0)) return undefined;
  const at = (given ? strengths[0] : strengths.length > 1 ? Math.min(...strengths) : undefined) ?? Math.min(house.bottlingStrength, given ? 100 : strong);
  const size = small?.litres ?? house.bottleSize / 100;
  const bottles = Math.floor(alcohol / ((size * at) / 100) + 1e-9);
  return {
    says: `About ${formatNumber(bottles, 0)} bottles of ${formatNumber(100 * size, 0)} cL at ${resultInWords(at, 'strength')}, if none is lost on the way.`,
    sum: `${given ? '' : `${formatWorking(large!.litres)} L × ${formatWorking(strong)} % = `}${resultInWords(alcohol, 'alcohol')} ÷ (${formatNumber(size, 2)} L × ${formatWorking(at)} ÷ 100)`,
    at: 'sums/casks-and-bottles/',
    place: 'Casks and bottles',
    paths: line ? ['house.bottleSize', 'house.bottlingStrength'] : [],
  };
}; // prettier-ignore

/** So much spirit into bottles of several sizes, as it is. */
export const intoSizes: Reckoner = ({ text, quantities }) => {
  if (!/how many|bottles?|\beach\b/i.test(text)) return undefined;
  const litresOf = (each: (typeof quantities)[number]) =>
    each.dimension === 'volume' ? inCore(each, 'volume20')! : each.unit === undefined && /^['’]?s\b/i.test(text.slice(each.end)) ? each.number / 1000 : undefined;
  const all = quantities.flatMap((each) => litresOf(each) ?? []);
  const sizes = all.filter((litres) => litres >= 0.04 && litres <= 2).sort((a, b) => a - b);
  const lots = all.filter((litres) => litres > 2);
  if (sizes.length < 2 || lots.length !== 1 || all.length !== quantities.length) return undefined;
  const counts = sizes.map((size) => Math.floor(lots[0]! / size + 1e-9));
  const list = sizes.map((size, i) => `${formatNumber(counts[i]!, 0)} of ${formatNumber(100 * size, size * 100 % 1 === 0 ? 0 : 1)}\u00a0cL`);
  return {
    says: `${resultInWords(lots[0]!, 'volume20')} fill ${list.slice(0, -1).join(', ').replace(' of ', ' bottles of ')} or ${list.at(-1)!}: ${formatNumber(counts[0]! - counts.at(-1)!, 0)} fewer of the larger, if none is lost.`,
    sum: sizes.map((size) => `${formatNumber(lots[0]!, 0)} ÷ ${formatWorking(size)}`).join('; '),
    at: 'sums/casks-and-bottles/',
    place: 'Casks and bottles',
    paths: [],
  };
}; // prettier-ignore

/** How many small measures go into a larger one; into the house’s bottle where that is named. */
export const measuresIn: Reckoner = (asked) => {
  const { text, house } = asked;
  if (!/how many|\bhow often\b/i.test(text)) return undefined;
  const { volumes } = spiritSaid(asked);
  const isBottle = volumes.length === 1 && /\b(?:in|from|to|out of)\b.{0,16}\bbottles?\b/i.test(text) && volumes[0]!.litres < 0.3; // prettier-ignore
  const all = isBottle ? [...volumes, { litres: house.bottleSize / 100, said: `${house.bottleSize}\u00a0cL` }] : volumes; // prettier-ignore
  if (all.length !== 2 || asked.quantities.some(({ unit }) => unit === 'years')) return undefined;
  const [small, large] = [...all].sort((a, b) => a.litres - b.litres) as [typeof all[number], typeof all[number]];
  if (small.litres === large.litres) return undefined;
  const exact = large.litres / small.litres;
  const count = Math.abs(exact - Math.round(exact)) < 1e-6 ? Math.round(exact) : exact;
  return {
    says: `${small.said} goes ${formatNumber(count, count % 1 === 0 ? 0 : 1)} times into ${large.said}${count % 1 === 0 ? '' : `: ${formatNumber(Math.floor(count), 0)} whole ones`}.`,
    sum: `${formatWorking(large.litres)} L ÷ ${formatWorking(small.litres)} L`,
    ...PURE,
    paths: isBottle ? ['house.bottleSize'] : [],
  };
}; // prettier-ignore
