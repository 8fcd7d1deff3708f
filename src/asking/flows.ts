// Things that grow with the mashes, by what they are called: how much of each one mash has, so that any goes into any other.
import type { KindName } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import { KWH_OF_TRADE, WATER_OF_TRADE } from '../house/for-a-bottle.ts';
import { figureValue, kindOfFigure } from '../house/prose.ts';

export interface AskedFlow {
  readonly says: RegExp;
  readonly called: string;
  /** One of it, where it is counted. */
  readonly one?: string;
  readonly kind: KindName;
  readonly perMash: (line: Line) => number;
  /** Its place in the line, where it is a figure of the house. */
  readonly path?: string;
  /** What a figure of it rests on, where no source does. */
  readonly rests?: 'common practice';
  readonly isTime?: boolean;
  readonly isGas?: boolean;
}

const ENERGY_OF_TRADE = KWH_OF_TRADE * 3.6; // MJ for a litre of pure alcohol
const HARVEST = 6; // t of barley from a hectare; the middle of the 5.5–6.5 of the chapter on barley, common practice
const DRAM = 0.025; // L; a small British bar measure, Weights and Measures (Intoxicating Liquor) Order 1988
const DAYS = 7;
const HOURS = 168; // in a week
const MONTHS = 12;
const CASE = 6; // bottles; common practice

const figure = (says: RegExp, path: string, called: string, kind: KindName, one?: string): AskedFlow => ({
  says,
  path,
  called,
  kind,
  ...(one && { one }),
  perMash: (line) => figureValue(line, path),
});
const counted = (says: RegExp, called: string, one: string, perMash: AskedFlow['perMash']): AskedFlow => ({ says, called, one, kind: 'count', perMash }); // prettier-ignore
const time = (says: RegExp, called: string, one: string, perMash: AskedFlow['perMash']): AskedFlow => ({ says, called, one, kind: 'count', perMash, isTime: true }); // prettier-ignore
const bottles = ({ bottling }: Line) => bottling.bottles;

/** The longer names before the shorter. */
export const flowsNamed: readonly AskedFlow[] = [
  { ...figure(/carbon dioxide|\bco2\b|\bgas\b(?! (?:and|or|&|\+) (?:electric|power)| bill)/i, 'wash.carbonDioxide', 'of carbon dioxide', 'mass'), isGas: true },
  figure(/draff|spent grains?|leftover grains?|brewers['’]? grains?/i, 'mash.draff', 'of wet draff', 'mass'),
  figure(/pot ale|burnt ale/i, 'potAle.volume', 'of pot ale', 'volume20'),
  figure(/spent lees/i, 'spentLees.volume', 'of spent lees', 'volume20'),
  figure(/low wines/i, 'lowWines.volume', 'of low wines', 'volume20'),
  figure(/foreshots?/i, 'foreshots.volume', 'of foreshots', 'volume20'),
  figure(/feints/i, 'feints.volume', 'of feints', 'volume20'),
  figure(/\byeast\b/i, 'house.yeast', 'of yeast', 'mass'),
  figure(/pure alcohol|\blpas?\b|\blaas?\b|proof gal|\balcohol\b/i, 'heart.alcohol', 'in the heart', 'alcohol'),
  figure(/malt(?:ed barley)?\b(?! (?:whisk|spirit|house))/i, 'malt.mass', 'of malt', 'mass'),
  figure(/barley|grain/i, 'barley.mass', 'of barley', 'mass'),
  figure(/\b(?:first|mash(?:ing)?|strike) (?:water|liquor)\b/i, 'mash.firstWater', 'of first water', 'volume20'),
  { says: /\bwater\b/i, called: 'of water, cooling included', kind: 'volume', perMash: ({ heart }) => WATER_OF_TRADE * heart.alcohol, rests: 'common practice' },
  { says: /\b(?:energy|kwh|mwh|power|electric(?:ity)?|gas and electric(?:ity)?|fuel)\b(?! cut)(?!.{0,24}\bmalting\b)/i, called: 'of heat and power', kind: 'energy', perMash: ({ heart }) => ENERGY_OF_TRADE * heart.alcohol, rests: 'common practice' },
  figure(/\bworts?\b/i, 'wort.volume', 'of wort', 'volume20'),
  figure(/\bwash\b|\bbeer\b/i, 'wash.volume', 'of wash', 'volume20'),
  figure(/new (?:make|spirit)|heart|spirit|whisk(?:e)?y/i, 'heart.volume', 'of new spirit', 'volume20'),
  counted(/\bmash(?:es)?\b|\bbatch(?:es)?\b|\bbrews?\b/i, 'mashes', 'mash', () => 1),
  counted(/hogsheads?/i, 'hogsheads', 'hogshead', ({ filling }) => filling.volume / CASK_SIZES.hogshead),
  counted(/butts?\b/i, 'butts', 'butt', ({ filling }) => filling.volume / CASK_SIZES.butt),
  counted(/barrels?/i, 'barrels', 'barrel', ({ filling }) => filling.volume / CASK_SIZES.barrel),
  figure(/casks?/i, 'casks.perMash', 'casks', 'count', 'cask'),
  counted(/\bdrams?\b|\b(?:tots?|nips?|measures?|shots?)\b/i, 'drams of 25 mL', 'dram of 25 mL', (line) => (bottles(line) * line.house.bottleSize) / 100 / DRAM),
  counted(/\bcases?\b/i, 'cases of six', 'case of six', (line) => bottles(line) / CASE),
  figure(/bottles?/i, 'bottling.bottles', 'bottles', 'count', 'bottle'),
  { says: /\b(?:fields?|land|hectares?|acres?|\bha\b)/i, called: 'of land', kind: 'land', perMash: ({ barley }) => barley.mass / 1000 / HARVEST, rests: 'common practice' },
]; // prettier-ignore

/** Times, in which so many mashes are made: so much of a mash’s time is one of them. */
export const timesNamed: readonly AskedFlow[] = [
  time(/\b(?:years?|annum)\b/i, 'years', 'year', ({ pace }) => 1 / pace.mashesPerYear),
  time(/\bmonths?\b/i, 'months', 'month', ({ pace }) => MONTHS / pace.mashesPerYear),
  time(/\bweeks?\b/i, 'working weeks', 'working week', ({ house }) => 1 / house.mashesPerWeek),
  time(/\bdays?\b/i, 'days', 'day of a working week', ({ house }) => DAYS / house.mashesPerWeek),
  time(/\bhours?\b/i, 'hours', 'hour of a working week', ({ house }) => HOURS / house.mashesPerWeek),
];
export const timeOfUnit = (unit: string | undefined): AskedFlow | undefined =>
  unit === 'h'
    ? timesNamed.at(-1)
    : timesNamed.find(({ called }) => unit !== undefined && called.endsWith(unit));

/** The thing named first in a part of a text, and where. */
export function flowIn(text: string, from = 0, until = text.length): { readonly flow: AskedFlow; readonly at: number } | undefined {
  const part = text.slice(from, until);
  let best: { flow: AskedFlow; at: number } | undefined;
  for (const flow of flowsNamed) {
    const at = flow.says.exec(part)?.index;
    if (at !== undefined && (!best || from + at < best.at)) best = { flow, at: from + at };
  }
  return best;
} // prettier-ignore

/** True for a thing that stands in the line of the house. */
export const isOfHouse = ({ path }: AskedFlow): boolean =>
  path !== undefined && kindOfFigure(path) !== undefined;
