// How far the round may be off when the house's figures, and the model of vapour, are only so sure: drawn at random, many times.
import { foreshotsCount } from '../distilling/foreshots.ts';
import { limitOfCharge } from '../distilling/plan.ts';
import { normalRandom } from '../numerics/random.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import type { Round } from '../distilling/round.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import type { House } from './house.ts';
import { roundOf } from './line.ts';

/** Figures of the house that a round depends on and that may carry a ±. */
export const unsureFigures = [
  'wortVolume',
  'originalGravity',
  'finalGravity',
  'washReflux',
  'washEnd',
  'spiritReflux',
  'foreshotsShare',
  'foreshotsVolume',
  'foreshotsMinutes',
  'foreshotsFlow',
  'foreshotsStrength',
  'heartEnd',
  'feintsEnd',
] as const;
/** What a plant of three distillations says besides, as a field of a ± has it. */
export const unsureOfPlant = {
  intermediateReflux: { label: 'Reflux of the intermediate still', kind: 'share', most: 0.1, step: 0.005 },
  strongFeintsEnd: { label: 'Strong feints end at', kind: 'strength', most: 8, step: 0.1 },
  runAgain: { label: 'Part of the low wines run again', kind: 'percent', most: 10, step: 0.5 },
} as const;
export type PlantFigure = keyof typeof unsureOfPlant;
export type HouseFigure = (typeof unsureFigures)[number];
export type UnsureFigure = HouseFigure | PlantFigure;

/** What a plant of a scheme has of these. */
export const unsureInPlant = {
  twice: [],
  thrice: ['intermediateReflux', 'strongFeintsEnd'],
  'part-thrice': ['intermediateReflux', 'runAgain'],
} as const satisfies Record<string, readonly PlantFigure[]>;

/** A house with what of its plant was drawn. */
export type DrawnHouse = House & Partial<Readonly<Record<PlantFigure, number>>>;
/** How the round of a drawn house is settled by a model of vapour: as two stills have it, or as its plant has. It keeps no house: the next is drawn in its place. */
export type Settle = (drawn: DrawnHouse, model?: VapourModel) => Round | Refusal;

/**
 * The figures that may carry a ± and that count as the house ends its foreshots.
 * @example unsureIn({ foreshotsBy: 'share' }).includes('foreshotsFlow') // false (a share asks for no flow)
 */
export function unsureIn({ foreshotsBy }: House): readonly HouseFigure[] {
  return unsureFigures.filter((name) => foreshotsCount(name, foreshotsBy));
}

/**
 * All that the rounds of a house, and of its plant, are drawn from, as one text: two houses with the same text have the same draws.
 * @example drawnFrom(house, {}) === drawnFrom({ ...house, yearsInWood: 20 }, {}) // true (years in wood move no round)
 */
export function drawnFrom(house: House, unsure: Uncertainties, plant?: unknown): string {
  const counts = unsureIn(house);
  return JSON.stringify([
    counts.map((name) => [house[name], unsure[name] ?? 0]),
    [house.foreshotsBy, house.airPressure, house.dilution],
    limitOfCharge(house),
    plant === undefined
      ? undefined
      : [plant, Object.keys(unsureOfPlant).map((name) => unsure[name as PlantFigure] ?? 0)],
  ]);
}

/** Standard uncertainty of each figure, in its own unit; a figure left out is exact. */
export type Uncertainties = Partial<Readonly<Record<UnsureFigure, number>>>;

/** What is looked at in each round drawn. */
export const drawnFigures = {
  heartVolume: 'Heart, L',
  heartStrength: 'Heart, % vol',
  heartAlcohol: 'Heart, L pure alcohol',
  chargeVolume: 'Spirit charge, L',
  chargeStrength: 'Spirit charge, % vol',
  feintsVolume: 'Feints, L',
} as const;
export type DrawnFigure = keyof typeof drawnFigures;

/** The rounds drawn: one list a figure, and how many draws had no answer. */
export interface Draws {
  readonly values: Readonly<Record<DrawnFigure, readonly number[]>>;
  readonly refused: number;
}

/**
 * Draws `count` houses whose unsure figures are normally spread, and settles the round of each by one model of vapour: in two
 * stills, or as `settle` has it, and then `house` holds what of its plant is drawn.
 * A draw that cannot be (a refusal, or a figure outside physics) is counted, not hidden. Same seed, same draws.
 * Source: JCGM 101:2008, clause 7, with independent normal inputs.
 * @example drawRounds(house, {}, 0, 1) // { refused: 0, values: { heartVolume: [] } } (none was drawn)
 */
export function drawRounds(
  house: DrawnHouse,
  unsure: Uncertainties,
  count: number,
  seed: number,
  model?: VapourModel,
  settle: Settle = roundOf,
): Draws {
  const normal = normalRandom(seed);
  const spread = Object.entries(unsure).filter(([, u]) => u > 0) as [UnsureFigure, number][];
  const values: Record<DrawnFigure, number[]> = {
    heartVolume: [],
    heartStrength: [],
    heartAlcohol: [],
    chargeVolume: [],
    chargeStrength: [],
    feintsVolume: [],
  };
  let refused = 0;
  const drawn: { -readonly [Name in keyof DrawnHouse]: DrawnHouse[Name] } = { ...house }; // one house, drawn again and again
  for (let i = 0; i < count; i++) {
    for (const [name, u] of spread)
      (drawn as Record<UnsureFigure, number>)[name] = house[name]! + u * normal();
    const round = isPhysical(drawn) ? settle(drawn, model) : undefined;
    if (!round || isRefusal(round)) {
      refused++;
      continue;
    }
    values.heartVolume.push(round.heart.volume);
    values.heartStrength.push(round.heart.strength);
    values.heartAlcohol.push(round.heart.alcohol);
    values.chargeVolume.push(round.charge.volume);
    values.chargeStrength.push(round.charge.strength);
    values.feintsVolume.push(round.feints.volume);
  }
  return { values, refused };
}

const isPart = (share: number) => share >= 0 && share <= 1;

/** Figures that a wide ± may have drawn outside what any wort or still can have. */
function isPhysical(house: House): boolean {
  return (
    house.wortVolume > 0 &&
    house.originalGravity < 1.15 &&
    house.finalGravity > 0.98 &&
    house.finalGravity < house.originalGravity &&
    isPart(house.washReflux) &&
    isPart(house.spiritReflux) &&
    house.foreshotsShare >= 0 &&
    house.foreshotsShare < 100 &&
    house.foreshotsVolume >= 0 &&
    house.foreshotsMinutes >= 0 &&
    house.foreshotsFlow >= 0 &&
    house.washEnd > 0.01 &&
    house.feintsEnd > 0.01 &&
    house.heartEnd < 97
  );
}

export interface Summary {
  readonly mean: number;
  /** Standard uncertainty: the standard deviation of the draws. */
  readonly standard: number;
  /** Ends of the interval that holds 95 % of the draws. */
  readonly low: number;
  readonly high: number;
}

/**
 * Mean, standard deviation and the middle 95 % of a list of draws; undefined for fewer than two.
 * @example summarise([1, 3]) // { mean: 2, standard: 1.41421, low: 1, high: 3 } (by hand, the root of two)
 */
export function summarise(values: readonly number[]): Summary | undefined {
  if (values.length < 2) return undefined;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sorted = values.toSorted((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;
  return { mean, standard: Math.sqrt(squares / (values.length - 1)), low: at(0.025), high: at(0.975) };
}

/** A summary of the same houses by two models: `standard` is all of it, `figures` and `model` what either does alone. */
export interface SpreadOfTwo extends Summary {
  readonly figures: number;
  readonly model: number;
}

/**
 * The draws of two models together, each taken to be as likely as the other. Variances add: that of the figures, within
 * a model, and that of the model, the square of half the distance between the two means. That half is about as much as
 * six published models lie apart, 12 % of the feints and 6 % of the charge.
 * Undefined for fewer than two draws of either. Source: law of total variance.
 * @example summariseTwo([1, 3], [3, 5]) // { mean: 3, figures: 1.41421, model: 1 } (half of the distance of the means, 2 and 4)
 */
export function summariseTwo(one: readonly number[], other: readonly number[]): SpreadOfTwo | undefined {
  const [a, b, both] = [summarise(one), summarise(other), summarise([...one, ...other])];
  if (!a || !b || !both) return undefined;
  return {
    ...both,
    figures: Math.sqrt((a.standard ** 2 + b.standard ** 2) / 2),
    model: Math.abs(a.mean - b.mean) / 2,
  };
}
