// Rounds that come back unchanged: a spirit still that takes its strong feints back, and an intermediate still before it.
import { remember } from '../numerics/remember.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { minus, plus, type Amounts } from '../spirit/amounts.ts';
import { neverSettles, STRONGEST_CHARGE } from '../distilling/round.ts';
import { POT_RANGE } from '../distilling/still.ts';
import {
  cutSides,
  NO_AMOUNTS,
  partsOfAll,
  scaledAmounts,
  scaledCharge,
  type CutSide,
  type RunEnds,
  type ChargeGives,
  type StillSide,
} from './side-by-side.ts';

/** A charge in kilomoles and what it gives. */
export interface SettledCharge extends ChargeGives {
  readonly charge: Amounts;
  /** Water put into the charge to bring its strength down, kmol. */
  readonly added: number;
}

/** How much more ethanol `leaves` holds than the ratio of `comes` allows; nothing when both are of one strength. */
const surplus = (leaves: Amounts, comes: Amounts) =>
  leaves.ethanol * comes.water - leaves.water * comes.ethanol;

/**
 * The charge, in kilomoles, of spirit stills into which `comes` and the charge's own foreshots and strong feints go, when every
 * charge is like the last. What leaves for good, heart, weak feints and lees, then holds ethanol and water as what comes does.
 * One unknown, the mole fraction of the charge, at most `strongest`; above `limit` it is let down with water.
 */
function settleSpirit(
  comes: Amounts,
  sides: readonly CutSide[],
  ends: RunEnds,
  limit: number,
  near: Near,
  strongest = STRONGEST_CHARGE,
): SettledCharge | undefined {
  const at = (x: number) => partsOfAll(x, sides, ends.foreshots);
  const leavesFor = ({ heart, weak, residue }: ChargeGives) => plus(plus(heart, weak), residue);
  const over = (x: number) => surplus(leavesFor(at(x)), comes);
  const least = Math.min(...sides.map(({ heart }) => heart));
  const natural =
    over(least) > 0
      ? undefined
      : (closeIn(over, around(near.spirit, least, strongest)) ??
        closeIn(over, [least, strongest]) ??
        closeIn(over, [least, ...spaced(least, strongest)]));
  near.spirit = after(near.spirit, natural);
  const x = Math.min(natural ?? Infinity, limit);
  if (x === Infinity) return undefined;
  const given = at(x);
  if (!(given.heart.ethanol > 0)) return undefined;
  const leaves = leavesFor(given);
  const moles = comes.ethanol / leaves.ethanol;
  const added = x === natural ? 0 : Math.max(0, moles * leaves.water - comes.water);
  return { charge: scaledAmounts(moles, { ethanol: x, water: 1 - x }), added, ...scaledCharge(moles, given) };
}

/** The last charges that settled: the search for the next ones begins there, and ends the same without. */
export interface Near {
  intermediate?: Last | undefined;
  spirit?: Last | undefined;
}
/** A mole fraction, and the part of it by which it differed from the one before. */
interface Last {
  readonly x: number;
  readonly by: number;
}

/**
 * The balanced spirit charge of stills that are not alike; `limit` is a mole fraction. Refuses a round that never settles.
 * @example settleTogether({ ethanol: 1, water: 9 }, [], { foreshots: { share: 0 }, heart: strength(60), strong: strength(30), weak: strength(65) }, Infinity) // refuses: must end below the heart (65 is above 60)
 */
export function settleTogether(
  comes: Amounts,
  sides: readonly StillSide[],
  ends: RunEnds,
  limit: number,
  near: Near = {},
): SettledCharge | Refusal {
  const cut = cutSides(sides, ends);
  if (isRefusal(cut)) return cut;
  return settleSpirit(comes, cut, ends, limit, near) ?? neverSettles(ends.heart);
}

export interface Thrice {
  /** The intermediate stills: strong feints go on to the spirit stills, weak ones back. They have neither foreshots nor heart. */
  readonly intermediate: SettledCharge;
  readonly spirit: SettledCharge;
}

const NEAR = 0.8; // of the low wines' mole fraction: the usual charge of an intermediate still is within so much of it
const LOOKS = 12; // charges that are looked at where it is not
const LAST_TWO = 2; // rounds that are kept: the one that settles is the last looked at, or the one before
const NO_FORESHOTS = { share: 0 } as const;

/**
 * Low wines distilled twice more. The intermediate stills take the low wines and all weak feints, and give strong feints, which
 * go on, and weak ones, which come back. The spirit stills take the strong feints with their own foreshots and strong feints;
 * their weak feints go back to the intermediate stills. Heart and both lees leave, and hold what the low wines brought.
 * Refuses a plan that has no such round.
 * @example settleThrice({ ethanol: 1, water: 9 }, [], [], { foreshots: { share: 0 }, heart: strength(80), strong: strength(1), weak: strength(20) }) // refuses: strong feints must end above the weak ones (1 is below 20)
 */
export function settleThrice(
  lowWines: Amounts,
  before: readonly StillSide[],
  last: readonly StillSide[],
  ends: RunEnds,
  near: Near = {},
): Thrice | Refusal {
  if (ends.strong <= ends.weak)
    return refuse(
      `The strong feints must end above the weak ones: ${ends.strong} % vol is not above ${ends.weak} % vol.`,
    );
  const spirit = cutSides(last, ends);
  if (isRefusal(spirit)) return spirit;
  const cut = cutSides(before, { ...ends, heart: ends.strong });
  if (isRefusal(cut)) return cut;

  /** The round of one mole in the intermediate stills at mole fraction `x`, and the low wines that it asks for. */
  const roundAt = remember((x: number) => {
    const { heart: strong, ...rest } = partsOfAll(x, cut, NO_FORESHOTS);
    const next = settleSpirit(strong, spirit, ends, Infinity, near, POT_RANGE.strongest);
    if (!next) return undefined;
    const asks = minus({ ethanol: x, water: 1 - x }, plus(rest.weak, next.weak));
    return { intermediate: { ...rest, heart: NO_AMOUNTS, strong }, next, asks };
  }, LAST_TWO);
  const over = (x: number) => {
    const round = roundAt(x);
    return round && surplus(round.asks, lowWines);
  };
  const usual = lowWines.ethanol / (lowWines.ethanol + lowWines.water);
  const least = Math.min(...cut.map(({ heart }) => heart));
  const x =
    closeIn(over, around(near.intermediate, least, STRONGEST_CHARGE)) ??
    closeIn(over, [NEAR * usual, usual / NEAR]) ??
    closeIn(over, spaced(least, STRONGEST_CHARGE));
  near.intermediate = after(near.intermediate, x);
  const round = x === undefined ? undefined : roundAt(x);
  if (!round || !(round.asks.ethanol > 0))
    return refuse(
      `Three distillations find no balance with these cuts: the heart, taken down to ${ends.heart} % vol, and the lees do not carry off what the low wines bring. Let the foreshots end sooner, at a higher strength, or the strong feints at another strength than ${ends.strong} % vol.`,
    );
  const moles = lowWines.ethanol / round.asks.ethanol;
  return {
    intermediate: {
      charge: scaledAmounts(moles, { ethanol: x!, water: 1 - x! }),
      added: 0,
      ...scaledCharge(moles, round.intermediate),
    },
    spirit: { charge: scaledAmounts(moles, round.next.charge), added: 0, ...scaledCharge(moles, round.next) },
  };
}

const FIRST = 0.01; // of a mole fraction: how far from it the second charge is looked for
const [TIMES, LEAST] = [2, 1e-10]; // of what the last charge differed by, and of a mole fraction: how far the next ones are

const after = (last: Last | undefined, x: number | undefined): Last | undefined =>
  x === undefined ? undefined : { x, by: last ? Math.abs(x / last.x - 1) : FIRST };

/** Two looks around a charge that settled before, within what can be; none where there is no such charge. */
function around(last: Last | undefined, low: number, high: number): readonly number[] {
  if (!last) return [];
  const by = Math.max(TIMES * last.by, LEAST);
  return [Math.max(low, last.x * (1 - by)), Math.min(high, last.x * (1 + by))];
}

/** Numbers from `low` to `high`, each the same times the one before; `low` left out. */
const spaced = (low: number, high: number) =>
  Array.from({ length: LOOKS }, (_, i) => low * (high / low) ** ((i + 1) / LOOKS));

/** Where a function that has no value everywhere crosses zero: the first crossing among some looks, or undefined. */
function closeIn(f: (x: number) => number | undefined, looks: readonly number[]): number | undefined {
  const values = looks.map((x) => ({ x, value: f(x) }));
  for (const [i, next] of values.entries()) {
    const last = values[i - 1];
    if (!last || (last.value === undefined && next.value === undefined)) continue;
    // Where only one end has a value, the other end is brought up to where the values begin or stop.
    const [a, b] = last.value === undefined ? [edge(f, next, last.x), next] : [last, next.value === undefined ? edge(f, last, next.x) : next];
    const known = new Map([a, b].map((each) => [each.x, each.value]));
    if (a.value! > 0 !== b.value! > 0) return bracketedRoot((at) => known.get(at) ?? f(at) ?? NaN, a.x, b.x);
  }
  return undefined;
} // prettier-ignore

interface Look {
  readonly x: number;
  readonly value: number | undefined;
}
const HALVINGS = 40; // down to rounding

/** The last point with a value on the way from one that has one to `none`, which has not. */
function edge(f: (x: number) => number | undefined, from: Look, none: number): Look {
  let [here, beyond] = [from, none];
  for (let i = 0; i < HALVINGS; i++) {
    const x = (here.x + beyond) / 2;
    const value = f(x);
    if (value === undefined) beyond = x;
    else here = { x, value };
  }
  return here;
}
