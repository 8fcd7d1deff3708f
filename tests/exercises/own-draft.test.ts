// The form of a question of one's own, and the bank's file: what is typed becomes the question, and comes back as typed.
import { expect, test } from 'vitest';
import { bankText, readBank, withQuestions } from '../../src/exercises/own/bank-file.ts';
import {
  draftOf,
  freshDraft,
  kindsOffered,
  questionOf,
  readTakenValues,
} from '../../src/exercises/own/draft.ts';
import { readDraft, draftText } from '../../src/exercises/own/draft-text.ts';
import { OWN_QUESTION_LIMITS } from '../../src/exercises/own/own-question.ts';
import { unitLabel } from '../../src/exercises/own/unit-label.ts';
import { unitsRead } from '../../src/core/units.ts';
import { alcoholOfMash, whichValve } from './own-examples.ts';
import { hostileTexts } from './own-hostile.ts';

test('a question stands in its form and comes out of it the same', () => {
  for (const question of [alcoholOfMash, whichValve]) expect(questionOf(draftOf(question), question.id)).toEqual(question);
}); // prettier-ignore

test('ranges and lists are read as typed, and nothing else', () => {
  expect(readTakenValues(' 4000 to  6000 step 500 ')).toEqual({ from: 4000, to: 6000, step: 500 });
  expect(readTakenValues('−5; 0.5;7')).toEqual({ list: [-5, 0.5, 7] });
  for (const text of ['', '4,000 to 6,000 step 500', '1 to 2', '1 to 2 step 0', '1;', 'one', '1e9', '1 to 2 step −1', ...hostileTexts])
    expect(readTakenValues(text), text.slice(0, 40)).toBeUndefined();
}); // prettier-ignore

test('a bank goes out and comes back; what is there already is left, and a clash of ids gets a new one', () => {
  const bank = [alcoholOfMash, whichValve];
  expect(readBank(bankText(bank))).toEqual(bank);
  const changed = { ...alcoholOfMash, title: 'Another' };
  const joined = withQuestions(bank, [alcoholOfMash, changed], (place) => `own-new${place}`);
  expect(joined).toEqual([...bank, { ...changed, id: 'own-new1' }]);
  for (const text of [...hostileTexts, 'null', bankText(bank).replace('"title"', '"name"'), bankText(bank).slice(0, -4)])
    expect(readBank(text), text.slice(0, 40)).toMatch(/^[A-Z].+\.$/);
}); // prettier-ignore

test('what is being written comes back as it was, half a question too', () => {
  const half = { ...freshDraft, title: ' Half ', values: [{ name: '', unit: 'count|', takes: '8; ' }], formula: 'malt × (' };
  for (const draft of [freshDraft, half, draftOf(alcoholOfMash), draftOf(whichValve)])
    for (const editing of [undefined, 'own-mash1']) expect(readDraft(draftText({ draft, editing }))).toEqual({ draft, editing });
}); // prettier-ignore

test('what no form has written is not read', () => {
  const withIt = (part: object) => JSON.stringify({ draft: { ...freshDraft, ...part } });
  expect(readDraft(withIt({}))).toBeDefined();
  for (const part of [{ title: 3 }, { title: 'x'.repeat(OWN_QUESTION_LIMITS.title + 1) }, { topic: 'x' }, { level: 9 }, { values: 'x' }, { values: [null] }, { values: [{ name: '', unit: 'mass|ell', takes: '' }] }, { values: [{ name: '', unit: '__proto__|kg', takes: '' }] }, { of: 'constructor' }, { digits: 1.5 }, { within: -1 }, { whole: 'sideways' }, { slips: [{}] }, { options: Array(OWN_QUESTION_LIMITS.options + 1).fill({ text: '', why: '' }) }, { right: OWN_QUESTION_LIMITS.options }])
    expect(readDraft(withIt(part)), JSON.stringify(part)).toBeUndefined();
  for (const text of [...hostileTexts, 'null', '[]', '{}', '{"draft":{}}', JSON.stringify({ draft: freshDraft, editing: 'x' })])
    expect(readDraft(text), text.slice(0, 40)).toBeUndefined();
}); // prettier-ignore

test('no two units of the list read alike', () => {
  const labels = kindsOffered.flatMap((kind) => unitsRead(kind).map(({ unit }) => unitLabel(kind, unit)));
  expect(new Set(labels).size).toBe(labels.length);
  expect(unitLabel('count', '')).toBe('plain number: a number of things');
  expect(unitLabel('mass', 'kg')).toBe('kg');
});
