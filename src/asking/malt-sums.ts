// Sums of malt with the asker’s own numbers: a year’s mashes, casks from malt, a promised yield, smoke, sieves, land.
import { formatNumber } from '../core/format.ts';
import { rollersToMove } from '../core/milling/sieve.ts';
import { figureText } from '../house/prose.ts';
import { inCore, told, type Numbered, type Reckoner } from './reckoned.ts';
import { behind, figures, within } from './said.ts';
import { namedCask } from './spirit-said.ts';

const YIELDS = [100, 500] as const; // litres of pure alcohol from a tonne that a malt can be said to give
const CASKS = [20, 700] as const; // L; the largest cask of the law is of 700 L, Regulation (EU) 2019/787
const TOLERANCE = 2; // points that a sieve test may be off before rollers are moved; common practice
const HARVESTS = [0.3, 15] as const; // t of grain from an acre or a hectare
const SPEAKS_OF_YIELD = /yield|\bat\b|tonn?e?s?\b|\blpas?\b/i;
const SPEAKS_OF_LAND = /\b(?:to|per|an?|the|each|every|\/)\s*(acre|hectare|ha)\b/i;

/** Litres of pure alcohol from a tonne, as a question tells them; each that is told. */
const yieldsIn = ({ text, quantities }: Numbered): readonly number[] =>
  quantities.flatMap(({ number, unit, dimension }) =>
    (dimension === 'yield' || unit === undefined || dimension === 'alcohol' || (dimension === 'volume' && /^L$/.test(unit))) &&
    SPEAKS_OF_YIELD.test(text) && within(YIELDS, number) ? [number] : [],
  ); // prettier-ignore

/** Mashes a week, weeks, tonnes in each and a yield: the alcohol of a year. */
export const yearOfMashes: Reckoner = (asked) => {
  const { text, quantities, line, house } = asked;
  const mashes = quantities.find((each) => each.unit === undefined && /^\s*(?:mash|brew|batch)/i.test(behind(text, each)));
  const weeks = quantities.find(({ unit }) => unit === 'weeks')?.number ?? house.weeksPerYear;
  const malt = quantities.find(({ dimension }) => dimension === 'mass');
  const [each = line.heart.alcohol / line.pace.tonnesPerMash] = yieldsIn(asked);
  if (!mashes || !malt || !/year|annual|per annum|weeks/i.test(text) || /\bif\b|suppose|instead|bottle|cask|barley/i.test(text)) return undefined;
  const tonnes = inCore(malt, 'mass')! / 1000;
  if (!(mashes.number > 0 && mashes.number <= 200 && weeks > 0 && weeks <= 52 && tonnes > 0 && tonnes <= 100)) return undefined;
  const count = mashes.number * weeks;
  return {
    says: `${figures(count)} mashes a year, and ${formatNumber(count * tonnes * each, 0)}\u00a0L of pure alcohol; ours are ${figureText(line, 'heart.alcohol', 'year')} a year.`,
    sum: `${figures(mashes.number)} × ${figures(weeks)} × ${formatNumber(tonnes, tonnes % 1 === 0 ? 0 : 2)} t × ${figures(each)} L a tonne`,
    at: 'distilling/check/#figures-to-know',
    place: 'Distilling: figures to know',
    paths: ['heart.alcohol'],
  };
}; // prettier-ignore

/** So much malt at a yield, filled into casks of a size at a strength. */
export const casksFromMalt: Reckoner = (asked) => {
  const { text, quantities, line, house } = asked;
  if (!/how many .{0,30}(?:casks?|barrels?|hogsheads?|butts?)/i.test(text) || quantities.length < 3) return undefined;
  const malt = quantities.find(({ dimension, number }) => dimension === 'mass' && number > 0);
  const [each] = yieldsIn({ ...asked, quantities: quantities.filter(({ dimension }) => dimension !== 'volume') });
  if (!malt || each === undefined) return undefined;
  const sized = quantities.find((one) => one.dimension === 'volume' && within(CASKS, inCore(one, 'volume20')!));
  const size = sized ? inCore(sized, 'volume20')! : (namedCask({ text, quantities: [] })?.litres ?? line.casks.meanSize);
  const at = quantities.find(({ number, unit, dimension }) => (unit === undefined || dimension === 'percent' || dimension === 'strength') && number >= 30 && number <= 80)?.number ?? house.fillingStrength;
  const alcohol = (inCore(malt, 'mass')! / 1000) * each;
  const litres = alcohol / (at / 100);
  const full = Math.floor(litres / size + 1e-9);
  return {
    says: `${formatNumber(full, 0)} full casks of ${told(size, 'volume20')}, and about ${told(litres - full * size, 'volume20')} over: ${told(litres, 'volume20')} at ${told(at, 'strength')}.`,
    sum: `${formatNumber(inCore(malt, 'mass')! / 1000, 2)} t × ${figures(each)} = ${told(alcohol, 'alcohol')}; ÷ ${figures(at)} % ÷ ${figures(size)} L`,
    at: 'sums/fill-casks/',
    place: 'Fill the casks you have',
    paths: [],
  };
}; // prettier-ignore

/** A yield beside one that was promised. */
export const yieldShort: Reckoner = (asked) => {
  if (!/promis|predict|certificate|analysis|should (?:have|give|get)|expect|supposed to|target/i.test(asked.text)) return undefined;
  const yields = yieldsIn(asked);
  if (yields.length !== 2 || asked.quantities.length > 4) return undefined;
  const promised = /promis|predict|certificate|analysis|expect|target|suppos|should/i.exec(asked.text)!.index;
  const [first, second] = yields as [number, number];
  const before = asked.quantities.filter(({ number, start }) => number === first && start < promised).length > 0 && !asked.quantities.some(({ number, start }) => number === second && start < promised);
  const [wanted, got] = before ? [second, first] : [first, second];
  const off = 100 * (1 - got / wanted);
  return {
    says: `${figures(got)} is ${formatNumber((100 * got) / wanted, 1)} % of ${figures(wanted)}: ${figures(Math.abs(wanted - got))} L a tonne ${off >= 0 ? 'short' : 'over'}, ${formatNumber(Math.abs(off), 1)} %. Look at mill, mash, final gravity and what the stills leave, in that order; ours get ${figureText(asked.line, 'heart.alcohol', 'tonne')} a tonne.`,
    sum: `${figures(got)} ÷ ${figures(wanted)} = ${formatNumber(got / wanted, 3)}`,
    at: 'sums/predicted-spirit-yield/',
    place: 'Spirit a malt could give',
    paths: ['heart.alcohol'],
  };
}; // prettier-ignore

/** Malts of different smoke put together. */
export const smokeMixed: Reckoner = ({ text, quantities }) => {
  if (!/\bppm\b|parts per million/i.test(text) || !/mix|blend|\b(?:with|and)\b|plus|add/i.test(text)) return undefined;
  const cuts = [...text.matchAll(/\b(?:with|and|plus|to|into)\b/gi)].map(({ index }) => index);
  const bounds = [0, ...cuts, text.length];
  const parts = bounds.slice(1).flatMap((end, i) => {
    const inPart = quantities.filter((each) => each.start >= bounds[i]! && each.start < end);
    const words = text.slice(bounds[i], end);
    const ppm = inPart.find(({ dimension }) => dimension === 'smoke')?.number ?? (/plain|unpeated|no smoke|without|unsmoked|not peated/i.test(words) ? 0 : undefined);
    const weight = inPart.find(({ dimension }) => dimension !== 'smoke')?.number ?? (/\b(?:an?|one|each|equal)\b/i.test(words) ? 1 : undefined);
    return ppm === undefined || weight === undefined || !(weight > 0) ? [] : [{ ppm, weight }];
  });
  if (parts.length < 2) return undefined;
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  const mean = parts.reduce((sum, { weight, ppm }) => sum + weight * ppm, 0) / total;
  return {
    says: `${figures(mean)} ppm of phenols on the mixed malt; the spirit holds a good deal less.`,
    sum: `(${parts.map(({ weight, ppm }) => `${figures(weight)} × ${figures(ppm)}`).join(' + ')}) ÷ ${figures(total)}`,
    at: 'sums/peat-blend/',
    place: 'Plain and peated malt',
    paths: [],
  };
}; // prettier-ignore

/** What a sieve test of the asker’s own says beside the house’s grist. */
export const sieved: Reckoner = ({ text, quantities, house, line }) => {
  const part = (says: RegExp) => quantities.find((each) => each.dimension !== 'smoke' && says.test(behind(text, each).slice(0, 24)) )?.number;
  const [husk, grits, flour] = [/^\s*(?:g|%|of)?\s*husks?/i, /^\s*(?:g|%|of)?\s*(?:grits?|middles?|middlings)/i, /^\s*(?:g|%|of)?\s*(?:flour|fines?)/i].map(part);
  if (husk === undefined || grits === undefined || flour === undefined) return undefined;
  const total = husk + grits + flour;
  if (!(total > 0) || Math.min(husk, grits, flour) < 0) return undefined;
  const [huskPart, flourPart] = [(100 * husk) / total, (100 * flour) / total];
  const off = { husk: huskPart - house.husk, flour: flourPart - house.flour };
  const { first, second } = rollersToMove(off, TOLERANCE);
  const tells = off.husk > TOLERANCE ? 'too coarse, and extract stays in the draff' : off.husk < -TOLERANCE || off.flour > TOLERANCE ? 'too fine, and the mash will drain slowly' : 'near enough';
  const moves = first === 'as it is' && second === 'as it is' ? '' : ` Bring the ${first === 'as it is' ? 'second' : 'first'} pair of rollers ${(first === 'as it is' ? second : first) === 'narrower' ? 'closer' : 'apart'} a little, as your site allows it, and sieve again.`;
  return {
    says: `${formatNumber(huskPart, 0)} husk, ${formatNumber((100 * grits) / total, 0)} grits and ${formatNumber(flourPart, 0)} flour against our ${figureText(line, 'house.husk')}, ${figureText(line, 'grist.gritsPercent')} and ${figureText(line, 'house.flour')}: ${tells}.${moves}`,
    sum: `Each part ÷ ${figures(total)} found on the sieves`,
    at: 'sums/sieve-test/',
    place: 'The sieve test',
    rests: 'common practice',
    paths: ['house.husk', 'house.flour'],
  };
}; // prettier-ignore

/** Bottles from an acre or hectare with a yield of grain of its own. */
export const landAt: Reckoner = ({ text, quantities, line }) => {
  const land = SPEAKS_OF_LAND.exec(text);
  const grain = quantities.find(({ dimension }) => dimension === 'mass');
  if (!land || !grain || !/bottles?|alcohol|spirit|whisk/i.test(text)) return undefined;
  const kilos = inCore(grain, 'mass')!;
  if (!within(HARVESTS, kilos / 1000) || quantities.some(({ dimension }) => dimension !== 'mass' && dimension !== 'area')) return undefined;
  const mashes = kilos / line.barley.mass;
  return {
    says: `About ${formatNumber(line.bottling.bottles * mashes, 0)} of our bottles from ${/^a/i.test(land[1]!) ? 'an acre' : 'a hectare'} that gives ${formatNumber(kilos / 1000, 1)} t of barley, after the years in wood; ${told(line.heart.alcohol * mashes, 'alcohol')} as new spirit.`,
    sum: `${formatNumber(kilos, 0)} kg ÷ ${figureText(line, 'barley.mass')} × ${figureText(line, 'bottling.bottles')}`,
    at: 'sums/barley-and-land/',
    place: 'Malt, barley and land',
    paths: ['barley.mass', 'bottling.bottles'],
  };
}; // prettier-ignore

/** How long so much malt lasts the house. */
export const maltLasts: Reckoner = ({ text, quantities, house, line }) => {
  const malt = quantities.find(({ dimension }) => dimension === 'mass');
  if (!malt || quantities.length !== 1 || !/\bhow (?:long|many (?:days|weeks))\b.{0,40}\blast/i.test(text)) return undefined;
  const mashes = inCore(malt, 'mass')! / line.malt.mass;
  return {
    says: `${formatNumber(Math.floor(mashes), 0)} mashes, which is about ${formatNumber(mashes / house.mashesPerWeek, 1)} weeks at ${formatNumber(house.mashesPerWeek, 0)} a week.`,
    sum: `${formatNumber(inCore(malt, 'mass')!, 0)} kg ÷ ${figureText(line, 'malt.mass')} ÷ ${formatNumber(house.mashesPerWeek, 0)}`,
    at: 'milling/check/#figures-to-know',
    place: 'Milling: figures to know',
    paths: ['malt.mass'],
  };
}; // prettier-ignore

/** The yield of so much malt that gave so much alcohol. */
export const yieldGot: Reckoner = ({ text, quantities, line }) => {
  const malt = quantities.find(({ dimension }) => dimension === 'mass');
  const got = quantities.find(({ dimension }) => dimension === 'alcohol' || dimension === 'volume');
  if (!malt || !got || quantities.length !== 2 || !/yield|(?:a|per|to the|each) tonn?e?\b/i.test(text) || !/alcohol|\blpas?\b|\bpure\b/i.test(text)) return undefined;
  const litres = got.dimension === 'alcohol' ? inCore(got, 'alcohol')! : inCore(got, 'volume20')!;
  const each = litres / (inCore(malt, 'mass')! / 1000);
  if (!within(YIELDS, each)) return undefined;
  return {
    says: `${formatNumber(each, 0)} L of pure alcohol a tonne; ours give ${figureText(line, 'heart.alcohol', 'tonne')} a tonne in the heart.`,
    sum: `${formatNumber(litres, 0)} ÷ ${formatNumber(inCore(malt, 'mass')! / 1000, 2)} t`,
    at: 'distilling/check/#figures-to-know',
    place: 'Distilling: figures to know',
    paths: ['heart.alcohol'],
  };
}; // prettier-ignore
