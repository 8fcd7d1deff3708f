// What is said of blanks before a sheet is handed in.
import { expect, test } from 'vitest';
import { blanksIn } from '../../src/exercises/blanks.ts';

test('blanks are counted and named, and a sheet without one asks nothing', () => {
  expect(blanksIn(['1', '', 'b', ' ', '', '6', '', '', '', '10'])).toBe(
    'Six of ten are blank: 2, 4, 5, 7, 8 and 9.',
  );
  expect(blanksIn(['1', '', '3'])).toBe('One of three is blank: 2.');
  expect(blanksIn(['', ''])).toBe('Two of two are blank: 1 and 2.');
  expect(blanksIn(Array.from({ length: 20 }, () => ''))).toMatch(
    /^20 of 20 are blank: 1, 2, .*, 19 and 20\.$/,
  );
  expect(blanksIn(['0', 'A'])).toBeUndefined();
  expect(blanksIn([])).toBeUndefined();
});
