// What must hold between the figures of a line: balances, and models with the spread that each is known to.
import { runStill } from '../distilling/run.ts';
import { stillCurve } from '../distilling/still.ts';
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { SPIRIT_YIELD_FACTOR } from '../malting/spirit-yield.ts';
import { wortExtract } from '../mashing/wort.ts';
import { remember } from '../numerics/remember.ts';
import { gravity, kilopascals, litres20, share, strength } from '../quantity.ts';
import type { SourceId } from '../sources.ts';
import { minus, portionOf } from '../spirit/amounts.ts';
import { attenuate } from '../wort/attenuation.ts';
import { quotableFigures, quotableNames, type QuotableName } from './quoted.ts';
import { isRefusal } from '../refusal.ts';

export type Values = Readonly<Record<QuotableName, number>>;

export interface Relation {
  readonly figures: readonly QuotableName[];
  /** The two sides, in one unit. */
  readonly sides: (v: Values) => readonly [left: number, right: number];
  /** The left side is this many times the right; 1 when left out. */
  readonly times?: number;
  /** Standard spread between the sides: a part of them, or in their own unit. */
  readonly spread: number;
  readonly as?: 'own';
  /** "ceiling": only a left side above the right breaks it. "told": not weighed, for it follows from others; only told of. */
  readonly only?: 'ceiling' | 'told';
  readonly why: string;
  readonly source: SourceId;
}

const EXACT = 1e-4; // spread of an identity, a part: far below every other
const STILL = { reflux: share(0.1), pressure: kilopascals(STANDARD_ATMOSPHERE) }; // a mean strength moves by 0.3 % vol at most between reflux 0 and 0.6

/**
 * A number kept between two ends, so that a search may stray without harm.
 * @example heldBetween(0, 5, 3) // 3 (no more than the upper end)
 */
export const heldBetween = (low: number, value: number, high: number) => Math.min(high, Math.max(low, value));

/** Strength of wash and litres of wash to a litre of wort, by Balling. */
const ferment = remember(([original, final]: readonly [number, number]) => {
  const og = heldBetween(1.002, original, 1.149);
  const fg = heldBetween(0.981, final, og - 0.001);
  const { strength: made, wash } = attenuate({ original: gravity(og), final: gravity(fg) });
  return { strength: made as number, volume: (wash * og) / fg };
}, 64, ([a, b], [c, d]) => a === c && b === d); // prettier-ignore

export const WASH_REFLUX = share(0.05); // of heads and necks of wash stills from 0 to 0.15, as a trade's low wines of 20 to 25 % vol from washes of 7 to 9 ask for

/** Strength of the low wines of a wash run down to 1 % vol. */
const lowWinesOver = remember((wash: number) => {
  const charge = { volume: litres20(100), strength: strength(heldBetween(0.5, wash, 25)) };
  const run = runStill({ charge, reflux: WASH_REFLUX, until: strength(1) });
  if (isRefusal(run)) throw new RangeError(run.refused);
  return run.distillate.strength as number;
}, 64);

/**
 * Strength, as a whole, of a heart that begins at one strength and ends at another.
 * @example meanHeart([70, 70]) // 70 (it begins and ends there)
 */
export const meanHeart = remember(([begins, ends]: readonly [number, number]) => {
  const [high, low] = [Math.max(begins, ends), Math.min(begins, ends)].map((s) => heldBetween(5, s, 90));
  if (high! - low! < 0.01) return (high! + low!) / 2;
  const { potAt, left } = stillCurve(STILL);
  const [from, to] = [potAt(strength(high!)), potAt(strength(low!))];
  if (from === undefined || to === undefined) return (high! + low!) / 2;
  const rest = left(from, to);
  const before = { ethanol: from, water: 1 - from };
  return portionOf(minus(before, { ethanol: rest * to, water: rest * (1 - to) })).strength as number;
}, 64, ([a, b], [c, d]) => a === c && b === d); // prettier-ignore

/** @example extractInWort({ wortVolume: 1000, originalGravity: 1.04831 }) // 125.6 (12 % of 1046.4 kg) */
export const extractInWort = (v: Values) =>
  wortExtract({
    volume: litres20(heldBetween(0, v.wortVolume, 1e12)),
    gravity: gravity(heldBetween(0.99, v.originalGravity, 1.149)),
  });
const alcoholInWash = (v: Values) => (v.washVolume * v.washStrength) / 100;
const alcoholInLowWines = (v: Values) => (v.lowWinesVolume * v.lowWinesStrength) / 100;
/** @example alcoholInCharge({ chargeVolume: 4000, chargeStrength: 23 }) // 920 (4000 × 0.23) */
export const alcoholInCharge = (v: Values) => (v.chargeVolume * v.chargeStrength) / 100;
const extractInMalt = (v: Values) => (v.maltPerMash * v.solubleExtract) / 100;
/** @example maltCouldGive({ maltPerMash: 1000, solubleExtract: 77.5, fermentability: 87 }) // 408.595 (6.06 × 77.5 × 0.87) */
export const maltCouldGive = (v: Values) =>
  (SPIRIT_YIELD_FACTOR * v.maltPerMash * v.solubleExtract * v.fermentability) / 1e5; // L a tonne, from kg and two percentages
/** @example alcoholLeft({ alcoholLoss: 10, yearsInWood: 2 }) // 0.81 (0.9 × 0.9) */
export const alcoholLeft = (v: Values) =>
  heldBetween(1e-9, (1 - heldBetween(0, v.alcoholLoss, 90) / 100) ** v.yearsInWood, 1); // a search that strays to hundreds of years must still find a number

/** The relations of a house that distils twice, in the order of the line. */
export const relations = {
  maltPerWeek: {
    figures: ['maltPerWeek', 'maltPerMash', 'mashesPerWeek'],
    sides: (v) => [v.maltPerWeek, v.maltPerMash * v.mashesPerWeek],
    spread: EXACT,
    why: 'the malt of a week is that of its mashes',
    source: 'derived',
  },
  maltPerYear: {
    figures: ['maltPerYear', 'maltPerMash', 'mashesPerWeek', 'weeksPerYear'],
    sides: (v) => [v.maltPerYear, v.maltPerMash * v.mashesPerWeek * v.weeksPerYear],
    spread: EXACT,
    why: 'the malt of a year is that of its weeks',
    source: 'derived',
  },
  mash: {
    figures: ['wortVolume', 'originalGravity', 'maltPerMash', 'solubleExtract'],
    sides: (v) => [extractInWort(v), extractInMalt(v)],
    times: 0.975,
    spread: 0.0154,
    why: 'a mash brings 97.5 ± 1.5 % of the malt’s extract into the wort (97 to 99 % recalled, and houses below it)',
    source: 'memory',
  },
  extract: {
    figures: ['wortVolume', 'originalGravity', 'maltPerMash', 'solubleExtract'],
    sides: (v) => [extractInWort(v), extractInMalt(v)],
    spread: 0.003,
    only: 'ceiling',
    why: 'the wort cannot hold more extract than the malt',
    source: 'derived',
  },
  fermentable: {
    figures: ['washVolume', 'washStrength', 'wortVolume', 'originalGravity', 'fermentability'],
    sides: (v) => [
      alcoholInWash(v),
      (SPIRIT_YIELD_FACTOR / 1000) * v.fermentability * extractInWort(v),
    ],
    spread: 0.02,
    why: 'a kilogram of fermentable extract gives 0.606 L of pure alcohol; 6.06, 6.11 and Balling’s 6.13 differ by 1 %, and wort in the washback ferments on',
    source: 'bringhurst-1996',
  },
  balling: {
    figures: ['washStrength', 'originalGravity', 'finalGravity'],
    sides: (v) => [v.washStrength, ferment([v.originalGravity, v.finalGravity]).strength],
    times: 0.98,
    spread: 0.02,
    why: 'Balling has 48.4 g of alcohol from 100 g of extract used, which is the most that a washback gives; 46.5 to 47.5 g of the sugar is usual, the rest being glycerol, acids and yeast',
    source: 'common-practice',
  },
  washVolume: {
    figures: ['washVolume', 'wortVolume', 'originalGravity', 'finalGravity'],
    sides: (v) => [v.washVolume, v.wortVolume * ferment([v.originalGravity, v.finalGravity]).volume],
    times: 1.005,
    spread: 0.01,
    why: 'wort loses a little volume with its gas; yeast is pitched in up to 2 % of water, and what stays in pipes takes up to 1 % away',
    source: 'common-practice',
  },
  washStill: {
    figures: ['lowWinesVolume', 'lowWinesStrength', 'washVolume', 'washStrength'],
    sides: (v) => [alcoholInLowWines(v), alcoholInWash(v)],
    times: 0.9875,
    spread: 0.006,
    why: 'a wash still keeps 98 to 99.5 % of the alcohol; what condensers let go is not counted in that',
    source: 'memory',
  },
  lowWines: {
    figures: ['lowWinesStrength', 'washStrength'],
    sides: (v) => [v.lowWinesStrength, lowWinesOver(v.washStrength)],
    spread: 3,
    as: 'own',
    why: 'the curve of a still with a reflux of 0.05, run to 1 % vol; the reflux is not known, and 0 or 0.15 would move it by 3 or 6 % vol, an end at 0.5 or 2 % vol by 2',
    source: 'carey-lewis-1932',
  },
  charge: {
    figures: ['heartAlcohol', 'chargeVolume', 'chargeStrength'],
    sides: (v) => [v.heartAlcohol, alcoholInCharge(v)],
    times: 0.56,
    spread: 0.17,
    why: 'the heart is 45 to 60 % of the charge’s alcohol, up to 70 % where it is cut late, and less in a house that cuts hard; the rest is foreshots and feints, which come back',
    source: 'memory',
  },
  chargeHoldsLowWines: {
    figures: ['lowWinesVolume', 'chargeVolume'],
    sides: (v) => [v.lowWinesVolume, v.chargeVolume],
    spread: 0.005,
    only: 'ceiling',
    why: 'the spirit charge holds the low wines of its mash, and foreshots and feints besides',
    source: 'derived',
  },
  spiritStill: {
    figures: ['heartAlcohol', 'lowWinesVolume', 'lowWinesStrength'],
    sides: (v) => [v.heartAlcohol, alcoholInLowWines(v)],
    times: 0.994,
    spread: 0.004,
    why: 'in a balanced round the heart carries off 98.5 to 99.9 % of what the low wines bring',
    source: 'memory',
  },
  pureAlcohol: {
    figures: ['heartAlcohol', 'heartVolume', 'heartStrength'],
    sides: (v) => [v.heartAlcohol, (v.heartVolume * v.heartStrength) / 100],
    spread: EXACT,
    why: 'pure alcohol is volume times strength',
    source: 'directive-76-766',
  },
  cuts: {
    figures: ['heartStrength', 'heartBegins', 'heartEnds'],
    sides: (v) => [v.heartStrength, meanHeart([v.heartBegins, v.heartEnds])],
    spread: 0.5,
    as: 'own',
    why: 'the strength of the heart as a whole lies between its cuts, where the still’s curve puts it, to half a per cent',
    source: 'carey-lewis-1932',
  },
  spiritYield: {
    figures: ['spiritYield', 'heartAlcohol', 'maltPerMash'],
    sides: (v) => [v.spiritYield, (1000 * v.heartAlcohol) / v.maltPerMash],
    spread: EXACT,
    why: 'the yield is the alcohol of a mash over its malt',
    source: 'derived',
  },
  throughBothStills: {
    figures: ['heartVolume', 'heartStrength', 'washVolume', 'washStrength'],
    sides: (v) => [(v.heartVolume * v.heartStrength) / 100, alcoholInWash(v)],
    times: 0.982,
    spread: 0.007,
    only: 'told',
    why: 'no still makes alcohol',
    source: 'derived',
  },
  fromTheMalt: {
    figures: ['heartAlcohol', 'maltPerMash', 'solubleExtract', 'fermentability'],
    sides: (v) => [v.heartAlcohol, maltCouldGive(v)],
    times: 0.957,
    spread: 0.03,
    only: 'told',
    why: 'malt gives no more alcohol than its fermentable extract can',
    source: 'bringhurst-1996',
  },
  alcoholPerWeek: {
    figures: ['alcoholPerWeek', 'heartAlcohol', 'mashesPerWeek'],
    sides: (v) => [v.alcoholPerWeek, v.heartAlcohol * v.mashesPerWeek],
    spread: EXACT,
    why: 'the alcohol of a week is that of its mashes',
    source: 'derived',
  },
  alcoholPerYear: {
    figures: ['alcoholPerYear', 'heartAlcohol', 'mashesPerWeek', 'weeksPerYear'],
    sides: (v) => [v.alcoholPerYear, v.heartAlcohol * v.mashesPerWeek * v.weeksPerYear],
    spread: 0.005,
    why: 'the alcohol of a year is that of its weeks, but for the first rounds of a season, whose hearts are short, and what is left in the receivers',
    source: 'common-practice',
  },
  filling: {
    figures: ['fillingStrength', 'heartStrength'],
    sides: (v) => [v.fillingStrength, v.heartStrength],
    spread: 0.2,
    as: 'own',
    only: 'ceiling',
    why: 'water cannot strengthen spirit, so it is filled no stronger than it ran',
    source: 'derived',
  },
  casks: {
    figures: ['casksPerWeek', 'caskSize', 'fillingStrength', 'heartAlcohol', 'mashesPerWeek'],
    sides: (v) => [
      v.casksPerWeek * v.caskSize,
      (100 * v.heartAlcohol * v.mashesPerWeek) / v.fillingStrength,
    ],
    spread: 0.01,
    why: 'what is let down is what is filled; casks are filled to within 1 % of their size',
    source: 'common-practice',
  },
  casksPerYear: {
    figures: ['casksPerYear', 'casksPerWeek', 'weeksPerYear'],
    sides: (v) => [v.casksPerYear, v.casksPerWeek * v.weeksPerYear],
    spread: EXACT,
    why: 'the casks of a year are those of its weeks',
    source: 'derived',
  },
  store: {
    figures: ['casksInStore', 'casksPerYear', 'yearsInWood'],
    sides: (v) => [v.casksInStore, v.casksPerYear * v.yearsInWood],
    spread: 0.05,
    why: 'a store in which as many casks are filled as emptied holds a year’s casks for each year; few stores are steady to better than 5 %',
    source: 'common-practice',
  },
  bottles: {
    figures: ['bottlesPerCask', 'bottleSize', 'bottlingStrength', 'caskSize', 'fillingStrength', 'alcoholLoss', 'yearsInWood'],
    sides: (v) => [
      (v.bottlesPerCask * v.bottleSize * v.bottlingStrength) / 1e4,
      ((v.caskSize * v.fillingStrength) / 100) * alcoholLeft(v),
    ],
    times: 0.97,
    spread: 0.02,
    why: 'a cask’s alcohol, less its yearly loss compounded, is the alcohol in its bottles, but for the 2 % that dry wood drinks at filling and what stays in wood, pipes and filters: from nothing, where the yearly loss counts it, to 6 %',
    source: 'common-practice',
  },
  bottlesPerYear: {
    figures: ['bottlesPerYear', 'bottlesPerCask', 'casksPerYear'],
    sides: (v) => [v.bottlesPerYear, v.bottlesPerCask * v.casksPerYear],
    spread: 0.05,
    why: 'in a steady store as many casks are bottled as filled, to 5 %',
    source: 'common-practice',
  },
} as const satisfies Record<string, Relation>; // prettier-ignore

export const relationNames = Object.keys(relations) as readonly (keyof typeof relations)[];

export type UsualFigures = Partial<
  Readonly<Record<QuotableName, { value: number; spread: number; why: string; source: SourceId }>>
>;
/** What a figure usually is, with its spread: weighed only where the guide does not quote it. */
export const usualFigures: UsualFigures = Object.fromEntries(
  quotableNames.flatMap((name) => {
    const { typical, houses } = quotableFigures[name];
    return houses ? [[name, { value: typical, ...houses }]] : [];
  }),
);

const BEND = 0.3; // spreads over which a ceiling begins to bear, so that it has no corner for a search to catch on
/** What `gapOf` gives for a ceiling that is just reached. */
export const AT_CEILING = BEND * Math.LN2;
/** A gap so small that a ceiling bears on nothing. */
export const FAR_BELOW = 1e-6;

/**
 * How far a relation is from holding, in its spread: near 0 when it holds, and for a ceiling that is kept.
 * @example gapOf({ sides: () => [72, 70], spread: 2, as: 'own' }, {}) // 1 (two apart, with a spread of two)
 */
export function gapOf({ sides, times = 1, spread, as, only }: Relation, values: Values): number {
  const [left, right] = sides(values);
  const gap = (as === 'own' ? left - times * right : Math.log(left / (times * right))) / spread;
  if (only !== 'ceiling') return gap;
  return gap > 30 * BEND ? gap : BEND * Math.log1p(Math.exp(gap / BEND));
}
