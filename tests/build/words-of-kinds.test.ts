// By what words a trainer finds a kind of question: those of its text, and those that others use.
import { expect, test } from 'vitest';
import { wordsOfKinds } from '../../src/build/words-of-kinds.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';

test('a word of the question, or another word for it, finds the kind', () => {
  const words = wordsOfKinds(questionKinds, { 'let down': ['thinned'] });
  const found = (part: string) => Object.keys(words).filter((id) => words[id]!.includes(part));
  expect(found('dilut')).toContain('reduce-to-strength');
  expect(found('thinned')).toContain('casks-and-bottles');
  expect(found('cooler')).toContain('wort-cooler');
  expect(found('telephone')).toContain('froth-in-the-neck');
  expect(found('qqq')).toEqual([]);
  expect(Object.keys(words)).toHaveLength(questionKinds.length);
});
