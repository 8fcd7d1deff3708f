// What a change moved, as the tables print it: few digits, whole bottles, and nothing told of less than a thousandth.
import { describe, expect, test } from 'vitest';
import { changeHouse } from '../../src/core/line/change.ts';
import type { House } from '../../src/core/line/house.ts';
import { line } from '../../src/core/line/line.ts';
import { count } from '../../src/core/quantity.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { movedBetween } from '../../src/house/moved.ts';
import { changeFigure, takeChangeBack } from '../../src/browser/change-figure.ts';
import { lastTrial } from '../../src/browser/house-store.ts';

const MADE = ['heart.volume', 'heart.strength', 'heart.alcohol', 'bottling.bottlesPerYear'];
const run = (house: House) => {
  const made = line(house);
  if (isRefusal(made)) throw new Error(made.refused);
  return made;
};
const changed = (house: House, figure: 'heartEnd' | 'maltPerMash', value: number) => {
  const made = changeHouse(house, figure, value as never);
  if (isRefusal(made)) throw new Error(made.refused);
  return made.house;
};
const large: House = { ...changed(builtInHouse, 'maltPerMash', 6500), mashesPerWeek: count(18) };
const number = (text: string) => Number(text.replaceAll(',', '').split(' ')[0]);

describe.each([
  ['the built-in house', builtInHouse],
  ['a large house', large],
])('%s', (_, house) => {
  const before = run(house);

  // What a balanced round makes hangs on its heart’s end hardly at all: all that leaves is the wash’s alcohol.
  test('a small cut leaves what is made unchanged, and says so', () => {
    const rows = movedBetween(before, run(changed(house, 'heartEnd', house.heartEnd - 0.1)), MADE);
    expect(rows.slice(0, MADE.length).map(({ now }) => now)).toEqual(MADE.map(() => 'unchanged'));
    expect(rows.slice(MADE.length).map(({ now }) => now)).not.toContain('unchanged');
  });

  test('more malt: every row is seen to change, and by a thousandth at least', () => {
    const after = run(changed(house, 'maltPerMash', house.maltPerMash * 1.01));
    const rows = movedBetween(before, after);
    expect(rows.length).toBeGreaterThan(10);
    for (const { what, was, now } of rows) {
      expect(now, what).not.toBe(was);
      expect(was.split('.')[1]?.match(/^\d+/)?.[0].length ?? 0, `${what} ${was}`).toBeLessThanOrEqual(2);
      if (number(was) >= 1000 && Math.abs(number(now) - number(was)) >= 1)
        expect(was, what).not.toContain('.');
    }
  });

  test('bottles are whole', () => {
    const rows = movedBetween(before, run(changed(house, 'maltPerMash', house.maltPerMash * 1.01)));
    const bottles = rows.filter(({ what }) => what.startsWith('bottles'));
    expect(bottles.length).toBeGreaterThan(0);
    for (const { was, now } of bottles) expect(`${was} ${now}`).not.toContain('.');
  });
});

test('moving one figure on and on is one change, from where it stood first', () => {
  const first = builtInHouse.heartEnd;
  for (const by of [0.5, 1, 1.5]) expect(changeFigure('heartEnd', first - by)).toBeUndefined();
  expect(changeFigure('heartEnd', -5)).toBeDefined(); // refused, and the change stands
  expect(lastTrial()).toMatchObject({ before: { heartEnd: first }, after: { heartEnd: first - 1.5 } });
  takeChangeBack();
  expect(lastTrial()).toBeUndefined();
});
