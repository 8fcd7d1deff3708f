// The working that stands beside an answer.
import { expect, test } from 'vitest';
import type { ChoiceQuestion } from '../../src/exercises/question.ts';
import { answerInWords, workingBeside } from '../../src/exercises/wording.ts';

const question = {
  kind: 'froth', title: 'Froth', topic: 'safety', form: 'judgement', level: 1, prompt: 'Froth climbs. What do you do?', sources: [],
  options: [{ text: 'Heat harder', why: 'More froth.' }, { text: 'Ease the heat', why: 'Less heat lets it fall.' }],
  answer: 1, working: ['Ease the heat. Less heat lets it fall.', 'It was boiling.'],
} satisfies ChoiceQuestion; // prettier-ignore

test('the right option is said with its letter, and not again in the working', () => {
  expect(answerInWords(question)).toBe('B: Ease the heat');
  expect(workingBeside(question)).toEqual(['Less heat lets it fall.', 'It was boiling.']);
  expect(workingBeside({ ...question, answer: 0 })).toEqual(question.working);
});
