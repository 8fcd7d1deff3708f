// Figures that visitors ask for and the line does not hold: each reckoned from the line of the house.
import type { KindName } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import { fullCask, WOOD } from '../core/maturing/full-cask.ts';
import { celsius } from '../core/quantity.ts';
import { alcoholFromUsProofGallons } from '../core/spirit/proof.ts';
import { ETHANOL_DENSITY } from '../core/spirit/density.ts';
import { densityFromStrength } from '../core/spirit/strength.ts';
import { forABottle, WATER_OF_TRADE } from '../house/for-a-bottle.ts';

interface Made {
  readonly kind: KindName;
  readonly of: (line: Line) => number;
  readonly digits?: number;
}

const HARVEST = 6; // t of barley from a hectare; the middle of the 5.5–6.5 of the chapter on barley, 'common-practice'
const BRITISH_UNIT = 0.01; // L of pure alcohol; UK Chief Medical Officers’ guidelines 2016
const BEER = 5; // % vol of a usual beer; common practice
const GAS_VOLUME = 0.5458; // m³ of carbon dioxide to a kilogram at 20 °C and 101.3 kPa; ideal gas, 24.055 L/mol over 44.01 g
const DRAM = 0.025; // L; a small British bar measure, Weights and Measures (Intoxicating Liquor) Order 1988
const HOURS_IN_WEEK = 168;
export const ENERGY_OF_ALCOHOL = 7; // kcal a gram; Regulation (EU) No 1169/2011, Annex XIV
const MALT_BUSHEL = 0.01542214; // t, 34 lb of malt; custom of the American trade, from memory
const HEART_MINUTES = 165; // of the heart's run; the middle of the 2½–3 hours of the chapter on distilling, common practice
const COW = 20; // kg of wet draff that a beast eats in a day; common practice

const bottle = ({ house }: Line) => house.bottleSize / 100;
const alcoholInBottle = (line: Line) => (bottle(line) * line.bottling.strength) / 100;
const perBottle = (amount: (line: Line) => number) => (line: Line) => amount(line) / line.bottling.bottles;
const perHectare = (line: Line) => (1000 * HARVEST) / line.barley.mass;
const first = ({ casks }: Line) => casks.record[0];
const last = ({ casks }: Line) => casks.record.at(-1);

/** Each by the name that a hole gives it, behind “made.”. */
export const made = {
  bottlesPerHectare: { kind: 'count', of: (line) => line.bottling.bottles * perHectare(line) },
  alcoholPerHectare: { kind: 'alcohol', of: (line) => line.heart.alcohol * perHectare(line), digits: 0 },
  hectaresPerYear: { kind: 'land', of: (line) => line.barley.perYear / 1000 / HARVEST, digits: 0 },
  hectaresPerMash: { kind: 'land', of: (line) => line.barley.mass / 1000 / HARVEST, digits: 2 },
  squareMetresPerBottle: { kind: 'area', of: (line) => (10 * line.barley.perBottle) / HARVEST, digits: 1 },
  harvest: { kind: 'harvest', of: () => HARVEST, digits: 0 },
  maltPerBottle: { kind: 'mass', of: perBottle(({ malt }) => malt.mass), digits: 1 },
  bottlesPerTonne: { kind: 'count', of: ({ bottling, pace }) => bottling.bottles / pace.tonnesPerMash },
  bottlesPerTonneOfBarley: { kind: 'count', of: ({ bottling, barley }) => (1000 * bottling.bottles) / barley.mass }, // prettier-ignore
  washPerBottle: { kind: 'volume20', of: perBottle(({ wash }) => wash.volume), digits: 1 },
  spiritPerBottle: { kind: 'volume20', of: perBottle(({ heart }) => heart.volume), digits: 2 },
  alcoholInBottle: { kind: 'alcohol', of: alcoholInBottle, digits: 2 },
  unitsInBottle: { kind: 'count', of: (line) => alcoholInBottle(line) / BRITISH_UNIT, digits: 0 },
  unitsInDram: { kind: 'count', of: ({ bottling }) => (DRAM * bottling.strength) / 100 / BRITISH_UNIT, digits: 1 }, // prettier-ignore
  caloriesInDram: { kind: 'count', of: ({ bottling }) => DRAM * 10 * bottling.strength * ETHANOL_DENSITY * ENERGY_OF_ALCOHOL / 1000, digits: 0 }, // prettier-ignore
  caloriesInBottle: { kind: 'count', of: (line) => alcoholInBottle(line) * ETHANOL_DENSITY * ENERGY_OF_ALCOHOL, digits: 0 }, // prettier-ignore
  dramsInBottle: { kind: 'count', of: (line) => Math.floor(bottle(line) / DRAM + 1e-9) },
  carbonDioxidePerBottle: { kind: 'mass', of: perBottle(({ wash }) => wash.carbonDioxide), digits: 2 },
  carbonDioxidePerAlcohol: { kind: 'mass', of: ({ wash }) => wash.carbonDioxide / wash.alcohol, digits: 2 },
  carbonDioxideVolume: { kind: 'space', of: ({ wash }) => wash.carbonDioxide * GAS_VOLUME },
  waterOfTrade: { kind: 'volume', of: () => WATER_OF_TRADE },
  waterPerBottle: forABottle['bottle.water']!,
  alcoholForBottle: forABottle['bottle.alcohol']!,
  heartOfTonne: { kind: 'yield', of: ({ heart, pace }) => heart.alcohol / pace.tonnesPerMash, digits: 0 },
  washOverSpirit: { kind: 'count', of: ({ wash, heart }) => wash.volume / heart.volume, digits: 1 },
  washOverBeer: { kind: 'count', of: ({ wash }) => wash.strength / BEER, digits: 1 },
  beer: { kind: 'strength', of: () => BEER, digits: 0 },
  lostInWood: { kind: 'percent', of: ({ matured, filling }) => 100 * (1 - matured.alcohol / filling.alcohol), digits: 0 }, // prettier-ignore
  volumeLost: { kind: 'percent', of: ({ matured, filling }) => 100 * (1 - matured.volume / filling.volume), digits: 0 }, // prettier-ignore
  bottlesLost: {
    kind: 'count',
    of: (line) => (line.matured.alcoholLost * line.pace.mashesPerYear) / alcoholInBottle(line),
  },
  leftAfterTwenty: {
    kind: 'percent',
    of: ({ house }) => 100 * (1 - house.alcoholLoss / 100) ** 20,
    digits: 0,
  },
  lostInAll: { kind: 'percent', of: ({ house }) => 100 * (1 - (1 - house.alcoholLoss / 100) ** house.yearsInWood), digits: 0 }, // prettier-ignore
  outOfCask: { kind: 'volume20', of: ({ matured, casks }) => matured.volume / casks.perMash },
  intoCask: { kind: 'volume20', of: ({ filling, casks }) => filling.volume / casks.perMash },
  alcoholInCask: { kind: 'alcohol', of: ({ filling, casks }) => filling.alcohol / casks.perMash, digits: 0 },
  alcoholOutOfCask: {
    kind: 'alcohol',
    of: ({ matured, casks }) => matured.alcohol / casks.perMash,
    digits: 0,
  },
  firstYearStrength: { kind: 'strength', of: (line) => first(line)?.strength ?? line.filling.strength },
  lastYearStrength: { kind: 'strength', of: (line) => last(line)?.strength ?? line.matured.strength },
  strengthMoved: { kind: 'strengthDifference', of: ({ filling, matured, house }) => Math.abs(filling.strength - matured.strength) / house.yearsInWood, digits: 2 }, // prettier-ignore
  barrel: { kind: 'volume', of: () => CASK_SIZES.barrel },
  hogshead: { kind: 'volume', of: () => CASK_SIZES.hogshead },
  butt: { kind: 'volume', of: () => CASK_SIZES.butt },
  bottlesPerBarrel: { kind: 'count', of: ({ bottling, casks }) => (bottling.bottlesPerCask * CASK_SIZES.barrel) / casks.meanSize }, // prettier-ignore
  bottlesPerHogshead: { kind: 'count', of: ({ bottling, casks }) => (bottling.bottlesPerCask * CASK_SIZES.hogshead) / casks.meanSize }, // prettier-ignore
  bottlesPerButt: { kind: 'count', of: ({ bottling, casks }) => (bottling.bottlesPerCask * CASK_SIZES.butt) / casks.meanSize }, // prettier-ignore
  butts: { kind: 'percent', of: ({ house }) => 100 - house.barrels - house.hogsheads, digits: 0 },
  fullBarrel: {
    kind: 'mass',
    of: ({ filling }) => fullCask(WOOD.barrel, filling.strength, celsius(20)).total,
  },
  litreOfSpirit: {
    kind: 'mass',
    of: ({ filling }) => densityFromStrength(filling.strength, celsius(20)) / 1000,
    digits: 2,
  },
  waterShare: {
    kind: 'percent',
    of: ({ filling, heart }) => (100 * filling.water) / heart.volume,
    digits: 0,
  },
  heartShare: { kind: 'percent', of: ({ heart, charge }) => (100 * heart.volume) / charge.volume, digits: 0 },
  mashesPerDay: { kind: 'count', of: ({ house }) => house.mashesPerWeek / 7, digits: 1 },
  bottlesPerExtraMash: { kind: 'count', of: ({ bottling, house }) => bottling.bottles * house.weeksPerYear },
  concentrated: { kind: 'count', of: ({ heart, wash }) => heart.strength / wash.strength, digits: 0 },
  cows: { kind: 'count', of: ({ mash, house }) => (mash.draff * house.mashesPerWeek) / 7 / COW },
  draffShare: { kind: 'percent', of: ({ mash, malt }) => (100 * mash.draff) / malt.mass, digits: 0 },
  oneMashBottles: { kind: 'count', of: ({ bottling }) => bottling.bottles },
  boilOffPerAlcohol: { kind: 'energy', of: ({ stills, heart }) => stills.boilOff / heart.alcohol },
  yeastPerLitre: {
    kind: 'gramsPerLitre',
    of: ({ house }) => (1000 * house.yeast) / house.wortVolume,
    digits: 1,
  },
  daysFermenting: { kind: 'days', of: ({ house }) => house.fermentationHours / 24, digits: 1 },
  washbacksBusy: {
    kind: 'count',
    of: ({ house }) => (house.mashesPerWeek * house.fermentationHours) / HOURS_IN_WEEK,
    digits: 1,
  },
  caskLossYear: { kind: 'alcohol', of: ({ filling, casks, house }) => ((filling.alcohol / casks.perMash) * (1 - house.indrink / 100) * house.alcoholLoss) / 100, digits: 1 }, // prettier-ignore
  dramsInCask: { kind: 'count', of: (line) => (line.bottling.bottlesPerCask * bottle(line)) / DRAM },
  bottlesInStore: { kind: 'count', of: ({ casks, bottling }) => casks.inStore * bottling.bottlesPerCask },
  halfAlcohol: { kind: 'alcohol', of: ({ heart, pace }) => (heart.alcohol * pace.mashesPerYear) / 2, digits: 0 }, // prettier-ignore
  bottlesPerMonth: { kind: 'count', of: ({ bottling }) => bottling.bottlesPerYear / 12 },
  alcoholPerMonth: { kind: 'alcohol', of: ({ heart, pace }) => (heart.alcohol * pace.mashesPerYear) / 12, digits: 0 }, // prettier-ignore
  proofGallonsPerBushel: { kind: 'ratio', of: ({ heart, pace }) => ((heart.alcohol / pace.tonnesPerMash) * MALT_BUSHEL) / alcoholFromUsProofGallons(1), digits: 1 }, // prettier-ignore
  heartPerMinute: { kind: 'volume20', of: ({ heart }) => heart.volume / HEART_MINUTES, digits: 1 },
  minutesPerCask: {
    kind: 'count',
    of: ({ heart, casks }) => casks.meanSize / (heart.volume / HEART_MINUTES),
    digits: 0,
  },
  weightOfWash: {
    kind: 'mass',
    of: ({ wash, house }) => wash.volume * house.finalGravity * 0.9982,
    digits: 0,
  },
  fall: { kind: 'count', of: ({ house }) => 1000 * (house.originalGravity - house.finalGravity), digits: 0 },
} as const satisfies Readonly<Record<string, Made>>;

export type MadeName = keyof typeof made;
export const isMade = (name: string): name is MadeName => Object.hasOwn(made, name);
export const madeFigure = (name: MadeName): Made => made[name];
