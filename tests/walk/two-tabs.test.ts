// Two tabs on one walk: what the other wrote is taken, and what is being typed here is not lost.
import { expect, test } from 'vitest';
import { withPieceMoved, withNewRoom, withPiece, withRoom } from '../../src/walk/change.ts';
import { withTalk } from '../../src/walk/pieces.ts';
import { roomOpen, withTyping } from '../../src/walk/two-tabs.ts';
import { firstWalk, textOfWalk, type Walk } from '../../src/walk/walk.ts';

const said = 'It is 7,500 litres. It is hot.';
const mine = withTalk(firstWalk('A walk'), said, [{ from: 0, to: 19, room: 2 }, { from: 19, to: 30, room: 2 }], [{ at: 6, words: '7,500 litres', figure: 'wortVolume', value: 7500 }]); // prettier-ignore
const typing = { room: 2, piece: 0, text: 'Listen: it is 7,500 litres.' };
const typed = (theirs: Walk) => withTyping(theirs, mine, typing);
const words = (walk: Walk, room: number) => walk.rooms[room]!.pieces.map(({ text }) => text);

test('a line of the other tab and the words that are being typed both stand, with their figures', () => {
  const theirs = withRoom(mine, 4, { line: 'Look, do not touch.' });
  const both = typed(theirs);
  expect(both.rooms[4]!.line).toBe('Look, do not touch.');
  expect(words(both, 2)).toEqual([typing.text, 'It is hot.']);
  expect(both.rooms[2]!.pieces[0]!.figures).toEqual([{ at: 14, words: '7,500 litres', figure: 'wortVolume', value: 7500 }]); // prettier-ignore
});

test('the words go with their piece, wherever the other tab has put it', () => {
  const elsewhere = typed(withPieceMoved(mine, { room: 2, piece: 0 }, 1)!.walk);
  expect(words(elsewhere, 2)).toEqual(['It is hot.']);
  expect(words(elsewhere, 3)).toEqual([typing.text]);
});

test('where both tabs changed one piece, or it is gone, neither is lost', () => {
  const both = typed(withPiece(mine, { room: 2, piece: 0 }, { text: 'It is a lot.', figures: [] }));
  expect(words(both, 2)).toEqual(['It is a lot.', typing.text, 'It is hot.']);
  expect(textOfWalk(typed(firstWalk('A walk')))).toBe(typing.text);
  expect(withTyping(firstWalk('A walk'), mine, { ...typing, text: said.slice(0, 19) })).toEqual(firstWalk('A walk')); // prettier-ignore
});

test('the same room stays open by its name', () => {
  expect(roomOpen(withNewRoom(mine, 1, 'Yard'), mine, 2)).toBe(3);
  expect(roomOpen(mine, mine, 2)).toBe(2);
  expect(roomOpen({ ...mine, rooms: mine.rooms.slice(0, 2) }, mine, 5)).toBe(1);
});
