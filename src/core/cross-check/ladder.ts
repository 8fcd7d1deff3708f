// Pure alcohol at each station of the line, in every way that quoted figures give it, as a sum that a person can redo.
import { SPIRIT_YIELD_FACTOR } from '../malting/spirit-yield.ts';
import type { QuotableName } from './quoted.ts';
import { alcoholLeft, extractInWort, maltCouldGive, meanHeart, type Values } from './relations.ts';

/** Puts a figure as it was said, with its unit. */
export type Say = (figure: QuotableName) => string;

export interface LadderWay {
  readonly figures: readonly QuotableName[];
  /** Litres of pure alcohol: of a mash, or of one cask. */
  readonly alcohol: (v: Values) => number;
  /** What is reckoned, as the first part of a sentence; the litres follow. */
  readonly says: (t: Say) => string;
  /** "least": the station holds no less than this, so it is no estimate. */
  readonly only?: 'least';
}

const strengthOf = (volume: QuotableName, strength: QuotableName) => (v: Values) =>
  (v[volume] * v[strength]) / 100;

/** The stations of a mash, in their order. */
export const mashStations = {
  malt: [
    {
      figures: ['maltPerMash', 'solubleExtract', 'fermentability'],
      alcohol: (v) => maltCouldGive(v),
      says: (t) => `${t('maltPerMash')} of malt with ${t('solubleExtract')} of extract, ${t('fermentability')} of it fermentable, can give`,
    },
  ],
  wort: [
    {
      figures: ['wortVolume', 'originalGravity', 'fermentability'],
      alcohol: (v) => (SPIRIT_YIELD_FACTOR / 1000) * v.fermentability * extractInWort(v),
      says: (t) => `${t('wortVolume')} of wort of ${t('originalGravity')}, ${t('fermentability')} of its extract fermentable, can give`,
    },
  ],
  wash: [
    { figures: ['washVolume', 'washStrength'], alcohol: strengthOf('washVolume', 'washStrength'), says: (t) => `${t('washVolume')} of wash at ${t('washStrength')} holds` },
    { figures: ['wortVolume', 'washStrength'], alcohol: strengthOf('wortVolume', 'washStrength'), says: (t) => `${t('wortVolume')} at ${t('washStrength')} holds` },
  ],
  lowWines: [
    { figures: ['lowWinesVolume', 'lowWinesStrength'], alcohol: strengthOf('lowWinesVolume', 'lowWinesStrength'), says: (t) => `${t('lowWinesVolume')} of low wines at ${t('lowWinesStrength')} holds` },
  ],
  heart: [
    { figures: ['heartAlcohol'], alcohol: (v) => v.heartAlcohol, says: () => 'the new spirit of a mash is said to hold' },
    { figures: ['heartVolume', 'heartStrength'], alcohol: strengthOf('heartVolume', 'heartStrength'), says: (t) => `${t('heartVolume')} of new spirit at ${t('heartStrength')} holds` },
    {
      figures: ['heartVolume', 'heartBegins', 'heartEnds'],
      alcohol: (v) => (v.heartVolume * meanHeart([v.heartBegins, v.heartEnds])) / 100,
      says: (t) => `${t('heartVolume')} of new spirit between ${t('heartBegins')} and ${t('heartEnds')} holds about`,
    },
    { only: 'least', figures: ['heartVolume', 'heartEnds'], alcohol: strengthOf('heartVolume', 'heartEnds'), says: (t) => `${t('heartVolume')} of new spirit, none of it below ${t('heartEnds')}, holds no less than` },
    { figures: ['spiritYield', 'maltPerMash'], alcohol: (v) => (v.spiritYield * v.maltPerMash) / 1000, says: (t) => `${t('maltPerMash')} of malt at ${t('spiritYield')} makes` },
    { figures: ['alcoholPerWeek', 'mashesPerWeek'], alcohol: (v) => v.alcoholPerWeek / v.mashesPerWeek, says: (t) => `${t('alcoholPerWeek')} a week from ${t('mashesPerWeek')} mashes is, for a mash,` },
    {
      figures: ['alcoholPerYear', 'mashesPerWeek', 'weeksPerYear'],
      alcohol: (v) => v.alcoholPerYear / v.mashesPerWeek / v.weeksPerYear,
      says: (t) => `${t('alcoholPerYear')} a year from ${t('mashesPerWeek')} mashes a week in ${t('weeksPerYear')} weeks is, for a mash,`,
    },
  ],
  casks: [
    {
      figures: ['casksPerWeek', 'caskSize', 'fillingStrength', 'mashesPerWeek'],
      alcohol: (v) => (v.casksPerWeek * v.caskSize * v.fillingStrength) / 100 / v.mashesPerWeek,
      says: (t) => `${t('casksPerWeek')} casks a week of ${t('caskSize')}, filled at ${t('fillingStrength')} from ${t('mashesPerWeek')} mashes, take for a mash`,
    },
    {
      figures: ['casksPerYear', 'caskSize', 'fillingStrength', 'mashesPerWeek', 'weeksPerYear'],
      alcohol: (v) => (v.casksPerYear * v.caskSize * v.fillingStrength) / 100 / v.mashesPerWeek / v.weeksPerYear,
      says: (t) => `${t('casksPerYear')} casks a year of ${t('caskSize')}, filled at ${t('fillingStrength')} from ${t('mashesPerWeek')} mashes a week in ${t('weeksPerYear')} weeks, take for a mash`,
    },
  ],
} as const satisfies Record<string, readonly LadderWay[]>; // prettier-ignore
export type MashStation = keyof typeof mashStations;

/** The spirit charge: it holds the heart, but foreshots and feints of other mashes besides. */
export const chargeStation: LadderWay = { figures: ['chargeVolume', 'chargeStrength'], alcohol: strengthOf('chargeVolume', 'chargeStrength'), says: (t) => `${t('chargeVolume')} of spirit charge at ${t('chargeStrength')} holds` }; // prettier-ignore

/** One cask: what went in, and what is bottled. */
export const filledStation: LadderWay = {
  figures: ['caskSize', 'fillingStrength'],
  alcohol: strengthOf('caskSize', 'fillingStrength'),
  says: (t) => `a cask of ${t('caskSize')} filled at ${t('fillingStrength')} got`,
};
export const keptStation: LadderWay = {
  figures: ['caskSize', 'fillingStrength', 'alcoholLoss', 'yearsInWood'],
  alcohol: (v) => ((v.caskSize * v.fillingStrength) / 100) * alcoholLeft(v),
  says: (t) =>
    `a cask of ${t('caskSize')} filled at ${t('fillingStrength')}, losing ${t('alcoholLoss')} a year for ${t('yearsInWood')}, keeps`,
};
export const bottledStation: LadderWay = {
  figures: ['bottlesPerCask', 'bottleSize', 'bottlingStrength'],
  alcohol: (v) => (v.bottlesPerCask * v.bottleSize * v.bottlingStrength) / 1e4,
  says: (t) => `${t('bottlesPerCask')} bottles of ${t('bottleSize')} at ${t('bottlingStrength')} hold`,
};

/** From each station to the next: the part that gets there, its spread, and how much more the sums may show than there was. */
const steps: readonly { readonly to: MashStation; readonly times: number; readonly spread: number; readonly slack: number }[] = [
  { to: 'malt', times: 1, spread: 0, slack: 1 },
  { to: 'wort', times: 0.975, spread: 0.0154, slack: 1 }, // `mash` in relations.ts
  { to: 'wash', times: 1, spread: 0.02, slack: 1.02 }, // `fermentable`: 6.06 against Balling's 6.13, and wash that is said by the volume of its wort
  { to: 'lowWines', times: 0.9875, spread: 0.006, slack: 1 }, // `washStill`
  { to: 'heart', times: 0.994, spread: 0.004, slack: 1 }, // `spiritStill`
  { to: 'casks', times: 1, spread: 0.01, slack: 1.05 }, // `casks`; a mean size is a round number, and no cask is filled to the bung
]; // prettier-ignore

/** Two stations of which the later cannot hold more than the earlier. */
export interface LadderFall {
  readonly later: LadderWay;
  readonly earlier: LadderWay;
  /** What the later holds of the earlier, with its spread as a part; left out where it is not known. */
  readonly times?: number;
  readonly spread?: number;
  readonly slack: number;
  readonly of: 'mash' | 'cask';
}

/** Every pair of ways from one station to a later one. */
export const stationPairs: readonly LadderFall[] = [
  ...steps.flatMap(({ to: from }, i) =>
    steps.slice(i + 1).flatMap(({ to }, j) => {
      const between = steps.slice(i + 1, i + 2 + j);
      const times = between.reduce((product, step) => product * step.times, 1);
      const spread = Math.hypot(...between.map((step) => step.spread));
      const slack = between.reduce((product, step) => product * step.slack, 1);
      return mashStations[to].flatMap((later: LadderWay) =>
        mashStations[from]
          .filter((earlier: LadderWay) => earlier.only === undefined)
          .map((earlier: LadderWay): LadderFall => ({ later, earlier, slack, of: 'mash', ...(later.only === undefined && { times, spread }) })),
      );
    }),
  ),
  ...mashStations.heart.map((later: LadderWay): LadderFall => ({ later, earlier: chargeStation, slack: 1, of: 'mash' })),
  { later: bottledStation, earlier: filledStation, slack: 1, of: 'cask' },
  { later: bottledStation, earlier: keptStation, times: 0.97, spread: 0.02, slack: 1.05, of: 'cask' }, // `bottles`; a loss a year is a mean, and the first years may differ
]; // prettier-ignore
