// Talks cut into rooms: against what a person said of each paragraph, and what must hold of every cut of every talk.
import { expect, test } from 'vitest';
import { readScript } from '../../src/talk/script.ts';
import { cutIntoRooms, type Placed } from '../../src/walk/cut.ts';
import { firstWalk } from '../../src/walk/walk.ts';
import { scriptOf, scripts } from '../talk/scripts.ts';
import { beginsBy, byHand, heldOut, ROOMS, type RoomName } from './cut-by-hand.ts';
import { rooms as harrowmereRooms, talk as harrowmere } from './harrowmere-talk.ts';

const { rooms } = firstWalk('A walk');
const SURE = 0.8; // from which the page takes a figure without asking (islands/script-taken.ts)
const placedIn = (text: string): readonly Placed[] =>
  readScript(text).quantities.map(({ start, end, figure, confidence }) => ({
    start,
    end,
    ...(figure && confidence >= SURE ? { figure } : {}),
  }));
const cut = (text: string) => cutIntoRooms(text, placedIn(text), rooms);
const named = (name: string) => scriptOf(name.split('/')[1]!).text;

/** The rooms that each paragraph was given to, in order. */
function roomsOf(text: string): readonly string[] {
  const cuts = cut(text);
  let from = 0;
  return text.split(/\n\s*\n/).map((paragraph) => {
    const at = text.indexOf(paragraph, from);
    from = at + paragraph.length;
    const here = cuts.filter((each) => each.from < from && each.to > at);
    return [...new Set(here.map(({ room }) => ROOMS[room]))].join(' and ');
  });
}

/** How many paragraphs of talks are in another room than a person says, of how many. */
function wrongIn(labelled: typeof byHand): readonly [wrong: number, of: number] {
  const right = Object.entries(labelled).flatMap(([name, labels]) => {
    const found = roomsOf(named(name));
    expect(found).toHaveLength(labels.length);
    return found.map((room, i) => room === labels[i]);
  });
  return [right.filter((each) => !each).length, right.length];
}

// Labelled before there was a cutter. The first look had 34 of 39 right; what it lacked was put right in general, not for these.
test('three talks are cut as a person cut them, but for two paragraphs in thirty-nine', () => {
  const [wrong, of] = wrongIn(byHand);
  expect(of).toBe(39);
  expect(wrong).toBeLessThanOrEqual(2);
});

// The first and only look had 23 of 24 right.
test('three talks that nothing was changed for are cut as a person cut them, but for one paragraph in twenty-four', () => {
  const [wrong, of] = wrongIn(heldOut);
  expect(of).toBe(24);
  expect(wrong).toBeLessThanOrEqual(1);
});

test('Harrowmere’s own talk is cut into six rooms as its author meant it', () => {
  expect(roomsOf(harrowmere)).toEqual(harrowmereRooms);
  expect(new Set(roomsOf(harrowmere)).size).toBe(6);
});

test('a talk without paragraphs or stops is cut all the same: four words in five are where a person put them', () => {
  const text = named('jarrow/fifteen-ton');
  expect(text.trim()).not.toContain('\n');
  const cuts = cut(text);
  const starts = beginsBy.map(([room, words]) => [text.indexOf(words), room] as const);
  expect(starts.every(([at]) => at >= 0)).toBe(true);
  const byPerson = (at: number): RoomName => starts.filter(([start]) => start <= at).at(-1)![1];
  const words = [...text.matchAll(/\S+/g)];
  const right = words.filter(
    ({ index }) =>
      ROOMS[cuts.find(({ from, to }) => from <= index && index < to)?.room ?? -1] === byPerson(index),
  );
  expect(right.length / words.length).toBeGreaterThan(0.8);
});

test(
  'of every talk nothing is lost, the order of telling stays, no quantity is cut through',
  { timeout: 120_000 },
  () => {
    for (const { text, name } of scripts()) {
      const placed = placedIn(text);
      const cuts = cutIntoRooms(text, placed, rooms);
      const whole = cuts.map(({ from, to }) => text.slice(from, to)).join('');
      expect(whole.replace(/\s+/g, ''), name).toBe(text.replace(/\s+/g, ''));
      cuts.forEach(({ from, to, room }, i) => {
        expect(to, name).toBeGreaterThan(from);
        expect(room, name).toBeGreaterThanOrEqual(cuts[i - 1]?.room ?? 0);
        expect(placed.filter(({ start, end }) => start < from && from < end)).toEqual([]);
      });
    }
  },
);

test('rooms of the same work are told apart by their names', () => {
  const two = [
    { name: 'Filling store', stages: ['maturing'] },
    { name: 'Warehouse', stages: ['maturing'] },
  ] as const;
  const text = 'In the filling store the casks are filled.\n\nAnd this is the warehouse, full of casks.';
  expect(cutIntoRooms(text, [], two).map(({ room }) => room)).toEqual([0, 1]);
});

test('no rooms, no words and nothing of the trade are no trouble', () => {
  expect(cutIntoRooms('Anything at all.', [], [])).toEqual([]);
  expect(cutIntoRooms(' \n\n ', [], rooms)).toEqual([]);
  expect(cutIntoRooms('Hello. Goodbye.', [], rooms)).toEqual([{ from: 0, to: 15, room: 0 }]);
});
