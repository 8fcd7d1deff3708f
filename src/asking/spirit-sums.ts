// Sums of spirit with numbers of the asker’s own: pure alcohol, letting down, blending, bottles, strength from two gravities.
import { format, formatNumber, formatWorking } from '../core/format.ts';
import { gravity, litres20, strength } from '../core/quantity.ts';
import { blend, reduce } from '../core/spirit/mixing.ts';
import { massPercentFromStrength } from '../core/spirit/strength.ts';
import { strengthFromGravities } from '../core/wort/attenuation.ts';
import { inCore, told, unitNamed, type Reckoner } from './reckoned.ts';
import { spiritSaid, type Volume } from './spirit-said.ts';

const PURE = { at: 'strength-and-volume/#the-litre-of-pure-alcohol', place: 'The litre of pure alcohol' };
const LET_DOWN = { at: 'sums/reduce-to-strength/', place: 'Let spirit down to a strength' };
const BLEND = { at: 'sums/blend-two-spirits/', place: 'Two spirits together' };
const VISITORS = { at: 'safety/visitors/', place: 'Safety: with visitors' };
const BRITISH_UNIT = 0.01; // L of pure alcohol; UK Chief Medical Officers’ guidelines 2016
const ETHANOL = 0.78924; // kg in a litre of pure alcohol at 20 °C; OIML R 22
const LOT = 100; // L, of spirit whose volume is not told

const ALCOHOL = /alcohol|\blpas?\b|\blaas?\b|proof gal|ethanol|booze|\bpure\b|\bbulk to pure\b/i;
const WATER = /water|dilut|reduc|let(?:ting)?(?: it)? down|bring|\bcut\b|proof(?:ing)? down|\bdown to\b|weaken|knock|\btake\b/i; // prettier-ignore

const COUNTS: Readonly<Record<string, number>> = { 'half a': 0.5, 'half the': 0.5, 'a half': 0.5, 'a dozen': 12, 'dozen': 12, 'a case of': 6 }; // prettier-ignore

/** So many of the house’s bottles; nothing where it is just one, which the list answers. */
function bottlesIn({ text, quantities, house }: Parameters<Reckoner>[0]): readonly Volume[] {
  const word = /\b(half an?|half the|a half|a dozen|dozen|a case of)(?:\s+of)?\s+bottles?\b/i.exec(text)?.[1]?.toLowerCase();
  const [first] = quantities;
  const counted = first && first.unit === undefined && /^\s*bottles?\b/i.test(text.slice(first.end)) ? first.number : undefined;
  const count = counted ?? (word && COUNTS[word]);
  if (!count || !(count > 0) || count === 1) return [];
  return [{ litres: (count * house.bottleSize) / 100, said: `${formatNumber(count, count % 1 === 0 ? 0 : 1)} of our bottles` }];
} // prettier-ignore

/** British units of drink in so much, at the strength of the house’s bottle where none is told. */
export const unitsOfDrink: Reckoner = (asked) => {
  const { text, line } = asked;
  if (!/\bunits?\b/i.test(text)) return undefined;
  const { volumes, strengths } = spiritSaid(asked);
  const [given] = volumes.length === 0 ? bottlesIn(asked) : volumes;
  if (!given || volumes.length > 1 || strengths.length > 1 || given.litres > 50) return undefined;
  const at = strengths[0] ?? line.bottling.strength;
  const units = (given.litres * at) / 100 / BRITISH_UNIT;
  return {
    says: `${given.said} at ${told(at, 'strength')} is ${formatNumber(units, 1)} British units; what is wise to drink is for medical advice, and what is lawful for local law.`,
    sum: `${formatWorking(1000 * given.litres)} mL × ${formatWorking(at)} ÷ 1000; a unit is 10 mL of pure alcohol`,
    ...VISITORS,
    paths: strengths.length === 0 ? ['bottling.strength'] : [],
  };
};

/** Litres of pure alcohol in so much at such a strength. */
export const pureAlcohol: Reckoner = (asked) => {
  const { text, wanted, line } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  const [given] = volumes;
  const [at] = strengths;
  if (!given || at === undefined || volumes.length !== 1 || strengths.length !== 1) return undefined;
  if (!(ALCOHOL.test(text) || wanted?.dimension === 'alcohol') || /how many bottles/i.test(text)) return undefined; // prettier-ignore
  if (asked.quantities.some(({ unit }) => unit === 'years')) return undefined;
  const alcohol = (given.litres * at) / 100;
  const unit = wanted?.dimension === 'alcohol' ? unitNamed('alcohol', wanted.unit) : undefined;
  const grams = wanted?.dimension === 'mass' ? `, which weigh ${told(alcohol * ETHANOL, 'mass', unitNamed('mass', wanted.unit))}` : ''; // prettier-ignore
  const ours = /\b(?:your|our) (?:wash|beer)\b/i.test(text) && Math.abs(at - line.wash.strength) > 0.05 ? ` Ours is at ${format(line.wash.strength, 'strength')}.` : ''; // prettier-ignore
  return {
    says: `${given.said} at ${told(at, 'strength')} ${/s$/.test(given.said) || /^\d/.test(given.said) ? 'hold' : 'holds'} ${told(alcohol, 'alcohol', unit)}${grams}.${ours}`,
    sum: `${told(given.litres, 'volume20')} × ${formatWorking(at)} ÷ 100 = ${told(alcohol, 'alcohol')}`,
    ...PURE,
    paths: [],
  };
};

const PINT = unitNamed('volume20', 'pints')!;
/** A quart, which is two pints in either country: the sum comes to the same in both. */
const QUART = {
  unit: 'quarts',
  digits: 2,
  fromCore: (value: number) => PINT.fromCore(value) / 2,
  toCore: (value: number) => PINT.toCore(2 * value),
};
/** The unit in which a sum of volumes is told: the one wanted, or the gallons, pints or quarts that it was asked in. */
function unitSaid({ text, quantities, wanted }: Parameters<Reckoner>[0]) {
  if (/\bquarts?\b/i.test(text)) return QUART;
  const asked = wanted?.dimension === 'volume' ? wanted.unit : quantities.find(({ unit }) => unit === 'pints' || (unit?.endsWith(' gal') && !unit.includes('proof')))?.unit; // prettier-ignore
  return asked === undefined ? undefined : unitNamed('volume20', asked);
}

/** The water that brings so much spirit, or a hundred litres of it, from one strength to another. */
export const letDown: Reckoner = (asked) => {
  const { text } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  if (strengths.length !== 2 || volumes.length > 1 || !WATER.test(text)) return undefined;
  const [given] = volumes;
  if (!given && !/water|dilut|reduc|let(?:ting)?(?: it)? down|proof(?:ing)? down/i.test(text))
    return undefined;
  const { litres, said } = given ?? { litres: LOT, said: `${LOT}\u00a0L` };
  const [high, low] = [Math.max(...strengths), Math.min(...strengths)];
  if (high === low) return undefined;
  const made = reduce({ volume: litres20(litres), strength: strength(high) }, strength(low));
  const unit = unitSaid(asked);
  const lot =
    unit === QUART
      ? told(litres, 'volume20', QUART).replace(/^1\u00a0quarts$/, 'a\u00a0quart')
      : said.replace(/^A/, 'a');
  return {
    says: `${told(made.waterVolume, 'volume20', unit)} of water bring ${lot} from ${told(high, 'strength')} to ${told(low, 'strength')}, and make ${told(made.volume, 'volume20', unit)}.`,
    sum: `${told(litres, 'volume20', unit)} and ${told(made.waterVolume, 'volume20', unit)} shrink by ${told(made.contraction, 'volume20', unit)} as they mix`,
    ...LET_DOWN,
    paths: [],
  };
};

/** Spirit and so much water put together. */
export const watered: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  const water = quantities.find(({ unit, dimension, end }) => (unit === undefined || dimension === 'volume') && /^\s*(?:of\s+)?water\b/i.test(text.slice(end)));
  const given = quantities.find((each) => each !== water && each.dimension === 'volume');
  if (!water || !given || strengths.length !== 1 || volumes.length > 2) return undefined;
  const litres = inCore(given, 'volume20');
  const added = inCore({ ...water, unit: water.unit ?? given.unit!, dimension: 'volume' }, 'volume20');
  if (litres === undefined || added === undefined || !(litres > 0) || !(added > 0)) return undefined;
  const made = blend([
    { volume: litres20(litres), strength: strength(strengths[0]!) },
    { volume: litres20(added), strength: strength(0) },
  ]);
  return {
    says: `They make ${told(made.volume, 'volume20')} at ${told(made.strength, 'strength')}.`,
    sum: `${formatWorking(litres)} × ${formatWorking(strengths[0]!)} ÷ 100 = ${told(made.alcohol, 'alcohol')}, and the mixture shrinks a little`,
    ...BLEND,
    paths: [],
  };
}; // prettier-ignore

/** A question without its numbers: the “and” of a hundred and sixty puts nothing together. */
const besides = ({ text, quantities }: Parameters<Reckoner>[0]): string =>
  quantities.reduceRight((rest, { start, end }) => `${rest.slice(0, start)}#${rest.slice(end)}`, text);

/** Spirits put together; equal parts where the volumes are not told. */
export const together: Reckoner = (asked) => {
  const text = besides(asked);
  const { volumes, strengths } = spiritSaid(asked);
  const isHalves = volumes.length === 0 && /half and half|equal (?:parts|volumes|amounts)|fifty[\s-]fifty/i.test(text);
  if (strengths.length < 2 || (volumes.length !== strengths.length && !isHalves)) return undefined;
  if (!isHalves && (/\bbottle[sd]?\b|\bnow\b|\blater\b|\blost\b|\bgone\b/i.test(text) || !/mix|blend|together|add|combine|vat|marr(?:y|ied)|put|plus|and|with/i.test(text))) return undefined;
  const parts = strengths.map((at, i) => ({
    volume: litres20(isHalves ? LOT / strengths.length : volumes[i]!.litres),
    strength: strength(at),
  }));
  const made = blend(parts);
  return {
    says: `${isHalves ? 'In equal parts' : 'Together'} they make ${told(made.volume, 'volume20', unitSaid(asked))} at ${told(made.strength, 'strength')}, with ${told(made.alcohol, 'alcohol')}.`,
    sum: `${parts.map(({ volume, strength: at }) => `${formatWorking(volume)} × ${formatWorking(at)} ÷ 100`).join(' + ')} = ${told(made.alcohol, 'alcohol')}`,
    ...BLEND,
    paths: [],
  };
}; // prettier-ignore

/** Bottles of the house’s size and strength, or those that are told, from so much spirit. */
export const bottlesOf: Reckoner = (asked) => {
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
    says: `About ${formatNumber(bottles, 0)} bottles of ${formatNumber(100 * size, 0)} cL at ${told(at, 'strength')}, if none is lost on the way.`,
    sum: `${told(alcohol, 'alcohol')} ÷ (${formatNumber(size, 2)} L × ${formatWorking(at)} ÷ 100)`,
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
    says: `${told(lots[0]!, 'volume20')} fill ${list.slice(0, -1).join(', ').replace(' of ', ' bottles of ')} or ${list.at(-1)!}: ${formatNumber(counts[0]! - counts.at(-1)!, 0)} fewer of the larger, if none is lost.`,
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

/** A strength by volume as one by mass. */
export const byMass: Reckoner = (asked) => {
  const { strengths, volumes } = spiritSaid(asked);
  if (strengths.length !== 1 || volumes.length > 0 || !/\bby (?:weight|mass)\b|\babw\b|\bw\/w\b/i.test(asked.text)) return undefined; // prettier-ignore
  const at = strength(strengths[0]!);
  return {
    says: `${told(at, 'strength')} is ${formatNumber(massPercentFromStrength(at), 1)} % by mass.`,
    sum: 'Alcohol is lighter than water, so by mass the figure is smaller.',
    at: 'strength-and-volume/#two-ways-to-say-how-strong',
    place: 'Two ways to say how strong',
    paths: [],
  };
};

/** Strength of a wash from the gravities before and after. */
export const fromGravities: Reckoner = ({ text, quantities, house }) => {
  const gravities = quantities.flatMap(({ number, unit }) => {
    if (unit !== undefined && unit !== '° gravity') return [];
    const value = number > 900 && number < 1200 ? number / 1000 : number;
    return value >= 0.98 && value <= 1.15 ? [value] : [];
  });
  if (gravities.length !== 2 || /plato|brix|mean by|difference/i.test(text)) return undefined;
  const [from, to] = [Math.max(...gravities), Math.min(...gravities)];
  if (from === to || from < 1.01) return undefined;
  const strong = strengthFromGravities({ original: gravity(from), final: gravity(to) });
  const off = Math.round(1000 * (to - house.finalGravity));
  const stopped = !/stick|stuck|stop|short|finish(?:ed)? (?:early|high)/i.test(text) ? '' : off > 1 ? ` It stopped ${off} points above our ${house.finalGravity.toFixed(3)}, so it may have stuck.` : ` It went about as far as ours, ${house.finalGravity.toFixed(3)}.`; // prettier-ignore
  return {
    says: `A wash that falls from ${from.toFixed(3)} to ${to.toFixed(3)} is at about ${format(strong, 'strength')}.${stopped}`,
    sum: 'By Balling: 2.0665 g of extract make 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of yeast.',
    at: 'sums/strength-from-gravities/',
    place: 'Strength of the wash from its gravities',
    paths: [],
  };
};
