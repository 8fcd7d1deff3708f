// What the book can be quoted by, on pages, cautions and terms written by hand.
import { expect, test } from 'vitest';
import { bookPassages } from '../../src/build/passages.ts';

const pages = [
  { at: 'using/', title: 'Using', body: 'How to read it.\n\n<Caution of="gas" />\n' },
  { at: 'wash/', title: 'Wash', body: 'It ferments.\n\n## Froth\n\n**To say.** It froths.\n\n## Empty\n\n## Sums for this stage\n\nSome.\n\n<Caution of="gas" brief />\n' },
  { at: 'wash/safe/', title: 'Wash: stay safe', body: '<Caution of="gas" />\n' },
  { at: 'law/', title: 'Law', body: '<Caution of="gas" />\n' },
]; // prettier-ignore
const caution = (title: string) => ({ title, hazard: `${title} kills. `, does: ['Measure it.\n', 'Go out.'], defers: 'Ask the site.' }); // prettier-ignore

test('sections that tell something, cautions where they first stand whole, and terms: each with its place', () => {
  const cautions = new Map([
    ['gas', caution('Gas')],
    ['dust', caution('Dust')], // stands nowhere
  ]);
  const own = pages.filter(({ at }) => at !== 'using/');
  expect(bookPassages(own, cautions, [{ id: 'wort', term: 'Wort', says: 'What runs off.' }])).toEqual([
    { title: 'Wash', text: 'It ferments.', at: 'wash/', place: 'Wash' },
    { title: 'Froth', text: 'It froths.', at: 'wash/#froth', place: 'Wash: Froth' },
    { title: 'Gas', text: 'Gas kills. Measure it. Go out. Ask the site.', at: 'wash/safe/', place: 'Wash: stay safe: Gas' },
    { title: 'Wort', text: 'What runs off.', at: 'glossary/#wort', place: 'Glossary: Wort' },
  ]);
}); // prettier-ignore

test('how the book is used answers no question', () => {
  expect(bookPassages(pages.slice(0, 1), new Map(), [])).toEqual([]);
});
