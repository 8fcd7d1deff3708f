// How sure a count is: exact sums of the binomial law.
import { within } from '../range.ts';
import { bracketedRoot } from './root.ts';

const SMALL = 20; // below this a factorial is multiplied out

/** Natural logarithm of n!, for whole n from 0. Source: Stirling's series, DLMF 5.11.1. */
function logFactorial(n: number): number {
  if (n < SMALL) {
    let product = 1;
    for (let i = 2; i <= n; i++) product *= i;
    return Math.log(product);
  }
  const x = n + 1;
  const tail = 1 / 12 / x - 1 / 360 / x ** 3 + 1 / 1260 / x ** 5 - 1 / 1680 / x ** 7;
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + tail;
}

/** Chance of exactly `k` in `n`, when each has the chance `p`. */
function chanceOf(k: number, n: number, p: number): number {
  if (p === 0 || p === 1) return k === n * p ? 1 : 0;
  const ways = logFactorial(n) - logFactorial(k) - logFactorial(n - k);
  return Math.exp(ways + k * Math.log(p) + (n - k) * Math.log1p(-p));
}

/** Sum of the chances from `k` outwards to 0 or to `n`, away from the mean, until they no longer count. */
function outwards(k: number, n: number, p: number, step: 1 | -1): number {
  let chance = chanceOf(k, n, p);
  let sum = chance;
  for (let j = k; j !== (step > 0 ? n : 0) && chance > sum * 1e-17; j += step) {
    chance *= step > 0 ? ((n - j) / (j + 1)) * (p / (1 - p)) : (j / (n - j + 1)) * ((1 - p) / p);
    sum += chance;
  }
  return Math.min(1, sum);
}

/** Stops counts that are not whole, or more than there are. */
function checkCount(k: number, n: number): void {
  within('The number counted', n, 1, 1e6);
  within('The number found', k, 0, n);
  if (k % 1 !== 0 || n % 1 !== 0) throw new RangeError(`The count is ${k} of ${n}; it must be whole.`);
}

/**
 * Chance, 0–1, of `k` or more in `n`, when each has the chance `p`, 0–1. Whole n to 1,000,000.
 * @example chanceOfAtLeast(2, 2, 0.5) // 0.25 (two heads)
 */
export function chanceOfAtLeast(k: number, n: number, p: number): number {
  checkCount(k, n);
  within('The chance of one', p, 0, 1);
  if (k === 0 || p === 1) return 1;
  return k > n * p ? outwards(k, n, p, 1) : 1 - outwards(k - 1, n, p, -1);
}

/**
 * The shares, 0–1, between which the true one lies, for `k` found in `n`, with the certainty `sure` (0.5–0.999).
 * Each limit leaves half of the doubt outside. Source: Clopper and Pearson, Biometrika 26, 404–413 (1934), from memory.
 * @example exactLimits(10, 10) // [0.6915, 1] (by hand, the tenth root of 0.025)
 */
export function exactLimits(k: number, n: number, sure = 0.95): readonly [low: number, high: number] {
  checkCount(k, n);
  const doubt = (1 - within('The certainty', sure, 0.5, 0.999)) / 2;
  const low = k === 0 ? 0 : bracketedRoot((p) => chanceOfAtLeast(k, n, p) - doubt, 0, k / n, 1e-12);
  const high = k === n ? 1 : bracketedRoot((p) => 1 - chanceOfAtLeast(k + 1, n, p) - doubt, k / n, 1, 1e-12);
  return [low, high];
}
