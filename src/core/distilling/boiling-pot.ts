// What boils off a pot all over its range at one pressure: the part of a still that hangs neither on its reflux nor on its charge.
import { remember } from '../numerics/remember.ts';
import { logit } from '../numerics/logit.ts';
import { moleFraction, type Quantity } from '../quantity.ts';
import { vapourOver, vapoursOver, type VapourModel } from '../vapour/equilibrium.ts';
import { follow, followedAt, POTS, POT_RANGE, type Followed } from './pot-panels.ts';

/** Something that hangs on the pot: its values at `POTS`, and followed between them. */
export interface OverPot {
  readonly values: Float64Array;
  readonly followed: Followed;
}

export interface BoilingPot {
  /** Mole fraction of the vapour over the pot. */
  readonly first: OverPot;
  /** Mole fraction of the vapour over that vapour, condensed. */
  readonly second: OverPot;
  /** Boiling point, °C; followed when first asked for, as most runs never are. */
  temperature(): Followed;
}

function boil({
  pressure,
  model,
}: {
  readonly pressure: Quantity<'pressure'>;
  readonly model?: VapourModel;
}): BoilingPot {
  const { vapour, temperature } = vapoursOver(POTS, pressure, model);
  const followed = follow(vapour);
  // Condensed, the vapour is a pot of the same range: its own vapour is read off and not solved again, but where it is too strong.
  const again = new Float64Array(vapour.length);
  for (let i = 0; i < again.length; i++) {
    const y = vapour[i]!;
    again[i] =
      y > POT_RANGE.strongest
        ? vapourOver(moleFraction(y), pressure, model).vapour
        : followedAt(followed, logit(y));
  }
  let temperatures: Followed | undefined;
  return {
    first: { values: vapour, followed },
    second: { values: again, followed: follow(again) },
    temperature: () => (temperatures ??= follow(temperature)),
  };
}

/**
 * What boils off a pot at a pressure, by a model: solved once and remembered for the last few.
 * @example boilingPot({ pressure: kilopascals(101.325) }).first.values.every((y, i) => y > POTS[i]) // true (below the azeotrope the vapour is the stronger)
 */
export const boilingPot = remember(boil, 4, (a, b) => a.pressure === b.pressure && a.model === b.model);
