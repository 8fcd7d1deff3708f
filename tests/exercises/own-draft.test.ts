// The form of a question of one's own, and the bank's file: what is typed becomes the question, and comes back as typed.
import { expect, test } from 'vitest';
import { bankText, readBank, withQuestions } from '../../src/exercises/own/bank-file.ts';
import { draftOf, questionOf, readTakes } from '../../src/exercises/own/draft.ts';
import { alcoholOfMash, whichValve } from './own-examples.ts';
import { hostileTexts } from './own-hostile.ts';

test('a question stands in its form and comes out of it the same', () => {
  for (const question of [alcoholOfMash, whichValve]) expect(questionOf(draftOf(question), question.id)).toEqual(question);
}); // prettier-ignore

test('ranges and lists are read as typed, and nothing else', () => {
  expect(readTakes(' 4000 to  6000 step 500 ')).toEqual({ from: 4000, to: 6000, step: 500 });
  expect(readTakes('−5; 0.5;7')).toEqual({ list: [-5, 0.5, 7] });
  for (const text of ['', '4,000 to 6,000 step 500', '1 to 2', '1 to 2 step 0', '1;', 'one', '1e9', '1 to 2 step −1', ...hostileTexts])
    expect(readTakes(text), text.slice(0, 40)).toBeUndefined();
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
