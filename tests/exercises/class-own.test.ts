// Questions of a trainer's own in a class book: told as the trainer wrote them, or by sheet and number where that is not known here.
import { expect, test } from 'vitest';
import { freshBook, withThings, type Work } from '../../src/exercises/class/book.ts';
import { mistakeWords, ownAskedIn, placeAsked } from '../../src/exercises/class/own-words.ts';
import type { OwnNumber } from '../../src/exercises/own/own-question.ts';

const work: Work = { is: 'work', kind: 'sheet', title: 'Week two', day: '2026-05-14', mark: '0abcdef', address: '', passMark: 0, marks: [], kinds: [['dust-class', 'own-mash1'], ['own-mash1', 'own-valve1']] }; // prettier-ignore
const book = withThings(freshBook('abcdef012345'), { w: work });
const slip = (say: string) => ({ formula: 'a', say });
const question = (...slips: OwnNumber['slips']) => ({ id: 'own-mash1', asks: 'number', title: 'Draff of a week', slips }) as unknown as OwnNumber; // prettier-ignore
const known = (...slips: OwnNumber['slips']) => new Map([['own-mash1', question(...slips)]]);

test('those that the sheets ask are found', () => {
  expect([...ownAskedIn(book)]).toEqual(['own-mash1', 'own-valve1']);
});
test('one that is not known here is told by its sheet and number', () => {
  expect(placeAsked(book, 'own-mash1')).toBe('“Week two”, question 2');
  expect(placeAsked(book, 'own-valve1')).toBe('“Week two”, question 2');
  expect(placeAsked(book, 'own-other')).toBe('A question that is not known here');
});
test('a known mistake has the trainer’s own words; of several it is not guessed which', () => {
  expect(mistakeWords('own-mash1', 'otherFigure', known(slip('The wet draff was taken.')))).toBe('“The wet draff was taken.”'); // prettier-ignore
  expect(mistakeWords('own-mash1', 'otherFigure', known(slip('One.'), slip('Two.')))).toBe('One of “One.”, “Two.”'); // prettier-ignore
  expect(mistakeWords('own-mash1', 'otherFigure', new Map())).toBe('A known mistake of the trainer’s own');
  expect(mistakeWords('own-mash1', 'sign', known(slip('One.')))).toBe('Added where one subtracts, or the wrong way round'); // prettier-ignore
  expect(mistakeWords('dust-class', 'otherFigure', new Map())).toBe('The right sum for another figure');
});
