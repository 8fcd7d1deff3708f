// How far the round may be off when the house's figures are only so sure: drawn at random, many times.
import { normalRandom } from '../numerics/random.ts';
import type { House } from './house.ts';
import { roundOf } from './line.ts';

/** Figures of the house that a round depends on and that may carry a ±. */
export const unsureFigures = [
  'wortVolume',
  'originalGravity',
  'finalGravity',
  'washEnd',
  'spiritReflux',
  'foreshotsShare',
  'foreshotsStrength',
  'heartEnd',
  'feintsEnd',
] as const;
export type UnsureFigure = (typeof unsureFigures)[number];

/** Standard uncertainty of each figure, in its own unit; a figure left out is exact. */
export type Unsure = Partial<Readonly<Record<UnsureFigure, number>>>;

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
 * Draws `count` houses whose unsure figures are normally spread, and settles the round of each.
 * A draw that cannot be (a refusal, or a figure outside physics) is counted, not hidden. Same seed, same draws.
 * Source: JCGM 101:2008, clause 7, with independent normal inputs.
 */
export function drawRounds(house: House, unsure: Unsure, count: number, seed: number): Draws {
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
  for (let i = 0; i < count; i++) {
    const drawn = {
      ...house,
      ...Object.fromEntries(spread.map(([name, u]) => [name, house[name] + u * normal()])),
    };
    const round = isPhysical(drawn) ? roundOf(drawn) : undefined;
    if (!round || 'refused' in round) {
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

/** Figures that a wide ± may have drawn outside what any wort or still can have. */
function isPhysical(house: House): boolean {
  return (
    house.wortVolume > 0 &&
    house.originalGravity < 1.15 &&
    house.finalGravity > 0.98 &&
    house.finalGravity < house.originalGravity &&
    house.spiritReflux >= 0 &&
    house.spiritReflux <= 1 &&
    house.foreshotsShare >= 0 &&
    house.foreshotsShare < 100 &&
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

/** Mean, standard deviation and the middle 95 % of a list of draws; undefined for fewer than two. */
export function summarise(values: readonly number[]): Summary | undefined {
  if (values.length < 2) return undefined;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sorted = values.toSorted((a, b) => a - b);
  const at = (part: number) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;
  return { mean, standard: Math.sqrt(squares / (values.length - 1)), low: at(0.025), high: at(0.975) };
}
