// How the figures of one house hang together: each as a sum of what makes a house large or small, in logarithms, and how far houses stray from it.
import type { TalkFigureId } from './figures.ts';

/** What a house is by: the logarithm of each, how it lies among houses of every size, and its spread there. Common practice of the trade; the sizes of houses are wide on purpose. */
const givens = {
  malt: [3000, 1.3], // kg a mash
  mashes: [10, 0.6], // a week
  weeks: [46, 0.1], // a year
  wort: [5, 0.12], // litres from a kilogram of malt
  wash: [8, 0.12], // % vol
  lowWines: [23, 0.09], // % vol
  more: [1.42, 0.13], // charge of the spirit stills for one of low wines
  charge: [27.5, 0.07], // % vol
  heart: [69, 0.04], // % vol
  filling: [63, 0.05], // % vol
  cask: [210, 0.35], // litres
  years: [9, 0.45],
  left: [0.8, 0.12], // part of a cask's alcohol that is bottled
  bottling: [45, 0.08], // % vol
  bottle: [0.7, 0.15], // litres
  water: [4, 0.1], // litres to a kilogram
  milling: [1.5, 0.5], // hours for a mash
  washStills: [1.6, 0.6], // charges of a wash still that one mash makes
  spiritStills: [1.6, 0.6],
} as const satisfies Record<string, readonly [typical: number, spread: number]>;

type Given = keyof typeof givens;
export const givenNames = Object.keys(givens) as readonly Given[];
export const typicalOf = givenNames.map((name) => Math.log(givens[name][0]));
export const spreadOf = givenNames.map((name) => givens[name][1]);

/** A figure: a factor, how far it strays beside what it is made of, and what multiplies it or, after “/”, divides it. */
export interface Tie {
  readonly factor: number;
  readonly spread: number;
  readonly powers: readonly (readonly [given: number, power: number])[];
}
function tie(factor: number, spread: number, of: string): Tie {
  const [over, under = ''] = of.split('/');
  const powers = (side: string, power: number) =>
    side.trim() === '' ? [] : side.trim().split(' ').map((name) => [givenNames.indexOf(name as Given), power] as const); // prettier-ignore
  return { factor: Math.log(factor), spread, powers: [...powers(over!, 1), ...powers(under, -1)] };
}

const exact = 0.012; // of figures that follow from others, with their rounding
const near = 0.03;
const alcohol = 'malt wort wash'; // in the wash of a mash, in hundredths of a litre; nearly all of it is heart once the round is at rest

// Factors and spreads: what follows from a definition is exact; the rest is common practice.
export const ties: Partial<Readonly<Record<TalkFigureId, Tie>>> = {
  maltPerMash: tie(1, exact, 'malt'),
  maltPerWeek: tie(1, exact, 'malt mashes'),
  maltPerYear: tie(1, near, 'malt mashes weeks'),
  mashesPerWeek: tie(1, exact, 'mashes'),
  weeksPerYear: tie(1, exact, 'weeks'),
  mashesPerYear: tie(1, near, 'mashes weeks'),
  barley: tie(1.22, 0.05, 'malt'),
  barleyPerBottle: tie(1.25, 0.12, 'bottle bottling/wort wash left'),
  millRate: tie(0.001, near, 'malt/milling'),
  millingTime: tie(1, near, 'milling'),
  liquorRatio: tie(1, exact, 'water'),
  firstWater: tie(1, near, 'malt water'),
  wortVolume: tie(1, exact, 'malt wort'),
  washVolume: tie(1, exact, 'malt wort'),
  originalGravity: tie(1 / 0.129, 0.05, 'wash'), // degrees: about 0.129 % vol for each that is lost
  washStrength: tie(1, 0.015, 'wash'),
  washbackCapacity: tie(1.3, 0.12, 'malt wort'),
  yeastMass: tie(0.012, 0.7, 'malt'),
  yeastVolume: tie(0.02, 0.9, 'malt'),
  draff: tie(1.1, 0.15, 'malt'),
  carbonDioxide: tie(0.0076, 0.06, alcohol),
  lowWinesVolume: tie(0.98, near, `${alcohol}/lowWines`),
  lowWinesStrength: tie(1, 0.015, 'lowWines'),
  potAle: tie(0.66, 0.1, 'malt wort'),
  chargeVolume: tie(0.98, near, `${alcohol} more/lowWines`),
  chargeStrength: tie(1, 0.015, 'charge'),
  washStillCharge: tie(1, near, 'malt wort/washStills'),
  spiritStillCharge: tie(0.98, near, `${alcohol} more/lowWines spiritStills`),
  foreshotsVolume: tie(0.00035, 0.6, alcohol),
  heartVolume: tie(0.98, 0.035, `${alcohol}/heart`),
  heartStrength: tie(1, 0.01, 'heart'),
  heartBegins: tie(1.06, 0.025, 'heart'),
  heartEnds: tie(0.9, 0.035, 'heart'),
  heartAlcohol: tie(0.0098, 0.035, alcohol),
  alcoholPerWeek: tie(0.0098, 0.045, `${alcohol} mashes`),
  alcoholPerYear: tie(0.0098, 0.06, `${alcohol} mashes weeks`),
  spiritYield: tie(9.8, 0.035, 'wort wash'),
  feintsVolume: tie(0.4, 0.25, `${alcohol} more/lowWines`),
  spentLees: tie(0.42, 0.25, `${alcohol} more/lowWines`),
  fillingStrength: tie(1, 0.01, 'filling'),
  strengthOutOfWood: tie(0.94, 0.06, 'filling'),
  caskSize: tie(1, near, 'cask'),
  casksPerMash: tie(0.98, 0.07, `${alcohol}/filling cask`),
  casksPerWeek: tie(0.98, 0.07, `${alcohol} mashes/filling cask`),
  casksPerYear: tie(0.98, 0.08, `${alcohol} mashes weeks/filling cask`),
  casksInStore: tie(0.98, 0.5, `${alcohol} mashes weeks years/filling cask`),
  yearsInWood: tie(1, exact, 'years'),
  bottlingStrength: tie(1, 0.01, 'bottling'),
  bottleSize: tie(100, exact, 'bottle'),
  bottlesPerCask: tie(1, 0.06, 'cask filling left/bottling bottle'),
  bottlesPerYear: tie(0.98, 0.35, `${alcohol} mashes weeks left/bottling bottle`),
};
