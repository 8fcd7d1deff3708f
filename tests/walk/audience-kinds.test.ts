// Who is coming decides what is told and how long it takes; it is part of the text of a walk, and what is bad in it is told of.
import { expect, test } from 'vitest';
import { withPiecesJoined, withPieceSplit } from '../../src/walk/change.ts';
import { isForAudience, audienceMarks, type AudienceMark } from '../../src/walk/audience-kinds.ts';
import { leftOutFor } from '../../src/walk/audience-names.ts';
import { decodeWalk, encodeWalk } from '../../src/walk/text.ts';
import { withLength, timesOf, wordsTold } from '../../src/walk/time.ts';
import { firstWalk, type Piece, type Walk } from '../../src/walk/walk.ts';
import { brokenNames, injections, prototypeKeys } from '../hostile-texts.ts';

const piece = (text: string, whom?: AudienceMark): Piece => ({ text, long: false, figures: [], ...(whom ? { whom } : {}) }); // prettier-ignore
const first = firstWalk('Saturday');
/** Said in the first room: three words to all, two not for children, four only to a chemist, five only to trade, six only to children. */
const pieces = [piece('Barley and water.'), piece('Strong stuff.', 'adults'), piece('Starch, maltose, maltotriose, dextrin.', 'chemist'), piece('Four hundred litres a tonne.', 'trade'), piece('Count the grains on this plate.', 'children')]; // prettier-ignore
const walk: Walk = { ...first, rooms: first.rooms.map((room, i) => (i === 0 ? { ...room, pieces } : room)) };
const room = walk.rooms[0]!;

test.each([
  [undefined, 3 + 2],
  ['children', 3 + 6],
  ['chemist', 3 + 2 + 4],
  ['trade', 3 + 2 + 5],
  ['us', 3 + 2],
] as const)('%s: the words that are told, counted by hand', (coming, words) => {
  const of: Walk = coming ? { ...walk, coming } : walk;
  expect(wordsTold(room, of)).toBe(words);
  expect(timesOf(of)[0]).toMatchObject({ words, spoken: words / walk.pace });
});

test('a walk of another length shares its minutes by what is told to those who come', () => {
  const two: Walk = { ...walk, least: 0, rooms: [{ ...room, pieces: [piece('One two three four.'), piece('Five six seven eight.', 'adults')] }, { ...walk.rooms[1]!, pieces: [piece('One two three four.')] }] }; // prettier-ignore
  const minutes = (of: Walk) => (withLength(of, 30) as Walk).rooms.map((each) => each.minutes);
  expect(minutes(two)).toEqual([20, 10]); // eight words to four
  expect(minutes({ ...two, coming: 'children' })).toEqual([15, 15]); // four to four
});

test('what is left out is said', () => {
  expect(leftOutFor(pieces, 'children')).toBe('3 pieces are not for children, and stay out.');
  expect(leftOutFor(pieces, 'chemist')).toBe('2 pieces are for others, and stay out.');
  expect(leftOutFor([pieces[2]!])).toBe('One piece is told only to some, and stays out.');
  expect(leftOutFor([pieces[0]!], 'children')).toBeUndefined();
  for (const mark of Object.keys(audienceMarks) as AudienceMark[])
    expect(isForAudience(mark, undefined)).toBe(mark === 'adults');
});

test('a piece that is split keeps its mark, and two are joined with it only where both have it', () => {
  const halves = withPieceSplit(walk, { room: 0, piece: 1 }, 7)!.walk;
  expect(halves.rooms[0]!.pieces.slice(1, 3)).toEqual([piece('Strong', 'adults'), piece('stuff.', 'adults')]);
  expect(withPiecesJoined(halves, { room: 0, piece: 1 })!.walk.rooms[0]!.pieces[1]).toEqual(piece('Strong stuff.', 'adults')); // prettier-ignore
  expect(withPiecesJoined(walk, { room: 0, piece: 0 })!.walk.rooms[0]!.pieces[0]).not.toHaveProperty('whom');
});

const whole = (text: string) => {
  const read = decodeWalk(text);
  if ('problem' in read) throw new Error(read.problem);
  return read;
};
test('its text is read as it was written, and one without visitors is read as before', () => {
  const chosen: Walk = { ...walk, coming: 'us', saidIn: 'American' };
  expect(whole(encodeWalk(chosen))).toEqual({ walk: chosen, problems: [] });
  const older = JSON.stringify({ format: 'malt-spirit-walk', version: 1, ...first });
  expect(whole(older)).toEqual({ walk: first, problems: [] });
  expect(whole(older).walk).not.toHaveProperty('coming');
});

test('what is no visitor, no units or no mark is told in a sentence, and the rest stands', () => {
  const bad = [
    ...prototypeKeys,
    ...injections,
    ...Object.values(brokenNames),
    'Children',
    '',
    7,
    null,
    [],
    {},
  ].map((each) => (typeof each === 'string' ? each.slice(0, 1000) : each));
  for (const given of bad) {
    const data = JSON.parse(encodeWalk(walk)) as { rooms: { pieces: Record<string, unknown>[] }[] };
    data.rooms[0]!.pieces[0]!['whom'] = given;
    const { walk: read, problems } = whole(JSON.stringify({ ...data, coming: given, saidIn: given }));
    expect(read).toEqual(walk);
    expect(problems).toHaveLength(3);
    expect(problems.join(' ')).toMatch(
      /piece 1, told to: .* is not known.*Who is coming: .* is not known.*Units and numbers: .* is not known/s,
    );
  }
});
