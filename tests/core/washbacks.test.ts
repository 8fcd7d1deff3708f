// How many washbacks: the rule against a room of washbacks filled and emptied mash by mash.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { washbacksNeeded, type MashWeek } from '../../src/core/fermenting/washbacks.ts';
import { count, hours } from '../../src/core/quantity.ts';
import { always, apart, between } from './draw.ts';

const WEEKS = 20; // long enough to go from empty to a round that repeats
const week = (mashes: number, pattern: MashWeek['pattern']): MashWeek => ({ mashes: count(mashes), pattern });
const weeks = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.constantFrom('seven' as const, 'five' as const))
  .map(([mashes, pattern]) => week(mashes, pattern));

/** Fills any free washback, and buys one only when none is free: how many were bought. */
function fill({ mashes, pattern }: MashWeek, takenFor: number): number {
  const open = pattern === 'five' ? 120 : 168;
  const freeAt: number[] = [];
  for (let w = 0; w < WEEKS; w++) {
    for (let mash = 0; mash < mashes; mash++) {
      const now = 168 * w + (mash * open) / mashes;
      const free = freeAt.findIndex((hour) => hour <= now + 1e-6);
      if (free < 0) freeAt.push(now + takenFor);
      else freeAt[free] = now + takenFor;
    }
  }
  return freeAt.length;
}

test('as many as a room of washbacks comes to buy', () => {
  always(fc.tuple(weeks, between(24, 248)), ([one, takenFor]) => {
    expect(fill(one, takenFor)).toBe(washbacksNeeded(one, hours(takenFor)).needed);
  });
});

test('the longest time told needs no more washbacks, a little longer needs one more; and the same with one fewer', () => {
  always(fc.tuple(weeks, between(24, 248)), ([one, takenFor]) => {
    const { needed, longest, longestWithOneFewer } = washbacksNeeded(one, hours(takenFor));
    expect(fill(one, longest)).toBe(needed);
    expect(fill(one, longest + 0.01)).toBeGreaterThan(needed);
    expect(longest).toBeGreaterThanOrEqual(takenFor - 1e-8);
    expect(longestWithOneFewer).toBeLessThan(takenFor);
    if (needed > 1) expect(fill(one, longestWithOneFewer)).toBe(needed - 1);
  });
});

test('never more taken than there is time, and never fewer washbacks than the hours ask for', () => {
  always(fc.tuple(weeks, between(24, 248)), ([one, takenFor]) => {
    const { needed, taken } = washbacksNeeded(one, hours(takenFor));
    expect(taken).toBeLessThanOrEqual(100 + 1e-9);
    expect(apart((taken * needed) / 100, (one.mashes * takenFor) / 168)).toBeLessThan(1e-12);
  });
});

test('mashing every day, a washback taken for a day less a week’s gap: by hand', () => {
  // Seven mashes are one a day: 72 h are three washbacks, always taken; 72.5 h are four.
  expect(washbacksNeeded(week(7, 'seven'), hours(72))).toMatchObject({
    needed: 3,
    longest: 72,
    longestWithOneFewer: 48,
  });
  expect(washbacksNeeded(week(7, 'seven'), hours(72)).taken).toBeCloseTo(100, 9);
  expect(washbacksNeeded(week(7, 'seven'), hours(72.5)).needed).toBe(4);
  // Five mashes from Monday to Friday are one a day; with 48 h two washbacks do, with 80 h four.
  expect(washbacksNeeded(week(5, 'five'), hours(48)).needed).toBe(2);
  expect(washbacksNeeded(week(5, 'five'), hours(80)).needed).toBe(4);
  // One mash a week: one washback for the whole week.
  expect(washbacksNeeded(week(1, 'five'), hours(168)).needed).toBe(1);
});

test('six and a half mashes a week are seven in the busiest week of five days, and an even gap over seven', () => {
  for (const takenFor of [60, 80, 130].map(hours)) {
    const { needed, taken } = washbacksNeeded(week(6.5, 'five'), takenFor);
    expect(needed).toBe(washbacksNeeded(week(7, 'five'), takenFor).needed);
    expect(taken).toBeCloseTo((100 * 6.5 * takenFor) / 168 / needed, 9);
    expect(washbacksNeeded(week(6.5, 'seven'), takenFor).needed).toBe(Math.ceil((6.5 * takenFor) / 168));
  }
});

test('the same mashes in five days never need fewer washbacks than in seven', () => {
  always(fc.tuple(fc.integer({ min: 1, max: 60 }), between(24, 248)), ([mashes, takenFor]) => {
    const [five, seven] = (['five', 'seven'] as const).map(
      (pattern) => washbacksNeeded(week(mashes, pattern), hours(takenFor)).needed,
    );
    expect(five).toBeGreaterThanOrEqual(seven!);
  });
});

test('figures outside their range stop at the door', () => {
  for (const n of [0, -1, 1001, NaN]) {
    expect(() => washbacksNeeded(week(n, 'five'), hours(72))).toThrow(RangeError);
    expect(() => washbacksNeeded(week(6, 'seven'), hours(n))).toThrow(RangeError);
  }
});
