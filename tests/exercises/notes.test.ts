// What a link carries of a question: notes, quoted figures and answers, there and back.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerBefore, answerOfCode, codeOfAnswer } from '../../src/exercises/answer-code.ts';
import { CODES_COUNT } from '../../src/exercises/codes.ts';
import { codesOfFigure, figureOf } from '../../src/exercises/figure-codes.ts';
import { notesText, readNotes, type NotedStep } from '../../src/exercises/notes.ts';
import type { NumberQuestion } from '../../src/exercises/question.ts';
import { quotesOf } from '../../src/exercises/quotes.ts';

const anyCode = fc.integer({ min: 0, max: CODES_COUNT - 1 });
const anyStep: fc.Arbitrary<NotedStep> = fc.oneof(
  fc.constant('passed over' as const),
  fc.record({
    other: fc.integer({ min: 0, max: 11 }),
    attempt: fc.integer({ min: 0, max: 79 }),
    codes: fc.array(anyCode, { maxLength: 63 }),
  }),
);

test('notes come back as they were written, in plain signs', () => {
  fc.assert(
    fc.property(fc.array(anyStep, { maxLength: 60 }), (steps) => {
      const text = notesText(steps);
      expect(text).toMatch(/^[\w!-]*$/);
      expect(readNotes(text, 60)).toEqual(steps);
    }),
  );
});

test('no text whatever makes the reading of notes fail, nor gives more questions than asked for', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.stringMatching(/^[\w!-]{0,200}$/)),
      fc.integer({ min: 1, max: 40 }),
      (text, most) => {
        const steps = readNotes(text, most);
        expect((steps ?? []).filter((step) => step !== 'passed over').length).toBeLessThanOrEqual(most);
        if (steps) expect(readNotes(notesText(steps), most)).toEqual(steps);
      },
    ),
  );
});

test('a quoted figure stays as first printed when it has moved by up to two thousand last places', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2000, max: 5_000_000 }),
      fc.integer({ min: -2000, max: 2000 }),
      fc.integer({ min: 0, max: 4 }),
      (whole, moved, digits) => {
        const [was, now] = [whole / 10 ** digits, (whole + moved) / 10 ** digits];
        const first = quotesOf();
        const printed = first.quote(was, digits);
        expect(printed).toBe(Number(was.toFixed(digits)));
        expect(quotesOf(first.codes).quote(now, digits)).toBe(printed);
      },
    ),
  );
});

test('texts keep their figures, whatever these have become, and other texts are not taken for them', () => {
  const first = quotesOf();
  const was = [
    'Casks hold 1,050,000 L at 63.5 % vol, filled in 2008.',
    'Of 8.0 t of malt 0.45 t are draff, 0 t ash.',
  ];
  expect(first.texts(was)).toEqual(was);
  const now = quotesOf(first.codes);
  expect(
    now.texts([
      'Casks hold 987,600 L at 63 % vol, filled in 2008.',
      'Of 7.96 t of malt 1 t are draff, 3 t ash.',
    ]),
  ).toEqual(was);
  expect(now.isSame()).toBe(true);
  const other = quotesOf(first.codes);
  other.texts([
    'Barrels hold 987,600 L at 63 % vol, filled in 2008.',
    'Of 7.96 t of malt 1 t are draff, 3 t ash.',
  ]);
  expect(other.isSame()).toBe(false);
});

test('a figure comes back digit for digit, or is known not to', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^\d{1,7}(\.\d{1,9})?$/), (plain) => {
      const [whole, decimals] = plain.split('.');
      const figure = whole!.replace(/\B(?=(\d{3})+$)/g, ',') + (decimals === undefined ? '' : `.${decimals}`);
      const [high, low] = codesOfFigure(figure);
      expect(high < CODES_COUNT && low < CODES_COUNT).toBe(true);
      expect([figure, undefined]).toContain(figureOf(high, low));
      if (/^\d{1,5}(\.\d)?$/.test(plain) && !/^0\d/.test(plain)) expect(figureOf(high, low)).toBe(figure);
    }),
  );
});

test('an answer is known from its code to 0.03 %, though it has moved by half', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      (was, times) => {
        expect(Math.abs(answerOfCode(codeOfAnswer(was), was * times) / was - 1)).toBeLessThan(3e-4);
      },
    ),
  );
});

test('a move within the tolerance is not told, and one beyond it is', () => {
  const question = { answer: 412.6, tolerance: 4.1, of: 'volume20', digits: 1 } as unknown as NumberQuestion;
  expect(answerBefore(question, codeOfAnswer(412.6))).toBeUndefined();
  expect(answerBefore(question, codeOfAnswer(409))).toBeUndefined();
  expect(answerBefore(question, codeOfAnswer(408))).toMatch(/^40[78]\.\d/);
  expect(answerBefore({ ...question, digits: 0 }, codeOfAnswer(430))).toMatch(/^430/);
});
