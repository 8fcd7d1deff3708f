// Marking, against answers whose meaning is plain from how people write numbers.
import { expect, test } from 'vitest';
import { readAnswer } from '../../src/exercises/answer.ts';
import { mark } from '../../src/exercises/mark.ts';
import { pointsOf } from '../../src/exercises/verdict.ts';
import type { ChoiceQuestion, NumberQuestion, OrderQuestion } from '../../src/exercises/question.ts';

const asked = {
  kind: 'k',
  title: 't',
  topic: 'mashing',
  level: 1,
  prompt: 'How much?',
  working: ['so'],
  sources: [],
} as const;
const water: NumberQuestion = {
  ...asked,
  form: 'calculation',
  answer: 1234.5,
  of: 'volume20',
  digits: 1,
  tolerance: 2,
  slips: [
    { family: 'contraction', value: 1180, say: 'Contraction.' },
    { family: 'percent', value: 123450, say: 'Percent.' },
  ],
};

const first = (text: string) => readAnswer(text, 'volume20')?.number;
test.each([
  ['1234.5', 1234.5], ['1,234.5', 1234.5], ['1 234.5', 1234.5], ['1 234,5', 1234.5], ['1.234,5', 1234.5],
  ['1’234.5', 1234.5], ['1\u202f234.5 L', 1234.5], ['1234,5 litres', 1234.5], ['about 1234.5', 1234.5], ['= 1,234.5L', 1234.5],
  ['3/4', 0.75], ['2 1/2', 2.5], ['2½', 2.5], ['½', 0.5], ['.5', 0.5], ['-3', -3], ['−3', -3],
  ['1.2e6', 1.2e6], ['1.2 × 10^6', 1.2e6], ['3.15 x 10¹⁴', 3.15e14], ['1,234,567', 1234567], ['1.234.567,8', 1234567.8],
])('reads %s', (text, value) => {
  expect(first(text)).toBeCloseTo(value, 9);
}); // prettier-ignore

test.each(['', 'about', 'L', '1,2,3', '1..2', 'dozens', '--3', '3/0', '5 to 6'])(
  'does not read “%s”',
  (text) => {
    expect(readAnswer(text, 'volume20')).toBeUndefined();
  },
);

test.each([
  ['', 'unanswered'], ['  ', 'unanswered'], ['lots', 'unreadable'], ['1,234.5', 'right'], ['1234.5 L', 'right'], ['1235', 'right'],
  ['12.345 hL', 'right'], ['1.2345 m³', 'right'], ['1,234,500 mL', 'right'], ['271.6 UK gal', 'right'], ['326.1 US gallons', 'right'],
  ['1,234.5 kg', 'unit'], ['1234.5 flagons', 'unit'], ['12.345', 'unit'], ['1234.5 hL', 'unit'],
  ['1200', 'rounded'], ['1230', 'rounded'], ['1180', 'wrong'], ['1,180 L', 'wrong'], ['900', 'wrong'], ['-1234.5', 'wrong'], ['2000', 'wrong'],
] as const)('marks “%s” as %s', (text, verdict) => {
  expect(mark(water, text).verdict).toBe(verdict);
}); // prettier-ignore

test('a mistake is told by its family', () => {
  expect(mark(water, '1,180')).toMatchObject({ family: 'contraction', say: 'Contraction.' });
  expect(mark(water, '123450')).toMatchObject({ family: 'percent' });
  expect(mark(water, '12,345,000')).toMatchObject({ verdict: 'wrong', family: 'thousand' });
  expect(mark(water, '−1234.5').family).toBe('sign');
  expect(mark(water, '777').family).toBeUndefined();
});

// The same comma meant one thing in a field and another in an answer; now one rule holds, and the mark tells it.
test('a comma before three digits groups and a point does not; right digits are told so', () => {
  const small = { ...water, answer: 1.234, digits: 3, tolerance: 0.001, slips: [] };
  const large = { ...small, answer: 1234, digits: 0, tolerance: 1 };
  expect([mark(small, '1.234'), mark(large, '1,234')].map(({ verdict }) => verdict)).toEqual([
    'right',
    'right',
  ]);
  expect(mark(small, '1,234')).toMatchObject({
    verdict: 'unit',
    say: expect.stringContaining('is read as 1,234:'),
  });
  expect(mark(large, '1.234')).toMatchObject({
    verdict: 'unit',
    say: expect.stringContaining('is read as 1.234:'),
  });
});

// An estimate that was doubled lay within thirty parts in a hundred of the answer in pounds.
test('a wrong size is not taken for a right answer in a unit that was not named', () => {
  const malt: NumberQuestion = { ...water, form: 'estimate', answer: 1000, of: 'mass', digits: 0, tolerance: 300, slips: [] }; // prettier-ignore
  expect(mark(malt, '2000').verdict).toBe('wrong');
  expect(mark(malt, '1800').verdict).toBe('wrong');
  expect(mark(malt, '2205')).toMatchObject({ verdict: 'unit', say: expect.stringContaining('lb') });
  expect(mark(malt, '2000 lb').verdict).toBe('right'); // 907 kg
});

test('unreadable says what was given and what is allowed', () => {
  expect(mark(water, 'a bucketful').say).toBe(
    '“a bucketful” cannot be read; write a number, with a unit if you like: 1,250 L, 12,5 or 3/4.',
  );
});

test('things counted may carry their name', () => {
  const casks: NumberQuestion = { ...water, of: 'count', answer: 40, digits: 0, tolerance: 0.6 };
  expect(mark(casks, '40 casks').verdict).toBe('right');
  expect(mark(casks, '40 kg').verdict).toBe('unit');
});

test('a percentage may be read as points, a strength in proof', () => {
  const strong: NumberQuestion = {
    ...water,
    of: 'strength',
    answer: 62.5,
    digits: 1,
    tolerance: 0.3,
    slips: [],
  };
  expect(mark(strong, '62.5 %').verdict).toBe('right');
  expect(mark(strong, '62,5% ABV').verdict).toBe('right');
  expect(mark(strong, '125 US proof').verdict).toBe('right');
});

const choice: ChoiceQuestion = { ...asked, form: 'judgement', options: [{ text: 'Run', why: 'No.' }, { text: 'Call', why: 'Yes.' }], answer: 1 }; // prettier-ignore
const order: OrderQuestion = { ...asked, form: 'order', items: ['c', 'a', 'b'], answer: [1, 2, 0] };
test.each([
  [choice, 'b', 'right'], [choice, 'A', 'wrong'], [choice, 'C', 'unreadable'], [choice, 'AB', 'unreadable'], [choice, '', 'unanswered'],
  [order, 'BCA', 'right'], [order, 'b, c, a', 'right'], [order, 'CBA', 'wrong'], [order, 'BC', 'unreadable'], [order, 'BBA', 'unreadable'],
] as const)('marks letters', (question, text, verdict) => {
  expect(mark(question, text).verdict).toBe(verdict);
}); // prettier-ignore

test('verdicts are worth one, a half, or nothing', () => {
  expect((['right', 'rounded', 'unit', 'wrong', 'unanswered'] as const).map(pointsOf)).toEqual([
    1, 0.5, 0.5, 0, 0,
  ]);
});
