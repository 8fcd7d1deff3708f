// The gate: every printed row within its tolerance.
import { describe, expect, test } from 'vitest';
import { published } from '../../src/published/index.ts';

describe.each(published)('$title', ({ rows }) => {
  test.each(rows)('$id: $what', ({ deviation, tolerance }) => {
    expect(Math.abs(deviation)).toBeLessThanOrEqual(tolerance);
  });
});

test('every row names its source and the reason for its tolerance, and no two are one', () => {
  const all = published.flatMap((group) =>
    group.rows.map((row) => ({ ...row, place: `${group.title}: ${row.id}` })),
  );
  expect(all.filter((row) => row.source.length < 3 || row.reason.length < 10)).toEqual([]);
  expect(new Set(all.map((row) => row.place)).size).toBe(all.length);
});

test('no group is empty and at least a quarter of all rows are published', () => {
  expect(published.filter((group) => group.rows.length < 3)).toEqual([]);
  const all = published.flatMap((group) => group.rows);
  expect(all.filter((row) => row.standing === 'published').length).toBeGreaterThan(all.length / 4);
});
