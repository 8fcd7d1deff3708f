// Sums of malt with the asker’s own numbers: a promised yield, smoke, sieves, how long malt lasts.
import { formatNumber } from '../core/format.ts';
import { rollersToMove } from '../core/milling/sieve.ts';
import { figureText } from '../house/prose.ts';
import { inCore, type Numbered, type Reckoner } from './reckoned.ts';
import { textBehind, numberText, isWithinRange } from './sum-kit.ts';

const YIELDS = [100, 500] as const; // litres of pure alcohol from a tonne that a malt can be said to give
const TOLERANCE = 2; // points that a sieve test may be off before rollers are moved; common practice
const SPEAKS_OF_YIELD = /yield|\bat\b|tonn?e?s?\b|\blpas?\b/i;

/** Litres of pure alcohol from a tonne, as a question tells them; each that is told. */
const yieldsIn = ({ text, quantities }: Numbered): readonly number[] =>
  quantities.flatMap(({ number, unit, dimension }) =>
    (dimension === 'yield' || unit === undefined || dimension === 'alcohol' || (dimension === 'volume' && /^L$/.test(unit))) &&
    SPEAKS_OF_YIELD.test(text) && isWithinRange(YIELDS, number) ? [number] : [],
  ); // prettier-ignore

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
    says: `${numberText(got)} is ${formatNumber((100 * got) / wanted, 1)} % of ${numberText(wanted)}: ${numberText(Math.abs(wanted - got))} L a tonne ${off >= 0 ? 'short' : 'over'}, ${formatNumber(Math.abs(off), 1)} %. Look at mill, mash, final gravity and what the stills leave, in that order; ours get ${figureText(asked.line, 'heart.alcohol', 'tonne')} a tonne.`,
    sum: `${numberText(got)} ÷ ${numberText(wanted)} = ${formatNumber(got / wanted, 3)}`,
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
    says: `${numberText(mean)} ppm of phenols on the mixed malt; the spirit holds a good deal less.`,
    sum: `(${parts.map(({ weight, ppm }) => `${numberText(weight)} × ${numberText(ppm)}`).join(' + ')}) ÷ ${numberText(total)}`,
    at: 'sums/peat-blend/',
    place: 'Plain and peated malt',
    paths: [],
  };
}; // prettier-ignore

/** What a sieve test of the asker’s own says beside the house’s grist. */
export const sieved: Reckoner = ({ text, quantities, house, line }) => {
  const part = (says: RegExp) => quantities.find((each) => each.dimension !== 'smoke' && says.test(textBehind(text, each).slice(0, 24)) )?.number;
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
    sum: `Each part ÷ ${numberText(total)} found on the sieves`,
    at: 'sums/sieve-test/',
    place: 'The sieve test',
    rests: 'common practice',
    paths: ['house.husk', 'house.flour'],
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
  if (!isWithinRange(YIELDS, each)) return undefined;
  return {
    says: `${formatNumber(each, 0)} L of pure alcohol a tonne; ours give ${figureText(line, 'heart.alcohol', 'tonne')} a tonne in the heart.`,
    sum: `${formatNumber(litres, 0)} ÷ ${formatNumber(inCore(malt, 'mass')! / 1000, 2)} t`,
    at: 'distilling/check/#figures-to-know',
    place: 'Distilling: figures to know',
    paths: ['heart.alcohol'],
  };
}; // prettier-ignore
