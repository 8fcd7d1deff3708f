// The edges of marking: what is just right, just near and just wrong, with each edge by hand.
import { expect, test } from 'vitest';
import { mark } from '../../src/exercises/mark.ts';
import { roughly } from '../../src/exercises/bounds.ts';
import type { NumberQuestion } from '../../src/exercises/question.ts';

const water: NumberQuestion = {
  kind: 'k',
  title: 't',
  topic: 'mashing',
  level: 1,
  form: 'calculation',
  prompt: 'How much?',
  working: ['so'],
  sources: [],
  answer: 1234.5,
  of: 'volume20',
  digits: 1,
  tolerance: 2,
  slips: [],
};
const verdicts = (question: NumberQuestion, texts: readonly string[]) =>
  texts.map((text) => mark(question, text).verdict);

test('right from the tolerance below to the tolerance above, and not a tenth further', () => {
  expect(verdicts(water, ['1232.4', '1232.5', '1236.5', '1236.6'])).toEqual(['wrong', 'right', 'right', 'wrong']);
  // Whole things have one right number.
  const casks: NumberQuestion = { ...water, of: 'count', answer: 41, digits: 0, tolerance: 1.5, whole: 'up' };
  expect(verdicts(casks, ['39', '40', '41', '42', '43'])).toEqual(['wrong', 'rounded', 'right', 'rounded', 'wrong']);
  expect(mark(casks, '40').say).toBe('Near, but here it is rounded up: 41.');
}); // prettier-ignore

test('rounded too far: within half of its last place, and within three parts in a hundred', () => {
  const of = (answer: number, digits = 1) => ({ ...water, answer, digits });
  expect(verdicts(of(1457), ['1500', '1400'])).toEqual(['rounded', 'wrong']); // 43 off; 50 may be, and 43.71
  expect(verdicts(of(1455), ['1500'])).toEqual(['wrong']); // 45 off; 43.65 may be
  expect(verdicts(of(1234.5), ['1230', '1240', '1229'])).toEqual(['rounded', 'wrong', 'wrong']); // 4.5 and 5.5 off, 5 may be
  expect(mark(of(1234.5), '1230').say).toMatch(/^Right, but rounded too far: to 1 decimal it is 1,234\.5\sL\.$/);
  expect(mark({ ...of(1234.56, 2), tolerance: 0.02 }, '1234').say).toBe('That is not it. Follow the working step by step, and find where yours parts from it.');
  expect(mark({ ...of(1234.56, 2), tolerance: 0.02 }, '1235').say).toMatch(/to 2 decimals it is 1,234\.56/);
  expect(mark({ ...of(1457, 0) }, '1460').say).toMatch(/to the whole number it is 1,457/);
}); // prettier-ignore

test('a sign that is not the answer’s, within the tolerance', () => {
  expect(mark(water, '-1236.5')).toMatchObject({ verdict: 'wrong', family: 'sign' });
  expect(mark(water, '-1236.6').family).toBeUndefined();
  expect(mark({ ...water, answer: -12, digits: 0, tolerance: 0.6 }, '12')).toMatchObject({ family: 'sign' });
});

test('a size that is out by tens is told which way and how far', () => {
  const count: NumberQuestion = { ...water, of: 'count', answer: 1234, digits: 0, tolerance: 1 };
  const size = (text: string) => mark(count, text).say;
  expect(size('12340')).toMatch(/too large by a factor of 10:/);
  expect(size('1234000')).toMatch(/too large by a factor of 1,000:/);
  expect(size('12.34')).toMatch(/too small by a factor of 100:/);
  expect(mark(count, '12351').family).toBeUndefined(); // a tenth of it is 1.1 off
  expect(mark({ ...count, answer: 0 }, '5').family).toBeUndefined();
});

test('a known mistake is known within the tolerance or a hundredth of itself, the less of the two, and within a rounding; the nearest counts', () => {
  const slips = [
    { family: 'percent' as const, value: 1180, say: 'A.' },
    { family: 'contraction' as const, value: 1183, say: 'B.' },
    { family: 'sign' as const, value: 0.1, say: 'C.' },
    { family: 'thousand' as const, value: 100, say: 'D.' },
  ];
  const say = (text: string) => mark({ ...water, slips }, text).say;
  expect(['1178', '1177.9', '1181.4', '1181.6', '1185', '1185.1'].map((text) => say(text).slice(0, 2))).toEqual(['A.', 'Th', 'A.', 'B.', 'B.', 'Th']);
  expect(['0.16', '0.17', '0.05', '0.03'].map((text) => say(text).slice(0, 2))).toEqual(['C.', 'Th', 'C.', 'Th']); // 0.6 of the last decimal
  expect(['101', '101.1', '99', '98.9'].map((text) => say(text).slice(0, 2))).toEqual(['D.', 'Th', 'D.', 'Th']); // a hundredth of 100
}); // prettier-ignore

test('a unit that was not said is known within a hundredth, or the tolerance if that is less', () => {
  const malt: NumberQuestion = { ...water, form: 'estimate', answer: 1000, of: 'mass', digits: 0, tolerance: 300 };
  // A pound is 0.45359237 kg: 2,226 are 1,009.7 kg, 2,228 are 1,010.6; 2,215 are 1,004.7, 2,217 are 1,005.6.
  expect(verdicts(malt, ['2226', '2228', '2184', '2182'])).toEqual(['unit', 'wrong', 'unit', 'wrong']);
  expect(verdicts({ ...malt, tolerance: 5 }, ['2215', '2217'])).toEqual(['unit', 'wrong']);
  expect(mark(malt, '2205').say).toBe('That is right in lb; say so, or give it in kg.');
  expect(mark({ ...malt, tolerance: 5 }, '1000 lb').say).toBe('The number is right in kg, but another unit stands behind it.');
}); // prettier-ignore

test('hours and minutes are read together', () => {
  const hours: NumberQuestion = { ...water, of: 'hours', answer: 7.6, digits: 1, tolerance: 0.06 };
  // 36 minutes are 0.6 of an hour; 7 h 24 min are 7.4, 7 h 48 min 7.8.
  expect(verdicts(hours, ['7 h 36 min', '456 min', '7.6', '7 h 24 min', '7 h 48 min', '7.36'])).toEqual(['right', 'right', 'right', 'wrong', 'wrong', 'wrong']);
}); // prettier-ignore

test('an estimate is told to the first figure of its tolerance', () => {
  expect(roughly({ answer: 1234.5, tolerance: 30, digits: 1 })).toEqual({ answer: 1230, digits: 0 });
  expect(roughly({ answer: 1234.5, tolerance: 300, digits: 1 })).toEqual({ answer: 1200, digits: 0 });
  expect(roughly({ answer: 0.1278, tolerance: 0.01, digits: 4 })).toEqual({ answer: 0.13, digits: 2 });
  expect(roughly({ answer: 0.1278, tolerance: 0.01, digits: 1 })).toEqual({ answer: 0.1, digits: 1 });
});
