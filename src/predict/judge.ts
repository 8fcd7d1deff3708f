// What comes of a move in a house, and how a guess stands beside it.
import type { House } from '../core/line/house.ts';
import type { Direction, Predict } from './define.ts';

export const directions = ['more', 'less', 'same'] as const;
export type GuessDirection = (typeof directions)[number];

/** A guess: a direction, or a number in the unit of what is asked. */
export type Guess = GuessDirection | number;

export interface GuessOutcome {
  readonly from: number;
  readonly to: number;
  /** What is watched, before the move and after it. */
  readonly before: number;
  readonly after: number;
  /** What the right guess would have been. */
  readonly answer: Guess;
}

function directionOf({ same }: Direction, before: number, after: number): GuessDirection {
  if (Math.abs(after - before) <= same * Math.abs(before)) return 'same';
  return after > before ? 'more' : 'less';
}

/** What comes of the move in a house; undefined where that house has no answer. */
export function outcomeOf(predict: Predict, house: House): GuessOutcome | undefined {
  try {
    const [from, to] = [predict.moves.from(house), predict.moves.to(house)];
    const [before, after] = [predict.gives.of(house, from), predict.gives.of(house, to)];
    const answer =
      predict.way === 'direction'
        ? directionOf(predict, before, after)
        : predict.way === 'number'
          ? after
          : predict.where(house);
    const numbers = [from, to, before, after, ...(typeof answer === 'number' ? [answer] : [])];
    return numbers.every(Number.isFinite) ? { from, to, before, after, answer } : undefined;
  } catch (problem) {
    if (problem instanceof RangeError) return undefined;
    throw problem;
  }
}

/** How a guess stands beside what came: right or near, or not. */
export function isRight(predict: Predict, { from, to, answer }: GuessOutcome, guess: Guess): boolean {
  if (predict.way === 'direction' || typeof guess !== 'number' || typeof answer !== 'number')
    return guess === answer;
  const room =
    predict.way === 'number' ? predict.near * Math.abs(answer) : predict.near * Math.abs(to - from);
  return Math.abs(guess - answer) <= room;
}

/** The way of the move as a curve: so many points of it, without those that this house cannot have. */
export function curveOf(predict: Predict, house: House, { from, to }: GuessOutcome, points = 24) {
  const curve: (readonly [at: number, value: number])[] = [];
  for (let i = 0; i <= points; i++) {
    const at = from + ((to - from) * i) / points;
    try {
      const value = predict.gives.of(house, at);
      if (Number.isFinite(value)) curve.push([at, value]);
    } catch (problem) {
      if (!(problem instanceof RangeError)) throw problem;
    }
  }
  return curve;
}
