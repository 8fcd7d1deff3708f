// A talk in paragraphs is the talk, and every quantity stands in one of them as it stood in the talk.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paragraphsOf } from '../../src/talk/paragraphs.ts';
import { readScript } from '../../src/talk/script.ts';
import { scripts } from './scripts.ts';

const talks = scripts()
  .filter((_, i) => i % 5 === 0) // reading them all takes long
  .map(({ text }) => text);

function expectWhole(text: string): void {
  const { quantities } = readScript(text);
  const paragraphs = paragraphsOf(text, quantities);
  expect(paragraphs.map((each) => each.text).join('')).toBe(text);
  expect(
    paragraphs.flatMap(({ at, text, quantities }) =>
      quantities.map(({ start, end }) => [at + start, at + end, text.slice(start, end)]),
    ),
  ).toEqual(quantities.map(({ start, end, text }) => [start, end, text]));
}

test('of every talk, as it is and on one line', () => {
  for (const talk of talks) {
    expectWhole(talk);
    expectWhole(talk.replace(/\s+/g, ' '));
  }
}, 120_000);

test('of any text', () => {
  const piece = fc.constantFrom('9,400\nkilos', 'five and\na half tonnes', '\r\n', '\n', ' ', '. ', 'x', '7 casks', '\u2028'); // prettier-ignore
  fc.assert(fc.property(fc.array(piece, { maxLength: 60 }).map((all) => all.join(' ')), expectWhole)); // prettier-ignore
});

test('a paragraph is a line; a very long one ends with a sentence, or at least with a word', () => {
  expect(paragraphsOf('One.\n\nTwo. Three.', []).map(({ text }) => text)).toEqual([
    'One.\n',
    '\n',
    'Two. Three.',
  ]);
  const sentence = 'The wash runs into the still and is brought to the boil. ';
  for (const { text } of paragraphsOf(sentence.repeat(200), [])) {
    expect(text).toMatch(/boil\. $/);
    expect(text.length).toBeLessThan(1300);
  }
  for (const { text } of paragraphsOf('malt '.repeat(2000), [])) expect(text.length).toBeLessThan(2500);
});
