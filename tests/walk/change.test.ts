// A walk put right by hand: nothing that is said is lost, and figures stay at their words.
import { expect, test } from 'vitest';
import {
  withPiecesJoined,
  withPieceMoved,
  withPieceMovedWithin,
  withPieceSplit,
  withNewRoom,
  withoutRoom,
  withRoomMoved,
} from '../../src/walk/change.ts';
import { figuresStillThere, withFiguresFound, withTalk } from '../../src/walk/pieces.ts';
import { figuresOfCard, firstWalk, textOfWalk, type Walk } from '../../src/walk/walk.ts';

const text = 'We keep 846 litres. It is strong.\n\nWe fill 25 casks. That is all.';
const second = text.indexOf('We fill');
const found = [
  { at: text.indexOf('846'), words: '846 litres', figure: 'heartVolume', value: 846 },
  { at: text.indexOf('25'), words: '25 casks', figure: 'casksPerWeek', value: 25 },
] as const;
const walk = withTalk(firstWalk('A walk'), text, [{ from: 0, to: second, room: 4 }, { from: second, to: text.length, room: 5 }], found); // prettier-ignore
/** True when every figure's words stand where it says. */
const holds = (of: Walk) =>
  of.rooms.every(({ pieces }) =>
    pieces.every((piece) => piece.figures.every(({ at, words }) => piece.text.startsWith(words, at))),
  );
const figures = (of: Walk) =>
  of.rooms.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.figures.map(({ words }) => words)));

test('a piece goes to the room before or after, and no further', () => {
  const back = withPieceMoved(walk, { room: 5, piece: 0 }, -1)!;
  expect(back.at).toEqual({ room: 4, piece: 1 });
  expect(textOfWalk(back.walk)).toBe(text);
  const on = withPieceMoved(walk, { room: 4, piece: 0 }, 1)!;
  expect(on.at).toEqual({ room: 5, piece: 1 });
  expect(on.walk.rooms[5]!.pieces.map((piece) => piece.text)).toEqual(text.split('\n\n').toReversed());
  expect(withPieceMoved(walk, { room: 5, piece: 0 }, 1)).toBeUndefined();
  expect(withPieceMoved(walk, { room: 0, piece: 0 }, 1)).toBeUndefined();
});

const three = withTalk(firstWalk('A walk'), 'One. Two. Three. Last.', [{ from: 0, to: 4, room: 1 }, { from: 4, to: 9, room: 1 }, { from: 9, to: 16, room: 1 }, { from: 16, to: 22, room: 2 }], []); // prettier-ignore
const words = (of: Walk, room: number) => of.rooms[room]!.pieces.map(({ text }) => text);

test('pieces that are moved one after another, on or back, keep the order of telling', () => {
  for (const by of [1, -1] as const) {
    let now = three;
    for (let i = 0; i < 3; i++) now = withPieceMoved(now, { room: 1, piece: 0 }, by)!.walk;
    expect(words(now, 1)).toEqual([]);
    expect(words(now, 1 + by)).toEqual([...words(three, 1 + by), 'One.', 'Two.', 'Three.']);
  }
});

test('a piece goes up and down in its room, and no further', () => {
  const down = withPieceMovedWithin(three, { room: 1, piece: 0 }, 1)!;
  expect(words(down.walk, 1)).toEqual(['Two.', 'One.', 'Three.']);
  expect(down.at).toEqual({ room: 1, piece: 1 });
  expect(withPieceMovedWithin(down.walk, down.at, -1)!.walk).toEqual(three);
  expect(withPieceMovedWithin(three, { room: 1, piece: 0 }, -1)).toBeUndefined();
  expect(withPieceMovedWithin(three, { room: 1, piece: 2 }, 1)).toBeUndefined();
});

test('a piece that is split and joined is as it was, its figures at their words', () => {
  const apart = withPieceSplit(walk, { room: 4, piece: 0 }, 'We keep 846 litres. '.length)!.walk;
  expect(apart.rooms[4]!.pieces.map((piece) => piece.text)).toEqual(['We keep 846 litres.', 'It is strong.']);
  expect(holds(apart)).toBe(true);
  expect(withPiecesJoined(apart, { room: 4, piece: 0 })!.walk).toEqual(walk);
  for (const place of [-5, 0, 900])
    expect(withPieceSplit(walk, { room: 4, piece: 0 }, place)).toBeUndefined();
  expect(withPiecesJoined(walk, { room: 4, piece: 0 })).toBeUndefined();
  const within = withPieceSplit(walk, { room: 4, piece: 0 }, 'We keep 84'.length)!.walk; // through a figure: it is given up
  expect(figures(within)).toEqual(['25 casks']);
});

test('a room taken out leaves what is said to its neighbour, and the time to be kept follows its room', () => {
  const due = { ...walk, due: { room: 5, by: '11:00' } };
  for (const room of [0, 3, 4]) {
    const left = withoutRoom(due, room);
    expect(textOfWalk(left)).toBe(text);
    expect(left.due).toEqual({ room: 4, by: '11:00' });
    expect(holds(left)).toBe(true);
  }
  expect(withoutRoom(due, 5).due).toBeUndefined();
  expect(textOfWalk(withoutRoom(due, 5))).toBe(text);
  const one = { ...walk, rooms: walk.rooms.slice(4, 5) };
  expect(withoutRoom(one, 0)).toBe(one);
  expect(withNewRoom(due, 1, 'Yard').due).toEqual({ room: 6, by: '11:00' });
  expect(withNewRoom(due, 1, 'Yard').rooms[1]).toMatchObject({ name: 'Yard', pieces: [] });
  expect(withRoomMoved(due, 5, -1).due).toEqual({ room: 4, by: '11:00' });
  expect(withRoomMoved(due, 4, 1).due).toEqual({ room: 4, by: '11:00' });
  expect(withRoomMoved(due, 5, 1)).toBe(due);
});

test('after an edit figures stay where their words still stand, and new ones are put in beside them', () => {
  const [piece] = walk.rooms[4]!.pieces;
  const after = 'Listen: we keep 846 litres, or 9,000 in a week.';
  expect(figuresStillThere(piece!.figures, piece!.text, after)).toEqual([
    { ...found[0], at: after.indexOf('846') },
  ]);
  expect(figuresStillThere(piece!.figures, piece!.text, 'We keep some.')).toEqual([]);
  const other = [{ ...found[0], figure: 'lowWinesVolume' }, { ...found[1] }] as const;
  expect(withFiguresFound(walk, other)).toEqual(walk); // what the guide had already stays
  const bare = withTalk(walk, text, [{ from: 0, to: text.length, room: 4 }], []);
  expect(figures(withFiguresFound(bare, found))).toEqual(['846 litres', '25 casks']);
});

test('a card carries what is told in its room first, and no more than six', () => {
  const [still] = [walk.rooms[4]!];
  expect(figuresOfCard(still)).toHaveLength(6);
  expect(figuresOfCard(still)[0]).toBe('heartVolume');
  expect(figuresOfCard({ ...still, figures: [] })).toEqual([]);
});
