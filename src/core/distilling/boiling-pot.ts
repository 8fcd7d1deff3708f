// What boils off a pot all over its range at one pressure: the part of a still that hangs neither on its reflux nor on its charge.
import { remember } from '../numerics/remember.ts';
import { moleFraction, type Quantity } from '../quantity.ts';
import { vapourOver, vapoursOver, type VapourModel } from '../vapour/equilibrium.ts';
import { follow, followedAt, POTS, POT_RANGE, type Followed } from './pot-panels.ts';

/** How many times as much of a vapour is ethanol as of the pot: at `POTS`, and followed between them. */
export interface Enrichment {
  readonly values: readonly number[];
  readonly followed: Followed;
}

export interface BoilingPot {
  /** Of the vapour over the pot. */
  readonly first: Enrichment;
  /** Of the vapour over that vapour, condensed. */
  readonly second: Enrichment;
  /** Boiling point, °C; followed when first asked for, as most runs never are. */
  temperature(): Followed;
}

const enrichment = (vapour: number[]): Enrichment => {
  const values = vapour.map((y, i) => y / POTS[i]!);
  return { values, followed: follow(values) };
};

function boil({
  pressure,
  model,
}: {
  readonly pressure: Quantity<'pressure'>;
  readonly model?: VapourModel;
}): BoilingPot {
  const { vapour, temperature } = vapoursOver(POTS, pressure, model);
  const first = enrichment(vapour);
  // Condensed, the vapour is a pot of the same range: its own vapour is read off and not solved again, but where it is too strong.
  const again = vapour.map((y) =>
    y > POT_RANGE.strongest
      ? vapourOver(moleFraction(y), pressure, model).vapour
      : y * followedAt(first.followed, y),
  );
  let temperatures: Followed | undefined;
  return { first, second: enrichment(again), temperature: () => (temperatures ??= follow(temperature)) };
}

/**
 * What boils off a pot at a pressure, by a model: solved once and remembered for the last few.
 * @example boilingPot({ pressure: kilopascals(101.325) }).first.values.every((times) => times > 1) // true (below the azeotrope the vapour is the stronger)
 */
export const boilingPot = remember(boil, 4, (a, b) => a.pressure === b.pressure && a.model === b.model);
