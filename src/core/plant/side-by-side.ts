// Stills side by side on the same liquid, each with its own reflux: what they give together.
import { bracketedRoot } from '../numerics/root.ts';
import { quantity, share, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { minus, plus, type Amounts } from '../spirit/amounts.ts';
import { potAmounts, refuseRun } from '../distilling/run.ts';
import { stillCurve, type StillCurve, type StillSetting } from '../distilling/still.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import type { Stills } from './plant.ts';

export const NO_AMOUNTS: Amounts = { ethanol: 0, water: 0 };

/**
 * So many times an amount.
 * @example scaledAmounts(2, { ethanol: 1, water: 3 }) // { ethanol: 2, water: 6 } (twice each)
 */
export const scaledAmounts = (by: number, { ethanol, water }: Amounts): Amounts => ({
  ethanol: by * ethanol,
  water: by * water,
});
/** @example sumOfAmounts([{ ethanol: 1, water: 3 }, { ethanol: 2, water: 4 }]) // { ethanol: 3, water: 7 } (1 + 2 and 3 + 4) */
export const sumOfAmounts = (amounts: readonly Amounts[]): Amounts => amounts.reduce(plus, NO_AMOUNTS);

/** Stills of one reflux, and their part of the liquid, 0–1. */
export interface StillSide {
  readonly part: number;
  readonly setting: StillSetting;
}

/**
 * The part of the liquid that each group takes: the liquid divides by what the stills hold.
 * @example partsOfGroups([{ number: 1, charge: 3000 }, { number: 2, charge: 500 }]) // [0.75, 0.25] (3000 and 1000 of 4000)
 */
export function partsOfGroups(stills: readonly Stills[]): readonly number[] {
  const all = stills.reduce((sum, { number, charge }) => sum + number * charge, 0);
  return stills.map(({ number, charge }) => (number * charge) / all);
}

/**
 * Groups of stills as sides; groups of one reflux are one side.
 * @example sidesOf([{ number: 1, charge: 3000, reflux: 0.1 }, { number: 1, charge: 1000, reflux: 0.1 }], kilopascals(101.325)) // [{ part: 1 }] (stills of one reflux are one side)
 */
export function sidesOf(
  stills: readonly Stills[],
  pressure: Quantity<'pressure'>,
  model?: VapourModel,
): readonly StillSide[] {
  const parts = partsOfGroups(stills);
  return [...new Set(stills.map(({ reflux }) => reflux))].map((reflux) => ({
    part: parts.reduce((sum, part, i) => (stills[i]!.reflux === reflux ? sum + part : sum), 0),
    setting: { reflux: share(reflux), pressure, ...(model && { model }) },
  }));
}

/**
 * Everything that comes over until the distillate is down to `until`, % vol, and what stays in the pots.
 * @example runSides({ ethanol: 0, water: 1 }, [{ part: 1, setting: { reflux: share(0), pressure: kilopascals(101.325) } }], strength(1)) // refuses: no alcohol worth distilling (it is water)
 */
export function runSides(
  charge: Amounts,
  sides: readonly StillSide[],
  until: Quantity<'strength'>,
): { readonly distillate: Amounts; readonly residue: Amounts } | Refusal {
  const left: Amounts[] = [];
  for (const { part, setting } of sides) {
    const end = stillCurve(setting).potAt(until);
    const reason = refuseRun(charge, setting, until, end);
    if (reason !== undefined) return refuse(reason);
    left.push(potAmounts(scaledAmounts(part, charge), setting, end!));
  }
  const residue = sumOfAmounts(left);
  return { distillate: minus(charge, residue), residue };
}

/** Strengths at the safe, % vol, between the parts of a run, and the share of the alcohol or the strength that ends its foreshots. */
export interface RunEnds {
  readonly foreshots: { readonly share: number } | { readonly strength: Quantity<'strength'> };
  readonly heart: Quantity<'strength'>;
  /** Above it feints are strong and go back to this still; below it they are weak. */
  readonly strong: Quantity<'strength'>;
  readonly weak: Quantity<'strength'>;
}

/** A side with the mole fractions in its pot at which the parts of a run end. */
export interface CutSide extends StillSide {
  readonly curve: StillCurve;
  readonly heart: number;
  readonly strong: number;
  readonly weak: number;
}

export interface ChargeGives {
  readonly foreshots: Amounts;
  readonly heart: Amounts;
  readonly strong: Amounts;
  readonly weak: Amounts;
  readonly residue: Amounts;
}

/**
 * Looks up the ends of a run in every side. Refuses ends that are out of order or that a still never shows.
 * @example cutSides([], { foreshots: { share: 0 }, heart: strength(60), strong: strength(30), weak: strength(65) }) // refuses: must end below the heart (65 is above 60)
 */
export function cutSides(sides: readonly StillSide[], ends: RunEnds): readonly CutSide[] | Refusal {
  const { heart, strong, weak } = ends;
  if (weak >= heart)
    return refuse(`The feints must end below the heart: ${weak} % vol is not below ${heart} % vol.`);
  const cut: CutSide[] = [];
  for (const side of sides) {
    const curve = stillCurve(side.setting);
    const [atHeart, atStrong, atWeak] = [heart, Math.min(strong, heart), Math.max(weak, 0)].map((end) =>
      curve.potAt(quantity('strength', end)),
    );
    if (atHeart === undefined) return refuse(`No charge gives spirit of ${heart} % vol in this still.`);
    if (atWeak === undefined) return refuse(`The run cannot be followed down to ${weak} % vol.`);
    cut.push({ ...side, curve, heart: atHeart, strong: Math.max(atStrong ?? atWeak, atWeak), weak: atWeak });
  }
  return cut;
}

/** Mole fraction in the pot where the foreshots of a charge at `x` end: no lower than where the heart does. */
function heartStart(x: number, { curve, heart }: CutSide, foreshots: RunEnds['foreshots']): number {
  if (x <= heart) return x;
  if ('strength' in foreshots) {
    const cut = curve.potAt(foreshots.strength);
    return cut === undefined ? x : Math.min(x, Math.max(heart, cut));
  }
  return foreshots.share === 0 ? x : afterShare(x, foreshots.share, curve, heart);
}

const NEWTON = 5; // steps; three are usual, as a share is small
const EXACT = 1e-14; // of the mole fraction

/** Mole fraction in the pot once a share of the alcohol has come over, or `lowest`: Newton's steps along Rayleigh's law, else a search. */
function afterShare(x: number, share: number, { left, over }: StillCurve, lowest: number): number {
  const miss = (to: number) => left(x, to) * to - (1 - share) * x;
  if (miss(lowest) >= 0) return lowest;
  let to = ((1 - share) * x) / (1 - (share * x) / over(x).vapour); // as if the vapour kept its strength
  for (let step = 0; step < NEWTON && to > lowest && to < x; step++) {
    const { vapour } = over(to);
    const by = (Math.log((left(x, to) * to) / ((1 - share) * x)) * to * (vapour - to)) / vapour;
    to -= by;
    if (Math.abs(by) <= EXACT * to) return to;
  }
  return bracketedRoot(miss, lowest, x);
}

/** What one mole of liquid at mole fraction `x` gives on one side, divided where the run is cut; no heart where it is too weak. */
function partsOfMole(x: number, side: CutSide, foreshots: RunEnds['foreshots']): ChargeGives {
  const begins = heartStart(x, side, foreshots);
  const pots: Amounts[] = [{ ethanol: x, water: 1 - x }];
  let [at, moles] = [x, 1];
  for (const end of [begins, side.heart, side.strong, side.weak]) {
    if (end < at) [at, moles] = [end, moles * side.curve.left(at, end)];
    pots.push({ ethanol: moles * at, water: moles * (1 - at) });
  }
  const over = (i: number) => minus(pots[i]!, pots[i + 1]!);
  return { foreshots: over(0), heart: over(1), strong: over(2), weak: over(3), residue: pots[4]! };
}

/**
 * What one mole of liquid at mole fraction `x` gives on all sides together.
 * @example partsOfAll(0.1, [], { share: 0 }).heart // { ethanol: 0, water: 0 } (no still, no spirit)
 */
export function partsOfAll(
  x: number,
  sides: readonly CutSide[],
  foreshots: RunEnds['foreshots'],
): ChargeGives {
  const each = sides.map((side) => ({ part: side.part, given: partsOfMole(x, side, foreshots) }));
  const sum = (of: keyof ChargeGives) =>
    sumOfAmounts(each.map(({ part, given }) => scaledAmounts(part, given[of])));
  return {
    foreshots: sum('foreshots'),
    heart: sum('heart'),
    strong: sum('strong'),
    weak: sum('weak'),
    residue: sum('residue'),
  };
}

/**
 * So many times all that is given.
 * @example scaledCharge(2, { foreshots: { ethanol: 0, water: 0 }, heart: { ethanol: 1, water: 1 }, strong: { ethanol: 0, water: 0 }, weak: { ethanol: 0, water: 0 }, residue: { ethanol: 0, water: 0 } }).heart // { ethanol: 2, water: 2 } (twice)
 */
export const scaledCharge = (by: number, given: ChargeGives): ChargeGives => ({
  foreshots: scaledAmounts(by, given.foreshots),
  heart: scaledAmounts(by, given.heart),
  strong: scaledAmounts(by, given.strong),
  weak: scaledAmounts(by, given.weak),
  residue: scaledAmounts(by, given.residue),
});
