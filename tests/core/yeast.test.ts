// Yeast as cake, cream and cells: there and back.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  cellsFromPressed,
  creamFromPressed,
  pressedFromCells,
  pressedFromCream,
  pressedFromDry,
} from '../../src/core/fermenting/yeast.ts';
import { kilograms, litres, litres20, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/fermenting.json' with { type: 'json' };
import { publishedEntry } from '../../src/published/row.ts';
import { always, apart, between } from './draw.ts';

const cells = (n: number) => quantity('cells', n);
const perGram = (n: number) => quantity('cellsPerGram', n);
const held = (n: number) => quantity('gramsPerLitre', n);

test('15 million to the millilitre in 21,000 L are 3.15 × 10¹⁴ cells', () => {
  const { given, answer } = publishedEntry(reference.sums, 'F6') as {
    given: { c: number; V: number };
    answer: number;
  };
  const pressed = pressedFromCells(cells(given.c / 1e6), litres20(given.V), perGram(10));
  expect(apart(pressed * 1000 * 10e9, answer)).toBeLessThan(1e-12);
});

test('50 kg in 15,000 L are 3.3 g a litre: at ten billion to the gram 33 million to the millilitre', () => {
  expect(publishedEntry(reference.values, 'fer-108').conditions).toBe('3.3 g/L');
  expect(cellsFromPressed(kilograms(50), litres20(15_000), perGram(10))).toBeCloseTo(100 / 3, 9);
});

test('cream at 18 % dry matter, where pressed yeast has 30, is worth 600 g a litre', () => {
  expect(pressedFromDry(held(180))).toBeCloseTo(600, 9);
});

test('there and back: cream and cells', () => {
  always(
    fc.tuple(between(0.05, 2000), between(20, 1000), between(1, 30), between(20, 300_000)),
    ([kg, grams, billion, wort]) => {
      expect(
        apart(pressedFromCream(creamFromPressed(kilograms(kg), held(grams)), held(grams)), kg),
      ).toBeLessThan(1e-12);
      const counted = cellsFromPressed(kilograms(kg), litres20(wort), perGram(billion));
      expect(apart(pressedFromCells(counted, litres20(wort), perGram(billion)), kg)).toBeLessThan(1e-12);
    },
  );
});

test('twice the yeast in half the wort is four times the cells', () => {
  always(fc.tuple(between(0.05, 2000), between(20, 300_000), between(1, 30)), ([kg, wort, billion]) => {
    const [one, four] = [
      [kg, wort],
      [2 * kg, wort / 2],
    ].map(([k, w]) => cellsFromPressed(kilograms(k!), litres20(w!), perGram(billion)));
    expect(apart(four! / one!, 4)).toBeLessThan(1e-12);
  });
});

test('figures outside their range stop at the door', () => {
  for (const n of [-1, NaN]) {
    expect(() => pressedFromCream(litres(n), held(600))).toThrow(RangeError);
    expect(() => creamFromPressed(kilograms(1), held(n))).toThrow(RangeError);
    expect(() => pressedFromDry(held(n))).toThrow(RangeError);
    expect(() => cellsFromPressed(kilograms(n), litres20(1), perGram(10))).toThrow(RangeError);
    expect(() => cellsFromPressed(kilograms(1), litres20(n), perGram(10))).toThrow(RangeError);
    expect(() => pressedFromCells(cells(n), litres20(1), perGram(10))).toThrow(RangeError);
    expect(() => pressedFromCells(cells(1), litres20(1), perGram(n))).toThrow(RangeError);
  }
});
