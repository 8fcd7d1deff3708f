// A grist of several malts as one malt, and the malts of a year: peated weeks and plain ones.
import {
  alcoholPerTonne,
  kilograms,
  litresOfAlcohol,
  percent,
  quantity,
  type Quantity,
} from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { extractAsIs } from './analysis.ts';
import { predictedSpiritYield } from './spirit-yield.ts';

/** What extract and phenols are parts of: the malt as it is, or its dry matter. Maltsters give either. */
export const extractBases = { 'as-is': 'The malt as it is', dry: 'The dry malt' } as const;
export type Basis = keyof typeof extractBases;

/** So much of a malt in a mash, with its analysis on one of the two bases. */
export interface Malt {
  readonly mass: Quantity<'mass'>;
  readonly moisture: Quantity<'percent'>;
  readonly extract: Quantity<'percent'>;
  readonly fermentability: Quantity<'percent'>;
  readonly phenols: Quantity<'ppm'>;
}

/** Malts as one: what is in them, over the mass of all. */
export interface MeanMalt {
  readonly mass: Quantity<'mass'>;
  readonly moisture: Quantity<'percent'>;
  /** Of the malt as it is, and of its dry matter. */
  readonly extract: Quantity<'percent'>;
  readonly extractDry: Quantity<'percent'>;
  /** Of all the extract, each malt counting by its own. */
  readonly fermentability: Quantity<'percent'>;
  readonly phenols: Quantity<'ppm'>;
  readonly phenolsDry: Quantity<'ppm'>;
  /** Predicted, L of pure alcohol to a tonne as it is. */
  readonly spiritYield: Quantity<'yield'>;
}

/**
 * A grist as one malt: water, extract, fermentable extract and phenols add, and are shared by the mass of all.
 * Masses in kg, moisture 0–50 %, extract and fermentability 0–100 %, phenols 0–1000 ppm. Refuses a grist of no malt, and
 * one without extract. Source: mass balance; spirit by Bringhurst et al. 1996.
 * @example meanMalt([{ mass: 100, moisture: 4, extract: 76, fermentability: 88, phenols: 0 }, { mass: 300, moisture: 4, extract: 76, fermentability: 88, phenols: 40 }], 'as-is') // { mass: 400, extract: 76, phenols: 30 } (300 × 40 ÷ 400)
 */
export function meanMalt(malts: readonly Malt[], basis: Basis): MeanMalt | Refusal {
  const parts = malts.map((malt) => {
    within('The malt, kg,', malt.mass, 0, VERY_MUCH);
    within('The phenols, ppm,', malt.phenols, 0, 1000);
    within('The fermentability, %,', malt.fermentability, 0, 100);
    const dry = 1 - within('The moisture, %,', malt.moisture, 0, 50) / 100;
    const extract = basis === 'dry' ? extractAsIs(malt.extract, malt.moisture) : malt.extract;
    within('The extract, % of the malt as it is,', extract, 0, 100 * dry);
    return { ...malt, dry, extract, phenols: basis === 'dry' ? malt.phenols * dry : malt.phenols };
  });
  const sum = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((whole, part) => whole + part.mass * of(part), 0);
  const [mass, dry, extract, fermentable, phenols] = [
    sum(() => 1),
    sum((part) => part.dry),
    sum((part) => part.extract),
    sum((part) => (part.extract * part.fermentability) / 100),
    sum((part) => part.phenols),
  ];
  if (!(mass > 0)) return refuse('There is no malt in the grist.');
  if (!(extract > 0)) return refuse('The malt has no extract.');
  const analysis = {
    extract: percent(extract / mass),
    fermentability: percent((100 * fermentable) / extract),
  };
  return {
    mass: kilograms(mass),
    moisture: percent(100 * (1 - dry / mass)),
    ...analysis,
    extractDry: percent(extract / dry),
    phenols: quantity('ppm', phenols / mass),
    phenolsDry: quantity('ppm', phenols / dry),
    spiritYield: alcoholPerTonne(predictedSpiritYield(analysis)),
  };
}

/** Weeks of a year in which one grist is mashed. */
export interface Campaign {
  readonly weeks: number;
  readonly malts: readonly Malt[];
}

export interface YearOfMalts {
  readonly weeks: number;
  readonly mashes: number;
  /** All malt of the year as one; its mass is the year's. */
  readonly mean: MeanMalt;
  /** Predicted from all of it, L of pure alcohol. */
  readonly alcohol: Quantity<'alcohol'>;
}

/**
 * The malts of a year's campaigns, each mash of a campaign its whole grist. Refuses a year without a mash.
 * @example yearOfMalts([{ weeks: 40, malts: [{ mass: 1000, moisture: 4, extract: 77.5, fermentability: 87, phenols: 0 }] }], 'as-is', count(10)) // { weeks: 40, mashes: 400, alcohol: 163438 } (400 t × 408.595 L, worked by hand)
 */
export function yearOfMalts(
  campaigns: readonly Campaign[],
  basis: Basis,
  mashesPerWeek: Quantity<'count'>,
): YearOfMalts | Refusal {
  within('The mashes in a week', mashesPerWeek, 0, 10_000);
  const weeks = campaigns.reduce((sum, each) => sum + within('The weeks', each.weeks, 0, 53), 0);
  const all = campaigns.flatMap(({ weeks, malts }) =>
    malts.map((malt) => ({ ...malt, mass: kilograms(malt.mass * weeks * mashesPerWeek) })),
  );
  const mean = meanMalt(all, basis);
  if (isRefusal(mean)) return mean;
  const alcohol = litresOfAlcohol((mean.mass / 1000) * mean.spiritYield);
  return { weeks, mashes: weeks * mashesPerWeek, mean, alcohol };
}
