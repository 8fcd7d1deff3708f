// What is proposed to be left out for children and for the time: by hand-counted words, taken or refused, and put back at once.
import { expect, test } from 'vitest';
import {
  withProposalsAnswered,
  answeredSo,
  withLeftOutBack,
  wordsStillOver,
  toLeaveOut,
  wordsThatFit,
} from '../../src/walk/leave-out.ts';
import { decodeWalk, encodeWalk } from '../../src/walk/text.ts';
import { firstWalk, type Piece, type Walk } from '../../src/walk/walk.ts';

/** So many words that say nothing. */
const words = (many: number) => Array.from({ length: many }, () => 'word').join(' ');
const piece = (text: string, rest: Partial<Piece> = {}): Piece => ({ text, long: false, figures: [], ...rest }); // prettier-ignore
const walkOf = (rooms: readonly (readonly Piece[])[], change: Partial<Walk> = {}): Walk => ({
  ...firstWalk('A walk'),
  pace: 100,
  ...change,
  rooms: firstWalk('A walk').rooms.map((room, i) => ({ ...room, pieces: rooms[i] ?? [] })),
});
const said = (walk: Walk) => toLeaveOut(walk).map(({ at, kind }) => [at.room, at.piece, kind]);
const figure = { at: 0, words: 'word', figure: 'wortVolume', value: 1 } as const;

const talk = [
  [piece('The duty on it is heavy.'), piece('Barley is a grass.')],
  [piece('Mind the step.'), piece('It was sold at a price of £90.')],
  [piece('A dram of it warms you.', { whom: 'trade' }), piece('Half of them come to us as drinkers.')],
  [piece('We bottle it weaker.', { figures: [{ at: 3, words: 'bottle', figure: 'bottlingStrength', value: 46 }] })], // prettier-ignore
];

test('for children: prices, tax, drinking and strengths are proposed each with why; nobody else is asked', () => {
  const walk = walkOf(talk, { coming: 'children' });
  expect(said(walk)).toEqual([[0, 0, 'adults'], [1, 1, 'adults'], [2, 1, 'adults'], [3, 0, 'adults']]); // prettier-ignore
  expect(toLeaveOut(walk).map(({ why }) => why)).toEqual(['It speaks of tax or duty.', 'It speaks of prices or costs.', 'It speaks of drinking.', 'It says how strong the drink is.']); // prettier-ignore
  expect(said(walkOf(talk))).toEqual([]);
  expect(said(walkOf(talk, { coming: 'chemist' }))).toEqual([]);
});

test('for the time: the least goes first till the words fit, a piece that keeps people safe last, and each room keeps one', () => {
  // Ten minutes at a hundred words a minute, three quarters of it talk: 750 words. There are 400 + 300 + 200 + 104 = 1,004.
  const rooms = [
    [
      piece(words(400), { figures: [figure, { ...figure, at: 5 }] }),
      piece(words(300), { figures: [figure] }),
    ],
    [piece(words(200)), piece(`${words(100)} Do not lean over`)],
  ];
  const walk = walkOf(rooms, { length: 10 });
  expect(wordsThatFit(walk)).toBe(750);
  // The room of 200 words opens with them (1), the 300 words have a figure (1): of equal weight the longer one goes.
  expect(said(walk)).toEqual([[0, 1, 'long']]);
  expect(wordsStillOver(walk, toLeaveOut(walk))).toBe(0);
  // Refused, 254 words too many go otherwise: the 200 first, then the 400, and with those the 200 can stay. What is for a short time is asked of no long walk.
  const refused = withProposalsAnswered(walk, toLeaveOut(walk), 'stays');
  expect(said(refused)).toEqual([[0, 0, 'long']]);
  expect(said({ ...walk, length: 60 })).toEqual([]);
  // Five minutes hold 375: a room that has only one piece left keeps it, and what is still too much is told.
  const five = { ...walk, length: 5 };
  expect(said(five)).toEqual([[0, 1, 'long'], [1, 0, 'long']]); // prettier-ignore
  expect(wordsStillOver(five, toLeaveOut(five))).toBe(400 + 104 - 375);
});

test('nothing is left out by itself; what is taken and refused is kept in the file, and put back in one action', () => {
  const walk = walkOf(talk, { coming: 'children' });
  const [duty, price, ...rest] = toLeaveOut(walk);
  const taken = withProposalsAnswered(withProposalsAnswered(walk, [duty!, price!], 'out'), rest, 'stays');
  expect(taken.rooms[0]!.pieces[0]!.whom).toBe('adults');
  expect(taken.rooms[2]!.pieces[1]!.whom).toBeUndefined();
  expect([answeredSo(taken, 'out'), answeredSo(taken, 'stays'), toLeaveOut(taken).length]).toEqual([2, 2, 0]);
  expect(decodeWalk(encodeWalk(taken))).toEqual({ walk: taken, problems: [] });
  expect(withLeftOutBack(withLeftOutBack(taken, 'out'), 'stays')).toEqual(walk);
  expect(said(withLeftOutBack(taken, 'stays'))).toEqual([[2, 1, 'adults'], [3, 0, 'adults']]); // prettier-ignore
  // What the guide marks by hand is not put back.
  const own = walkOf([[piece('Barley is a grass.', { long: true, whom: 'adults' })]], { coming: 'children' });
  expect(withLeftOutBack(own, 'out')).toBe(own);
});

test('an answer that cannot be read is told and asked again', () => {
  for (const bad of [7, {}, { adults: 'perhaps' }, { other: 'out' }, []]) {
    const text = encodeWalk(walkOf([[{ ...piece('Barley is a grass.'), asked: bad as never }]]));
    const read = decodeWalk(text);
    if ('problem' in read) throw new Error(read.problem);
    expect(read.problems).toHaveLength(1);
    expect(read.walk.rooms[0]!.pieces[0]!.asked).toBeUndefined();
  }
});
