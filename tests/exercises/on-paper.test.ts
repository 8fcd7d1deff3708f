// What leaves the book keeps each of its parts: a sealed question its curve, a table its choices, names their digits.
import { expect, test } from 'vitest';
import { isAlike } from '../../src/exercises/class/names.ts';
import { questionsTable } from '../../src/exercises/exchange/questions-csv.ts';
import { askedOnly } from '../../src/exercises/sealed/sealed-sheet.ts';
import type { ChoiceQuestion, NumberQuestion, OrderQuestion } from '../../src/exercises/question.ts';

const asked = { kind: 'k', title: 'T', topic: 'mashing', level: 1, prompt: 'How much?', working: ['so'], sources: [] } as const; // prettier-ignore
const choice: ChoiceQuestion = { ...asked, form: 'judgement', options: [{ text: 'Run', why: 'No.' }, { text: 'Call', why: 'Yes.' }], answer: 1 }; // prettier-ignore
const order: OrderQuestion = { ...asked, form: 'order', items: ['c', 'a', 'b'], answer: [1, 2, 0] };
const number: NumberQuestion = { ...asked, form: 'calculation', answer: 1234.5, of: 'volume20', digits: 1, tolerance: 2, slips: [{ family: 'percent', value: 123450, say: 'Percent.' }] }; // prettier-ignore

test('a table of questions has the letters of choices, the order of steps, and the ends of what is right', () => {
  const rows = questionsTable([{ version: 2, questions: [choice, order, number], marks: [1, 2, 3] }] as never, { working: true, comma: false } as never); // prettier-ignore
  expect(rows).toContain('"A: Run\nB: Call",B,');
  expect(rows).toContain('"A: c\nB: a\nC: b",B C A,');
  expect(rows).toMatch(/1234\.5,L,1232\.5,1236\.5,123450: Percent\.,so/);
});

test('a sealed question has its curve to six figures and what an empty row says, and nothing that answers it', () => {
  const curve = { caption: 'Run', columns: [{ kind: 'strength', label: 'Strength', values: [71.23456789, 0], empty: 'none' }, { kind: 'volume', label: 'Litres', values: [1, 2] }] } as const; // prettier-ignore
  const sealed = askedOnly({ ...number, curve } as unknown as NumberQuestion, 2);
  expect(sealed).toMatchObject({ form: 'number', prompt: 'How much?', marks: 2, curve: { caption: 'Run', columns: [{ kind: 'strength', label: 'Strength', values: [71.2346, 0], empty: 'none' }, { kind: 'volume', label: 'Litres', values: [1, 2] }] } }); // prettier-ignore
  expect(JSON.stringify(sealed)).not.toMatch(/1234\.5|Percent|"so"|answer/);
  expect(askedOnly(choice, 1)).toMatchObject({ form: 'choice', lines: ['Run', 'Call'] });
  expect(askedOnly(order, 1)).toMatchObject({ form: 'order', lines: ['c', 'a', 'b'] });
});

test('names that differ by one letter may be one person’s, and by a digit are two', () => {
  expect([isAlike('Anna', 'Anne'), isAlike('Anna', 'Annaa'), isAlike('Björn', 'bjorn')]).toEqual([true, true, true]); // prettier-ignore
  for (const [a, b] of [
    ['Marka', 'Mark2'],
    ['Mark1', 'Mark2'],
    ['Mark', 'Mark2'],
    ['Ada', 'Una'],
    ['Anna', 'Annika'],
  ] as const)
    // prettier-ignore
    expect([isAlike(a, b), isAlike(b, a)], `${a}, ${b}`).toEqual([false, false]);
});
