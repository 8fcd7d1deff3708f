// A text of the book as plain words, on texts written by hand: what is told of figures, conditions, formulas and tables, and what is left open.
import { expect, test } from 'vitest';
import { chapterText } from '../../src/build/chapter-text.ts';
import { plainWordsOf } from '../../src/build/plain-words.ts';

const words = (mdx: string, isOpen = false) => plainWordsOf(chapterText(mdx).sections[0]!.nodes, isOpen);

test('a figure is told as the built-in house has it, or left open with all that it was given', () => {
  const bottle = (more: string) => `It holds <Figure of="house.bottleSize"${more} />.`; // 70 cL in content/houses/harrowmere.json
  expect(words(bottle(''))).toBe('It holds 70 cL.');
  expect(words(bottle(' bare'))).toBe('It holds 70.');
  expect(words(bottle(' digits={1}'))).toBe('It holds 70.0 cL.');
  expect(words(bottle(''), true)).toBe('It holds {house.bottleSize;;;}.');
  expect(words('<Figure of="heart.volume" per="week" digits={1} bare />', true)).toBe('{heart.volume;week;1;bare}');
}); // prettier-ignore

test('a sentence that hangs on the house stays where it is true of the built-in one, and is never left open', () => {
  const text = 'It is old. <When is="strength-falls">It grows weaker.</When> <When is="below-forty">No whisky.</When> <When is="moonlight">It shines.</When>';
  expect(words(text)).toBe('It is old. It grows weaker.'); // its store is damp, and it bottles above 40 % vol
  expect(words(text, true)).toBe('It is old.');
}); // prettier-ignore

test('the words in a component stay, and marks stand close to their word', () => {
  expect(words('About 4 %<Source of="memory" />, <Fact of="colouring">say what is done</Fact> (*or* not <Source of="memory" />)!')).toBe('About 4 %, say what is done (or not)!'); // prettier-ignore
});

test('a letter of a formula is a word, with what stands below it; a sum is none', () => {
  expect(words('Here $E$ and $m_a$ are all of $x = 1$ today.')).toBe('Here E and m a are all of today.');
});

test('a row of a table is a sentence: blanks to write in are left out, and a mark at its end stands alone', () => {
  const head = '| A | B | C |\n| --- | --- | --- |\n';
  expect(words(`${head}| Wash | 12 h | 30 °C |\n| Still | _____ | |\n| ____ | | __ |\n| Who? | | |\n| Ask | why? | |`)).toBe('Wash: 12 h; 30 °C. Still. Who? Ask: why?'); // prettier-ignore
});

test('what stands apart on the page stays apart in the line, and bold words and links stay in theirs', () => {
  expect(words('One\n\n- two\n- un**do**ne\n\n> [th](/x/)ree')).toBe('One two undone three');
});
