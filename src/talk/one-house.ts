// What the quantities of a talk say together of its house, and how well each of them then goes with it as each figure.
import type { TalkFigureId } from './figures.ts';
import { spreadOf, ties, typicalOf, type Tie } from './ties.ts';

/** A quantity taken for a figure, with how likely that is. */
export interface TakenFigure {
  readonly quantity: number;
  readonly figure: TalkFigureId;
  readonly chance: number;
  /** In the figure’s own unit, its logarithm. */
  readonly log: number;
}

const size = typicalOf.length;
const STRAY = 0.01; // of quantities go with nothing
const LITTLE = 0.02; // of a chance, below which a quantity makes no house
const WIDE = 3; // and lie as wide as this, in logarithms

/** A value of a figure as its tie has it: gravities as degrees, all in logarithms; nothing for what cannot be. */
export function logOf(figure: TalkFigureId, value: number): number | undefined {
  const own = figure === 'originalGravity' ? 1000 * (value - 1) : value;
  return own > 0 ? Math.log(own) : undefined;
}

/** Adds a row to a symmetric matrix and a vector, so many times. */
function add(matrix: Float64Array, vector: Float64Array, { powers, factor, spread }: Tie, log: number, times: number): void {
  const weight = times / (spread * spread);
  for (const [i, a] of powers) {
    for (const [j, b] of powers) matrix[i * size + j]! += weight * a * b;
    vector[i]! += weight * a * (log - factor);
  }
} // prettier-ignore

const along = new Float64Array(size);
/** Takes a row out of an inverse and a vector, so many times: Sherman and Morrison’s formula. */
function without(inverse: Float64Array, vector: Float64Array, { powers, factor, spread }: Tie, log: number, times: number): void {
  const weight = times / (spread * spread);
  along.fill(0);
  let whole = 0;
  for (const [i, a] of powers) for (let k = 0; k < size; k++) along[k]! += a * inverse[i * size + k]!;
  for (const [i, a] of powers) {
    whole += a * along[i]!;
    vector[i]! -= weight * a * (log - factor);
  }
  const share = weight / Math.max(1e-9, 1 - weight * whole);
  for (let i = 0; i < size; i++) {
    if (along[i] === 0) continue;
    for (let k = 0; k < size; k++) inverse[i * size + k]! += share * along[i]! * along[k]!;
  }
} // prettier-ignore

/** The inverse of a symmetric positive matrix, by elimination; what it holds is used up. */
function inverse(matrix: Float64Array): Float64Array {
  const out = new Float64Array(size * size);
  for (let i = 0; i < size; i++) out[i * size + i] = 1;
  for (let i = 0; i < size; i++) {
    const pivot = 1 / matrix[i * size + i]!;
    for (let k = 0; k < size; k++) {
      matrix[i * size + k]! *= pivot;
      out[i * size + k]! *= pivot;
    }
    for (let j = 0; j < size; j++) {
      const times = j === i ? 0 : matrix[j * size + i]!;
      if (times === 0) continue;
      for (let k = 0; k < size; k++) {
        matrix[j * size + k]! -= times * matrix[i * size + k]!;
        out[j * size + k]! -= times * out[i * size + k]!;
      }
    }
  }
  return out;
}

const density = (apart: number, variance: number) => Math.exp((-apart * apart) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance); // prettier-ignore

/** The logarithm of how likely a value lies where it does, when it is expected at a place with a variance, or strays. */
const likelihood = (apart: number, variance: number) =>
  Math.log((1 - STRAY) * density(apart, variance) + STRAY * density(apart, WIDE * WIDE));

/** How well a value goes with a figure of any house at all. */
export function inAnyHouse(figure: TalkFigureId, log: number): number {
  const { factor, spread, powers } = ties[figure]!;
  let [mean, variance] = [factor, spread * spread];
  for (const [i, power] of powers) {
    mean += power * typicalOf[i]!;
    variance += (power * spreadOf[i]!) ** 2;
  }
  return likelihood(log - mean, variance);
}

/** How well each goes with the house that all the others make, in the order given; those of one quantity stand together. */
export function inOneHouse(taken: readonly TakenFigure[]): number[] {
  const whole = new Float64Array(size * size);
  const vector = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    whole[i * size + i] = 1 / spreadOf[i]! ** 2;
    vector[i] = typicalOf[i]! / spreadOf[i]! ** 2;
  }
  for (const { figure, chance, log } of taken) add(whole, vector, ties[figure]!, log, chance * chance);
  const common = inverse(whole.slice());
  const found: number[] = [];
  const [ownSpreads, ownSums] = [new Float64Array(size * size), new Float64Array(size)];
  for (let from = 0, to = 0; from < taken.length; from = to) {
    while (taken[to]?.quantity === taken[from]!.quantity) to++;
    const own = taken.slice(from, to);
    let [spreads, sums] = [common, vector];
    if (own.some(({ chance }) => chance > LITTLE)) {
      ownSpreads.set(common);
      ownSums.set(vector);
      [spreads, sums] = [ownSpreads, ownSums];
      for (const { figure, log, chance } of own) without(spreads, sums, ties[figure]!, log, chance * chance);
    }
    const means = Float64Array.from({ length: size }, (_, i) => {
      let mean = 0;
      for (let k = 0; k < size; k++) mean += spreads[i * size + k]! * sums[k]!;
      return mean;
    });
    for (const { figure, log } of own) {
      const { factor, spread, powers } = ties[figure]!;
      let [mean, variance] = [factor, spread * spread];
      for (const [i, a] of powers) {
        mean += a * means[i]!;
        for (const [j, b] of powers) variance += a * b * spreads[i * size + j]!;
      }
      found.push(likelihood(log - mean, variance));
    }
  }
  return found;
}
