// Corns that grew, out of corns counted, and how many to count.
import { chanceOfAtLeast, exactLimits } from '../numerics/binomial.ts';
import { count, percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';

/** Corns of a hundred that a malting barley should grow; Montana State University barley programme. */
export const GERMINATION_WANTED = 95;
const NORMAL_95 = 1.96; // standard deviations that hold 95 % of a normal law; school statistics, to three figures
const DOUBT = 0.025; // left below the lower limit, of 95 % between both
const MOST_DISHES = 100;

export interface Growth {
  readonly share: Quantity<'percent'>;
  /** Exact limits at 95 %. */
  readonly low: Quantity<'percent'>;
  readonly high: Quantity<'percent'>;
  /** What the simple rule gives for half the distance between limits. */
  readonly simple: Quantity<'percent'>;
}

/**
 * Share of corns that grew, with its limits; whole counts, 1–1,000,000.
 * @example growth(count(10), count(10)) // { share: 100, low: 69.15, high: 100 } (by hand, the tenth root of 0.025)
 */
export function growth(grown: Quantity<'count'>, counted: Quantity<'count'>): Growth {
  const [low, high] = exactLimits(grown, counted);
  const share = grown / counted;
  return {
    share: percent(100 * share),
    low: percent(100 * low),
    high: percent(100 * high),
    simple: percent(100 * NORMAL_95 * Math.sqrt((share * (1 - share)) / counted)),
  };
}

export interface CountPlan {
  readonly dishes: Quantity<'count'>;
  readonly counted: Quantity<'count'>;
  /** Fewest grown corns that still put the lower limit where it is wanted. */
  readonly fewest: Quantity<'count'>;
  /** Chance that a lot as good as expected gives that many. */
  readonly chance: Quantity<'percent'>;
}

/**
 * The fewest whole dishes whose count, when it comes out as expected, shows at 95 % that the lot is no worse than
 * `lowest`. Both in %, 1–99.99; a dish holds 1–1000 corns. Refuses a limit that is not below
 * what is expected, or for which a hundred dishes are not enough.
 * @example planCount(percent(95), percent(96), count(100)) // refuses: ask for a lower limit (no count shows a lot better than it is)
 */
export function planCount(
  expected: Quantity<'percent'>,
  lowest: Quantity<'percent'>,
  dish: Quantity<'count'>,
): CountPlan | Refusal {
  within('The germination expected, %,', expected, 1, 99.99);
  within('The lower limit wanted, %,', lowest, 1, 99.99);
  within('The corns in a dish', dish, 1, 1000);
  if (lowest >= expected) {
    return refuse(
      `A lot of ${expected} % cannot be shown to be no worse than ${lowest} %; ask for a lower limit below what is expected.`,
    );
  }
  const shows = (grown: number, counted: number) => chanceOfAtLeast(grown, counted, lowest / 100) <= DOUBT;
  for (let dishes = 1; dishes <= MOST_DISHES; dishes++) {
    const counted = dishes * dish;
    const likely = Math.floor((counted * expected) / 100 + 1e-9);
    if (!shows(likely, counted)) continue;
    let fewest = likely;
    while (shows(fewest - 1, counted)) fewest--;
    return {
      dishes: count(dishes),
      counted: count(counted),
      fewest: count(fewest),
      chance: percent(100 * chanceOfAtLeast(fewest, counted, expected / 100)),
    };
  }
  return refuse(
    `Even ${MOST_DISHES} dishes of ${dish} would not show that a lot of ${expected} % is no worse than ${lowest} %; set the two further apart.`,
  );
}
