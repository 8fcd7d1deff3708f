// What a reader put right in a talk stays with its words when the text is edited elsewhere.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moveSettled } from '../../src/talk/settled.ts';

test('an edit before moves it, one behind leaves it, one in it gives it up', () => {
  const settled = { 3: 'malt' } as never; // of "We 12 go"
  expect(moveSettled(settled, 'We 12 go', 'Now we 12 go')).toEqual({ 7: 'malt' });
  expect(moveSettled(settled, 'We 12 go', 'We 12 go on')).toEqual({ 3: 'malt' });
  expect(moveSettled(settled, 'We 12 go', 'We 34 go')).toEqual({});
});

test('what was settled still stands before the same words', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.string(), fc.string(), (a, b, x, y) => {
      const [before, after] = [`${a}${x}${b}<7>`, `${a}${y}${b}<7>`];
      const place = before.length - 3;
      const [moved] = Object.keys(moveSettled({ [place]: 'not ours' }, before, after));
      expect(after.slice(Number(moved))).toBe('<7>');
    }),
  );
});
