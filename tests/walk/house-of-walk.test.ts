// Whose house a walk was written for.
import { expect, test } from 'vitest';
import { withTalk } from '../../src/walk/pieces.ts';
import { firstWalk } from '../../src/walk/walk.ts';
import { forHouse, otherHouse, withHouseOf } from '../../src/walk/house-of-walk.ts';

const first = firstWalk('A walk');
const told = withTalk(first, 'It is hot.', [{ from: 0, to: 10, room: 0 }], []);

test('a walk has the house that stands where something is first said in it, and keeps it elsewhere', () => {
  expect(withHouseOf(first, 'Kestrel Burn')).toEqual(first);
  const own = withHouseOf(told, 'Kestrel Burn');
  expect(own.house).toBe('Kestrel Burn');
  expect(withHouseOf(own, 'Harrowmere')).toEqual(own);
  expect(otherHouse(own, 'Harrowmere')).toBe('Kestrel Burn');
  expect(otherHouse(own, 'Kestrel Burn')).toBeUndefined();
  expect(otherHouse(told, 'Harrowmere')).toBeUndefined(); // an older walk does not say
  expect(otherHouse(forHouse(own, 'Harrowmere'), 'Harrowmere')).toBeUndefined();
});
