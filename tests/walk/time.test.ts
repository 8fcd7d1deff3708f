// Words, minutes and times of day of a walk, against sums done by hand.
import { expect, test } from 'vitest';
import { clockOf, inMinutes, lateFor, minutesOf, withLength, walkTimeInWords, paceOf, minutesShared, timesOf, troubleOf, wordsIn } from '../../src/walk/time.ts'; // prettier-ignore
import { firstWalk, type Walk } from '../../src/walk/walk.ts';

const words = (count: number) => Array.from({ length: count }, () => 'malt').join(' ');
/** A walk with so many words in each room. */
const saying = (...counts: readonly number[]): Walk => {
  const walk = firstWalk('A walk');
  return {
    ...walk,
    rooms: counts.map((count, i) => ({
      ...walk.rooms[i]!,
      pieces: count > 0 ? [{ text: words(count), long: false, figures: [] }] : [],
    })),
  };
};

test('words are counted as they are spoken', () => {
  expect(wordsIn('A tonne and a half, at 64.5 degrees — that’s all!')).toBe(10);
  expect(wordsIn('  \n ')).toBe(0);
  expect(wordsIn('1,150 casks a year')).toBe(4);
});

test('minutes are shared in proportion, with a least, and add up', () => {
  expect(minutesShared(60, [100, 200, 300], 2)).toEqual([10, 20, 30]);
  // By hand: nothing is said in the first, which has its two; 58 minutes to 1 : 1.
  expect(minutesShared(60, [0, 50, 50], 2)).toEqual([2, 29, 29]);
  // By hand: a tenth of 15 is less than 3, so 12 are left for 3 : 6.
  expect(minutesShared(15, [1, 3, 6], 3)).toEqual([3, 4, 8]);
  expect(minutesShared(30, [0, 0, 0], 2)).toEqual([10, 10, 10]);
  expect(minutesShared(15, [1, 1, 1, 1, 1, 1], 3)).toEqual({ refused: expect.stringContaining('too few for 6 rooms') }); // prettier-ignore
  for (const total of [15, 30, 60, 90])
    for (const weights of [[7, 11, 13, 17, 19, 23], [1, 0, 0, 400, 1, 1]]) {
      const minutes = minutesShared(total, weights, 2) as readonly number[];
      expect(minutes.reduce((sum, each) => sum + each, 0)).toBe(total);
      expect(Math.min(...minutes)).toBeGreaterThanOrEqual(2);
    } // prettier-ignore
});

test('a short walk leaves out what is only for long ones', () => {
  const walk = saying(130, 130);
  const long: Walk = { ...walk, rooms: walk.rooms.map((room, i) => (i === 0 ? { ...room, pieces: room.pieces.map((piece) => ({ ...piece, long: true })) } : room)) }; // prettier-ignore
  expect((withLength(long, 60) as Walk).rooms.map(({ minutes }) => minutes)).toEqual([30, 30]);
  const short = withLength(long, 30) as Walk;
  expect(short.rooms.map(({ minutes }) => minutes)).toEqual([2, 28]);
  expect(timesOf(short).map((time) => time.words)).toEqual([0, 130]);
});

test('times of day are read as people write them, and nothing else is', () => {
  expect(['9:05', '09.05', '0905', '9', ' 21:30 '].map(minutesOf)).toEqual([545, 545, 545, 540, 1290]);
  for (const wrong of ['', 'noon', '24:00', '9:60', '9:5', '-1', '12345', '9:05 pm'])
    expect(minutesOf(wrong)).toBeUndefined();
  expect([0, 545, 1439, 1441].map(clockOf)).toEqual(['0:00', '9:05', '23:59', '0:01']);
});

test('times run on from the beginning, past midnight too', () => {
  const walk = withLength({ ...saying(130, 130, 130), begins: '23:50' }, 30) as Walk;
  expect(timesOf(walk).map(({ from, to }) => [clockOf(from), clockOf(to)])).toEqual([
    ['23:50', '0:00'],
    ['0:00', '0:10'],
    ['0:10', '0:20'],
  ]);
});

test('a room with too much to say is told how many words to cut', () => {
  // By hand: 400 words at 130 a minute are 3.08 minutes; two minutes hold 260, so 140 are too many.
  const walk: Walk = { ...saying(400, 100), rooms: saying(400, 100).rooms.map((room) => ({ ...room, minutes: 2 })) }; // prettier-ignore
  expect(troubleOf(walk.rooms[0]!, timesOf(walk)[0]!, walk)).toBe(
    'Malt barn: 3 minutes of talk in 2 minutes. Cut about 140 words, or give it more time.',
  );
  expect(troubleOf(walk.rooms[1]!, timesOf(walk)[1]!, walk)).toBeUndefined();
  expect(walkTimeInWords(walk).join(' ')).toContain('The rooms have 4 minutes and the walk 60 minutes');
});

test('a room with much less to say than the others is told so', () => {
  const walk: Walk = { ...saying(650, 65, 0), rooms: saying(650, 65, 0).rooms.map((room) => ({ ...room, minutes: 10 })) }; // prettier-ignore
  const [first, second, third] = walk.rooms.map((room, i) => troubleOf(room, timesOf(walk)[i]!, walk));
  expect(first).toBeUndefined();
  // By hand: 5.5 of 30 minutes are talk, so ten minutes would hold 1.83; half a minute is there; 1.33 at 130 are 173 words.
  expect(second).toBe(
    'Mill: half a minute of talk in 10 minutes. About 180 words more would fill it like the others; or give it less time.',
  );
  expect(third).toBe('Mash house: nothing is said in its 10 minutes.');
});

test('a party that comes late is told by how much', () => {
  const walk: Walk = { ...(withLength(saying(100, 100, 100), 60) as Walk), begins: '10:30' };
  expect(lateFor({ ...walk, due: { room: 2, by: '11:00' } })).toContain('by 11:00: it comes at 11:10, 10 minutes late'); // prettier-ignore
  expect(lateFor({ ...walk, due: { room: 2, by: '11:10' } })).toBeUndefined();
  expect(lateFor({ ...walk, due: { room: 7, by: '11:10' } })).toBeUndefined();
  expect(lateFor(walk)).toBeUndefined();
});

test('a pace is found from a passage read aloud, if it was', () => {
  expect(paceOf(120, 60, [50, 300])).toBe(120);
  expect(paceOf(120, 50, [50, 300])).toBe(144);
  expect(paceOf(120, 2, [50, 300])).toEqual({ refused: expect.stringContaining('too short') });
  expect(paceOf(120, 600, [50, 300])).toEqual({ refused: expect.stringContaining('longer') });
  expect(paceOf(120, 0, [50, 300])).toEqual({ refused: expect.stringContaining('too short') });
});

test('minutes are told to the half', () => {
  expect([0, 0.1, 0.5, 1, 1.26, 12].map(inMinutes)).toEqual(['no time', 'less than half a minute', 'half a minute', 'a minute', '1½ minutes', '12 minutes']); // prettier-ignore
});
