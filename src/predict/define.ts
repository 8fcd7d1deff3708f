// A guess before the sum: what is moved, what that does by the core’s own figures, and what the reader is to foresee.
import type { NumberName } from '../core/figures/index.ts';
import type { KindName } from '../core/kinds.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import type { SourceId } from '../core/sources.ts';
import type { Stage } from '../house/figures.ts';
import { lineIn } from '../house/line-of.ts';

export interface ForeseenAmount {
  readonly label: string;
  readonly kind: KindName;
  readonly digits?: number;
}

interface Foreseen {
  /** Never changes its meaning: guesses that were kept depend on it. */
  readonly id: string;
  readonly stage: Stage;
  /** What it is about, in a line of a phone. */
  readonly title: string;
  /** The question, without a figure of the house: those are told once the reader has opened it. */
  readonly asks: string;
  /** What is moved, from where to where in this house. */
  readonly moves: ForeseenAmount & {
    readonly from: (house: House) => number;
    readonly to: (house: House) => number;
  };
  /** What is watched, by the core. Throws a RangeError where this house cannot have it. */
  readonly gives: ForeseenAmount & { readonly of: (house: House, at: number) => number };
  /** Why it is so, in a sentence or two. */
  readonly why: string;
  readonly sources: readonly SourceId[];
}

/** Will it be more, less or the same? */
export interface Direction extends Foreseen {
  readonly way: 'direction';
  /** How more and less are said of it. */
  readonly words?: readonly [more: string, less: string];
  /** The largest change, as a part of the first value, that is called the same. */
  readonly same: number;
}
/** How much will it be, where the move ends? */
export interface HowMuch extends Foreseen {
  readonly way: 'number';
  /** True where the question needs the house's own figure at an end of the move, so that it is told. */
  readonly tells?: true;
  /** How far from the answer a guess may lie to be called near, as a part of it. */
  readonly near: number;
}
/** Where on the curve does it come about? */
export interface ForeseenPlace extends Foreseen {
  readonly way: 'place';
  /** The place, in what is moved. Throws a RangeError where this house has none. */
  readonly where: (house: House) => number;
  /** How far from it a guess may lie to be called near, as a part of the whole move. */
  readonly near: number;
}
export type Predict = Direction | HowMuch | ForeseenPlace;

/** A house with some of its figures as given. */
export const houseWithFigures = (house: House, figures: Partial<Record<NumberName, number>>): House =>
  ({ ...house, ...figures }) as House;

/** What a sum gave; what it refuses is thrown, as a house without an answer. */
export function answerOrThrow<T extends object>(result: T | Refusal): T {
  if (isRefusal(result)) throw new RangeError(result.refused);
  return result as T;
}

/** The line of a house with some of its figures moved, reckoned as the page reckons its own. */
export const lineWithFigures = (house: House, figures: Partial<Record<NumberName, number>>): Line =>
  answerOrThrow(lineIn(houseWithFigures(house, figures)));

/** The number that a sum gave; what it refuses is thrown. */
export function numberOrThrow(result: number | Refusal): number {
  if (typeof result === 'number') return result;
  throw new RangeError(result.refused);
}
