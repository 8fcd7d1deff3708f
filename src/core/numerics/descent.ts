// The one search for a least sum of squares: steps downhill, held back harder where one would lead up.

export interface Descent {
  readonly start: readonly number[];
  readonly squaresAt: (at: readonly number[]) => number;
  /** The step from a place when it is held back by `damping`, and what is then left to gain, in the caller’s measure. */
  readonly step: (at: readonly number[], damping: number, squares: number) => { readonly move: readonly number[]; readonly left: number };
  /** The damping to begin with, and the least that holds a step back at all. */
  readonly begins: number;
  readonly least: number;
  readonly mostSteps: number;
  /** So little left counts as none, if the step was held back by no more than `held`. */
  readonly still: number;
  readonly held: number;
} // prettier-ignore

export interface Descended {
  readonly at: readonly number[];
  readonly squares: number;
  readonly left: number;
  readonly damping: number;
}

/**
 * Goes from `start` to the nearest least sum of squares. A step that does not lower the sum is not taken.
 * Source: Marquardt, Journal of the Society for Industrial and Applied Mathematics 11, 431–441 (1963), from memory.
 * @example descend({ start: [0], squaresAt: ([x]) => (x - 2) ** 2, step: ([x]) => ({ move: [2 - x], left: Math.abs(2 - x) }), begins: 0, least: 1, mostSteps: 9, still: 1e-9, held: 1 }) // { at: [2], squares: 0 } (a parabola is at its least in one step)
 */
export function descend({
  start,
  squaresAt,
  step,
  begins,
  least,
  mostSteps,
  still,
  held,
}: Descent): Descended {
  let [at, squares, damping, left] = [start, squaresAt(start), begins, Infinity];
  for (let steps = 0; steps < mostSteps && !(left < still && damping <= held); steps++) {
    const tried = step(at, damping, squares);
    const next = at.map((x, i) => x + tried.move[i]!);
    const there = squaresAt(next);
    left = tried.left;
    if (there <= squares) {
      [at, squares] = [next, there];
      damping = damping < least ? 0 : damping / 10;
    } else damping = Math.max(least, damping * 10);
  }
  return { at, squares, left, damping };
}
