// How the liquid of a week is divided into the charges of stills that share it.

/** Stills that are alike. */
export interface StillGroup {
  readonly number: number;
  /** What one is charged with when full, L. */
  readonly charge: number;
  /** From charging to ready for the next charge, h. */
  readonly hours: number;
}

/** A charge of the week: which group runs it, its part of the week's liquid, and the part that is charged once it is. */
export interface WeekCharge {
  readonly group: number;
  readonly part: number;
  readonly upTo: number;
}

/** Whole charges from each mash; or the fewest from the week's liquid together, so that one may be of two mashes. */
export type Division = 'by-mash' | 'fewest';

const HAIR = 1e-9; // of a charge, by which rounding may make one more

/**
 * The charges of a week in the order in which they are filled. The liquid divides among the groups by what their stills
 * hold, and each group's into the fewest charges that are alike. `perMash` L come from each of so many mashes.
 * @example chargesInOrder(8000, 1, [{ number: 2, charge: 4000, hours: 8 }], 'by-mash') // [{ group: 0, part: 0.5, upTo: 0.5 }, { group: 0, part: 0.5, upTo: 1 }] (two charges of 4,000 L)
 */
export function chargesInOrder(
  perMash: number,
  mashes: number,
  groups: readonly StillGroup[],
  division: Division,
): readonly WeekCharge[] {
  const all = groups.reduce((sum, { number, charge }) => sum + number * charge, 0);
  const batches = division === 'by-mash' ? mashes : 1;
  const batch = groups
    .flatMap(({ number, charge }, group) => {
      const part = (number * charge) / all;
      const charges = Math.ceil(((perMash * mashes) / batches) * (part / charge) - HAIR);
      return Array.from({ length: charges }, (_, i) => ({
        group,
        part: part / charges / batches,
        turn: (i + 1) / charges,
      }));
    })
    .sort((a, b) => a.turn - b.turn);
  let upTo = 0;
  return Array.from({ length: batches }, () => batch)
    .flat()
    .map(({ group, part }) => ({ group, part, upTo: (upTo += part) }));
}
