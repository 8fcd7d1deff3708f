// All figures of a house as JSON: what a label or a spreadsheet takes from it is what the line has.
import { expect, test } from 'vitest';
import { allFigures, figuresFile } from '../../src/house/all-figures.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';

const known = { standing: () => 'computed', counted: () => undefined } as const;
const line = builtInLine();

test('each figure is there once, as a number with its unit or as the words of a choice', () => {
  const rows = allFigures(line, known);
  const of = (id: string) => rows.find((row) => row.id === id);
  expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  expect(of('maltPerMash')).toEqual({ id: 'maltPerMash', label: 'Malt a mash', value: 1500, unit: 'kg', standing: 'computed' }); // prettier-ignore
  // By definition: 1,500 kg a mash, 6 mashes a week, 46 weeks.
  expect(of('maltPerYear')).toMatchObject({ value: 1500 * 6 * 46, unit: 'kg' });
  expect(of('foreshotsBy')).toMatchObject({ value: 'after a share of the alcohol', unit: '' });
  expect(of('foreshotsMinutes')).toBeUndefined(); // it does not count in this house
  expect(of('holds')).toBeUndefined();
  for (const { value } of rows) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
});

test('a counted figure goes first, and the computed one stands beside it', () => {
  const counted = (id: string) => (id === 'casksInStore' ? 55_000 : undefined);
  const { figures } = JSON.parse(figuresFile(builtInName, line, { standing: (id) => (id === 'casksInStore' ? 'counted' : 'estimate'), counted })) as { figures: { id: string; value: number; computed?: number; standing: string }[] }; // prettier-ignore
  const row = figures.find(({ id }) => id === 'casksInStore')!;
  expect(row).toMatchObject({ value: 55_000, standing: 'counted' });
  expect(row.computed! / line.casks.inStore).toBeCloseTo(1, 9);
  expect(figures.find(({ id }) => id === 'casksPerYear')).toMatchObject({ standing: 'our estimate' });
  expect(builtInHouse.maltPerMash).toBe(1500);
});
