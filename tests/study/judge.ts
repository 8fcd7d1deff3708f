// What the cross-check makes of talks about four hundred houses of another hand's physics (reasons.md, houses.py).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Quoted } from '../../src/core/cross-check/quoted.ts';
import { accusedFigures, reconcile } from '../../src/core/cross-check/reconcile.ts';

/** Parts of itself by which one figure is moved; 0 for none. */
export const moves = [0, 0.05, 0.1, 0.2] as const;
export type Move = (typeof moves)[number];

interface Talk {
  readonly figures: readonly (readonly [name: string, as: 'about' | 'rounded' | 'exact', value: number])[];
  readonly moved: readonly [name: string, by5: number, by10: number, by20: number];
}
export const talks = (JSON.parse(readFileSync(join(import.meta.dirname, 'talks.json'), 'utf8')) as { talks: Talk[] }).talks; // prettier-ignore

/** The talks by which spreads and limits were chosen, and those kept aside until the end. */
export const halves = { tuned: talks.slice(0, 200), 'left out': talks.slice(200) } as const;

/** Talks of each half that the tests measure anew, so that what is kept cannot go stale. */
export const SUBSET = 25;

/** What became of some talks, as counts of talks. */
export interface Tally {
  readonly by: Move;
  readonly talks: number;
  /** A true figure is said to disagree, or that it cannot be. */
  readonly trueCalled: number;
  /** … and the moved figure is not. */
  readonly astray: number;
  /** Some figure is said to disagree, or that it cannot be, or is in doubt. */
  readonly noticed: number;
  /** Others bear on the moved figure. */
  readonly checkable: number;
  /** The moved figure is named first. */
  readonly first: number;
}

function quotedIn({ figures, moved }: Talk, by: Move): Quoted {
  const place = moves.indexOf(by);
  return Object.fromEntries(
    figures.map(([name, as, value]) => [
      name,
      { as, value: place > 0 && name === moved[0] ? (moved[place] as number) : value },
    ]),
  );
}

/** Counts over some talks, with one figure of each moved by a part of itself. */
export function tally(some: readonly Talk[], by: Move): Tally {
  const count = { trueCalled: 0, astray: 0, noticed: 0, checkable: 0, first: 0 };
  for (const talk of some) {
    const found = reconcile(quotedIn(talk, by));
    if ('refused' in found) throw new Error(found.refused);
    const wrong = by === 0 ? undefined : talk.moved[0];
    const called = found.figures.filter(({ finding }) => finding === 'disagrees' || finding === 'cannot be');
    const doubted = found.figures.filter(({ finding }) => finding === 'doubtful');
    if (called.some(({ figure }) => figure !== wrong)) {
      count.trueCalled++;
      if (!called.some(({ figure }) => figure === wrong)) count.astray++;
    }
    if (called.length + doubted.length > 0) count.noticed++;
    if (wrong === undefined) continue;
    if (found.figures.some(({ figure, finding }) => figure === wrong && finding !== 'not checkable'))
      count.checkable++;
    if (accusedFigures(found)[0] === wrong) count.first++;
  }
  return { by, talks: some.length, ...count };
}
