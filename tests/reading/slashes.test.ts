// Two figures with a stroke between them: a part where people write one so, and two figures where they do not.
import { expect, test } from 'vitest';
import { numberAtToken, numbersIn } from '../../src/core/reading/numbers.ts';
import { tokensOf } from '../../src/core/reading/tokens.ts';

const valuesIn = (text: string) => numbersIn(text).numbers.map(({ value }) => value);

test('halves, thirds, quarters, fifths and eighths are parts in any text', () => {
  expect(valuesIn('of 1/2, 2/3, 3/4, 4/5 and 7/8')).toEqual([0.5, 2 / 3, 0.75, 0.8, 0.875].map((each) => expect.closeTo(each, 11) as number)); // prettier-ignore
});

test('a date, a rate of others, none of a part and more than a whole are two figures', () => {
  for (const [text, values] of [['on 7/12', [7, 12]], ['in 1/7', [1, 7]], ['of 0/4', [0, 4]], ['of 5/4', [5, 4]], ['of 4/4', [4, 4]], ['on 2/3/4', [2, 3, 4]], ['of 1.5/2', [1.5, 2]]] as const)
    expect(valuesIn(text), text).toEqual(values);
}); // prettier-ignore

test('where a figure is asked for alone any part is one, but none of nothing', () => {
  const alone = (text: string) => numberAtToken(tokensOf(text), 0, true)?.value;
  expect(alone('7/12')).toBeCloseTo(0.583_333_333, 9);
  expect(alone('5/4')).toBe(1.25);
  expect(alone('0/4')).toBe(0);
  expect(alone('3/0')).toBe(3);
});
