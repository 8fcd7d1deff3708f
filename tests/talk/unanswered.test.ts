// Which questions of a list a script leaves open.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unanswered, type UnansweredQuestion } from '../../src/talk/unanswered.ts';
import { scriptOf } from './scripts.ts';

const questions: readonly UnansweredQuestion[] = [
  { id: 'yeast', chapter: 'fermenting', title: 'Fermenting', question: 'How much yeast goes in?', words: ['yeast', 'washback'] },
  { id: 'copper', chapter: 'distilling', title: 'Distilling', question: 'Why are the stills of copper?', words: ['copper', 'sulphur'] },
  { id: 'long', chapter: 'fermenting', title: 'Fermenting', question: 'How long does it ferment?', words: ['ferment', 'hours'] },
]; // prettier-ignore
const open = (text: string) => unanswered(text, questions).map(({ question }) => question.id);

test('a question is answered where its words stand together, with a number if it asks for one', () => {
  expect(open('')).toEqual(['yeast', 'copper', 'long']);
  expect(open('Forty kilos of yeast go into each washback.')).toEqual(['copper', 'long']);
  expect(open('Yeast goes into the washback.')).toEqual(['yeast', 'copper', 'long']); // no number
  expect(open('Copper takes up the sulphur.')).toEqual(['yeast', 'long']);
  expect(open(`Copper. ${'And so on. '.repeat(40)} Sulphur.`)).toContain('copper'); // too far apart
});

test('slips of the trade’s words count as the words', () => {
  expect(open('we put forty kilos of east in the wash backs')).not.toContain('yeast');
});

test('it says where the answer would belong', () => {
  const text = 'The stills are made of copper, as you see.';
  const copper = unanswered(text, questions).find(({ question }) => question.id === 'copper')!;
  expect(copper.touched).toBe(0.5);
  expect(copper.at).toBe(text.indexOf('copper'));
});

test('a question with no words stays open, and no text upsets it', () => {
  expect(unanswered('anything', [{ id: 'x', chapter: 'malting', title: 'Malting', question: 'Why?', words: [] }])).toHaveLength(1);
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.array(fc.string({ unit: 'binary' }), { maxLength: 4 }), (text, words) => {
      for (const { touched, at } of unanswered(text, [{ id: 'x', chapter: 'malting', title: 'Malting', question: 'Why?', words }])) {
        expect(touched).toBeGreaterThanOrEqual(0);
        expect(touched).toBeLessThan(1);
        if (at !== undefined) expect(at).toBeLessThan(text.length);
      }
    }),
  );
}); // prettier-ignore

test('a whole script answers what it speaks of and leaves the rest open', () => {
  const { text } = scriptOf('in-words');
  expect(open(text)).toEqual(['copper']);
});
