// A vat of new spirit let down and run into casks of several sizes, in the order given.
import { count, litres20, litresOfAlcohol, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { reduce, type Reduction } from '../spirit/mixing.ts';

/** So many empty casks of one size. */
export interface EmptyCasks {
  readonly size: Quantity<'volume'>;
  readonly count: Quantity<'count'>;
}

/** Those of them that were filled, and the vat after them. */
export interface FilledCasks extends EmptyCasks {
  readonly filled: Quantity<'count'>;
  readonly alcohol: Quantity<'alcohol'>;
  /** Spirit still in the vat, L at 20 °C. */
  readonly left: Quantity<'volume20'>;
}

export interface Filling {
  readonly reduction: Reduction;
  readonly groups: readonly FilledCasks[];
  readonly left: Quantity<'volume20'>;
}

const HAIR = 1e-9; // of a cask: rounding must not leave the last one empty

/**
 * Lets a vat down to the filling strength, then fills whole casks, group by group; what fills no cask stays in the vat.
 * A cask that does not fit does not stop those after it. Volumes in litres at 20 °C. Refuses (throws) a strength above the vat's own.
 * @example fillCasks({ volume: litres20(1000), strength: strength(63.5) }, strength(63.5), [{ size: litres(200), count: count(4) }, { size: litres(250), count: count(1) }]) // { groups: [{ filled: 4, left: 200.0 }, { filled: 0, left: 200.0 }], left: 200.0 } (800 L go in, and 250 L there are none)
 */
export function fillCasks(
  vat: Spirit,
  strength: Quantity<'strength'>,
  casks: readonly EmptyCasks[],
): Filling {
  const reduction = reduce(vat, strength);
  let left: number = reduction.volume;
  const groups = casks.map(({ size, count: empty }) => {
    within('The cask, L,', size, Number.MIN_VALUE, Infinity);
    within('The casks', empty, 0, Infinity);
    const filled = Math.min(Math.floor(empty), Math.floor(left / size + HAIR));
    left = Math.max(0, left - filled * size);
    return {
      size,
      count: empty,
      filled: count(filled),
      alcohol: litresOfAlcohol((filled * size * strength) / 100),
      left: litres20(left),
    };
  });
  return { reduction, groups, left: litres20(left) };
}
