// Wrong figures planted in sensible houses, and what the cross-check makes of them.
import { accusedFigures, reconcile } from '../../src/core/cross-check/reconcile.ts';
import { chanceFrom, houses, plant, truthOf } from './quoted-houses.ts';

export const sizes = [0, 0.05, 0.1, 0.2] as const;

/** What became of the planted figures, and of the sound ones beside them. */
export interface Tally {
  houses: number;
  refused: number;
  unsettled: number;
  /** Houses in which the chi-square test notices something (chance below 5 %). */
  noticed: number;
  /** Houses in which the moved figure can be checked. */
  checkable: number;
  /** … and is named first, is said to disagree or that it cannot be, is in doubt. */
  first: number;
  called: number;
  doubted: number;
  /** Sound figures, and those wrongly said to disagree, or not to be, or in doubt. */
  sound: number;
  soundCalled: number;
  soundDoubted: number;
}

/** Plants one figure moved by `by` in each of `count` houses and counts what is found. Same seed, same houses. */
export function tally(seed: number, count: number, by: number, as: 'about' | 'exact', figures = 12): Tally {
  const t: Tally = { houses: 0, refused: 0, unsettled: 0, noticed: 0, checkable: 0, first: 0, called: 0, doubted: 0, sound: 0, soundCalled: 0, soundDoubted: 0 }; // prettier-ignore
  houses(seed, count).forEach((house, i) => {
    const { quoted, wrong } = plant(truthOf(house), by, as, chanceFrom(seed + 31 * i), figures);
    const found = reconcile(quoted);
    if ('refused' in found) {
      t.refused++;
      return;
    }
    t.houses++;
    if (!found.settled) t.unsettled++;
    if (found.overall.chance < 0.05) t.noticed++;
    for (const { figure, finding } of found.figures) {
      if (figure === wrong) {
        if (finding !== 'not checkable') t.checkable++;
        if (accusedFigures(found)[0] === wrong) t.first++;
        if (finding === 'disagrees' || finding === 'cannot be') t.called++;
        if (finding === 'doubtful') t.doubted++;
      } else {
        t.sound++;
        if (finding === 'disagrees' || finding === 'cannot be') t.soundCalled++;
        if (finding === 'doubtful') t.soundDoubted++;
      }
    }
  });
  return t;
}
