// How likely a sum of squares is by chance alone: the chi-square law, and the normal limit that goes with it.
import { within } from '../range.ts';
import { bracketedRoot } from './root.ts';

const STEPS = 500; // terms of either expansion; far more than 200 degrees of freedom need
const SMALL = 1e-16; // a term that no longer counts

/** Natural logarithm of the gamma function, for x above 0. Source: Stirling's series, DLMF 5.11.1, after DLMF 5.5.1. */
function logGamma(x: number): number {
  if (x < 12) return logGamma(x + 1) - Math.log(x);
  const tail = 1 / 12 / x - 1 / 360 / x ** 3 + 1 / 1260 / x ** 5 - 1 / 1680 / x ** 7;
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + tail;
}

/** Lower part of the incomplete gamma function over the whole, by its series; DLMF 8.11.4. */
function lowerPart(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < STEPS && term > sum * SMALL; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum * Math.exp(a * Math.log(x) - x - logGamma(a));
}

/** Upper part, by its continued fraction; DLMF 8.9.2, evaluated forwards as Lentz does. */
function upperPart(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < STEPS; n++) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / (numerator * d + b || tiny);
    c = b + numerator / c || tiny;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < SMALL * 10) break;
  }
  return fraction * Math.exp(a * Math.log(x) - x - logGamma(a));
}

/**
 * Chance, 0–1, that a sum of squares with so many degrees of freedom (1–200) is above `sum` (0–1e6) when all is well.
 * @example chanceAbove(3.841, 1) // 0.050 (any printed table of the law)
 * @example chanceAbove(2, 2) // 0.36788 (by hand, e to the −1)
 */
export function chanceAbove(sum: number, freedom: number): number {
  within('The sum of squares', sum, 0, 1e12);
  within('The degrees of freedom', freedom, 1, 200);
  const [a, x] = [freedom / 2, sum / 2];
  if (x === 0) return 1;
  return x < a + 1 ? 1 - lowerPart(a, x) : upperPart(a, x);
}

/**
 * The distance from the mean, in standard deviations, that a normal figure exceeds either way with the chance `doubt` (1e-12–0.99).
 * @example normalLimit(0.05) // 1.9600 (any printed table of the law)
 */
export function normalLimit(doubt: number): number {
  within('The chance', doubt, 1e-12, 0.99);
  return bracketedRoot((z) => chanceAbove(z * z, 1) - doubt, 0, 8, 1e-12);
}
