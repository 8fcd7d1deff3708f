// Both sides of each relation as a sum that a person can redo.
import { formatNumber } from '../format.ts';
import { gravity } from '../quantity.ts';
import { platoFromGravity } from '../wort/extract.ts';
import type { QuotableName } from './quoted.ts';
import type { RelationName } from './distilled.ts';
import type { Values } from './relations.ts';

type Say = (figure: QuotableName) => string;
type Part = (t: Say, v: Values) => string;
type Sum = (t: Say, v: Values) => readonly [left: string, right: string];

const times =
  (...figures: readonly QuotableName[]) =>
  (t: Say) =>
    figures.map((figure) => t(figure)).join(' × ');
const both =
  (left: Part, right: Part): Sum =>
  (t, v) => [left(t, v), right(t, v)];
/** A side that is one figure, with no sum to it. */
const alone: Part = () => '';
const heart = times('heartVolume', 'heartStrength');
const wash = times('washVolume', 'washStrength');
const lowWines = times('lowWinesVolume', 'lowWinesStrength');
const charge = times('chargeVolume', 'chargeStrength');
const inMalt = times('maltPerMash', 'solubleExtract');
const inWort: Part = (t, v) =>
  `${t('wortVolume')} × ${t('originalGravity')} × 0.998 kg/L × ${formatNumber(platoFromGravity(gravity(Math.min(1.149, Math.max(0.99, v.originalGravity)))), 2)} °Plato`;
const letDown: Part = (t) => `${t('heartAlcohol')} × ${t('mashesPerWeek')} mashes ÷ ${t('fillingStrength')}`;

/** What stands on either side; the left and the right result follow. */
export const sums = {
  maltPerWeek: both(alone, times('maltPerMash', 'mashesPerWeek')),
  maltPerYear: both(alone, times('maltPerMash', 'mashesPerWeek', 'weeksPerYear')),
  mash: both(inWort, inMalt),
  extract: both(inWort, inMalt),
  fermentable: both(wash, (t, v) => `${inWort(t, v)} × ${t('fermentability')} × 0.606 L/kg`),
  balling: both(alone, (t) => `Balling’s relation of ${t('originalGravity')} and ${t('finalGravity')}, less 2 %`),
  washVolume: both(alone, (t) => `${t('wortVolume')} of wort, less its gas`),
  washStill: both(lowWines, wash),
  lowWines: both(alone, (t) => `the still’s curve over ${t('washStrength')}`),
  charge: both(alone, charge),
  chargeOfThree: both(alone, charge),
  chargeOfPart: both(alone, charge),
  chargeHoldsLowWines: both(alone, alone),
  chargeHoldsWhatComes: both((t) => `${t('lowWinesVolume')} of low wines, less what the lees of those run again take`, alone),
  strongFeints: both(alone, (t) => `low wines of ${t('lowWinesStrength')} along the still’s curve`),
  spiritStill: both(alone, lowWines),
  pureAlcohol: both(alone, heart),
  cuts: both(alone, (t) => `the still’s curve from ${t('heartBegins')} to ${t('heartEnds')}`),
  spiritYield: both(alone, (t) => `${t('heartAlcohol')} ÷ ${t('maltPerMash')} × 1,000`),
  throughBothStills: both(heart, wash),
  fromTheMalt: both(alone, (t) => `${inMalt(t)} × ${t('fermentability')} × 0.606 L/kg`),
  alcoholPerWeek: both(alone, times('heartAlcohol', 'mashesPerWeek')),
  alcoholPerYear: both(alone, times('heartAlcohol', 'mashesPerWeek', 'weeksPerYear')),
  filling: both(alone, alone),
  casks: both(times('casksPerWeek', 'caskSize'), letDown),
  casksPerYear: both(alone, times('casksPerWeek', 'weeksPerYear')),
  store: both(alone, times('casksPerYear', 'yearsInWood')),
  bottles: both(
    times('bottlesPerCask', 'bottleSize', 'bottlingStrength'),
    (t, v) => `${t('caskSize')} × ${t('fillingStrength')} × ${formatNumber(1 - v.alcoholLoss / 100, 3)} for each of ${t('yearsInWood')}, less 3 %`,
  ),
  bottlesPerYear: both(alone, times('bottlesPerCask', 'casksPerYear')),
} as const satisfies Record<RelationName, Sum>; // prettier-ignore
