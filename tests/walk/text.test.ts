// A walk's text form: what is written is read as it was; what is bad is told in a sentence and never throws.
import { expect, test } from 'vitest';
import { withTalk } from '../../src/walk/pieces.ts';
import { LONGEST_WALK_TEXT, decodeWalk, encodeWalk } from '../../src/walk/text.ts';
import { firstWalk, mostInWalk, textOfWalk, type Walk } from '../../src/walk/walk.ts';
import { brokenNames, injections, notFigures, prototypeKeys } from '../hostile-texts.ts';

const walk: Walk = (() => {
  const first = firstWalk('Saturday');
  const told = withTalk(first, 'It is 7,500 litres.\n\nThat is all.', [{ from: 0, to: 21, room: 2 }, { from: 21, to: 33, room: 5 }], [{ at: 6, words: '7,500 litres', figure: 'wortVolume', value: 7500 }]); // prettier-ignore
  return {
    ...told,
    begins: '9:45',
    due: { room: 5, by: '10:30' },
    rooms: told.rooms.map((room, i) => (i === 4 ? { ...room, shows: 'The safe', line: 'Look, do not touch.', rule: 'Nobody past the rail', asks: ['distilling-why-copper'], figures: ['heartVolume'] } : room)),
  };
})(); // prettier-ignore
const read = (text: string) => decodeWalk(text);
const whole = (text: string) => {
  const found = read(text);
  if ('problem' in found) throw new Error(found.problem);
  return found;
};
/** The text with something else in it. */
const changed = (change: (data: Record<string, unknown>) => void): string => {
  const data = JSON.parse(encodeWalk(walk)) as Record<string, unknown>;
  change(data);
  return JSON.stringify(data);
};
const roomOf = (data: Record<string, unknown>, i: number) => (data['rooms'] as Record<string, unknown>[])[i]!;

test('what is written is read as it was, its figures with it', () => {
  expect(whole(encodeWalk(walk))).toEqual({ walk, problems: [] });
  expect(walk.rooms[2]!.pieces[0]!.figures).toEqual([
    { at: 6, words: '7,500 litres', figure: 'wortVolume', value: 7500 },
  ]);
  expect(textOfWalk(walk)).toBe('It is 7,500 litres.\n\nThat is all.');
});

test('the house of a walk and what is left in it are read as written; a walk without them is written as before', () => {
  const left = [{ words: 'It is 7,500 litres.', house: [{ figure: 'wortVolume', value: 8000 }] }] as const;
  const own: Walk = { ...walk, house: 'Kestrel Burn', left };
  expect(whole(encodeWalk(own))).toEqual({ walk: own, problems: [] });
  expect(Object.keys(JSON.parse(encodeWalk(walk)) as object)).not.toContain('left');
  for (const [key, value, says] of [
    ['house', '', /no name for the house/],
    ['house', 7, /no name for the house/],
    ['left', {}, /no list/],
    ['left', [{ words: '', house: [] }], /asked again/],
    ['left', [{ words: 'x', house: [{ figure: 'nothing', value: 1 }] }], /asked again/],
    ['left', [{ words: 'x', house: [{ figure: 'wortVolume', value: '1' }] }], /asked again/],
  ] as const) {
    const found = whole(changed((data) => (data[key] = value)));
    expect(found.problems.join(' ')).toMatch(says);
    expect(found.walk).toEqual(walk);
  }
});

test('what is no walk, or of a newer version, is told in a sentence', () => {
  for (const text of ['', '{', 'null', '[]', '{"format":"malt-spirit-talk","version":1}', '{"format":["malt-spirit-walk"]}'])
    expect(read(text)).toEqual({ problem: expect.stringMatching(/^That is no walk/) });
  expect(read(changed((data) => (data['version'] = 2)))).toEqual({ problem: expect.stringContaining('version 2; this handbook reads version 1. Open it with a newer one') });
  expect(read(changed((data) => (data['version'] = '1')))).toEqual({ problem: expect.stringContaining('no version') });
  expect(read(' '.repeat(LONGEST_WALK_TEXT + 1))).toEqual({ problem: expect.stringContaining('characters') });
}); // prettier-ignore

test('each thing that is wrong is told, and the rest stands', () => {
  const cases: readonly (readonly [(data: Record<string, unknown>) => void, RegExp])[] = [
    [(data) => (data['length'] = 1e9), /^Length: “1000000000” is no whole number/],
    [(data) => (data['pace'] = '130'), /^Words a minute: “130” is no whole number/],
    [(data) => (data['begins'] = 'noon'), /no time of day/],
    [(data) => (data['due'] = { room: 9, by: '11:00' }), /has to be by when/],
    [(data) => (data['colour'] = 'red'), /“colour” is nothing that is known/],
    [(data) => (data['name'] = ''), /no name for a walk/],
    [(data) => (roomOf(data, 0)['name'] = 7), /no name for a room/],
    [(data) => (roomOf(data, 0)['minutes'] = 2.5), /Malt barn, minutes/],
    [(data) => (roomOf(data, 0)['stages'] = ['brewing']), /“brewing” is not known/],
    [(data) => (roomOf(data, 0)['bans'] = 'phones'), /no list/],
    [(data) => (roomOf(data, 0)['asks'] = ['<b>']), /no question/],
    [(data) => (roomOf(data, 0)['figures'] = ['nothing']), /“nothing” is not known/],
    [(data) => (roomOf(data, 0)['line'] = {}), /is no text/],
    [(data) => (roomOf(data, 0)['pieces'] = [{ text: '  ' }]), /no words/],
    [(data) => (roomOf(data, 0)['pieces'] = ['x']), /no piece/],
    [(data) => (roomOf(data, 0)['pieces'] = [{ text: 'x', long: 1 }]), /long walks only/],
    [
      (data) => {
        const [piece] = roomOf(data, 2)['pieces'] as Record<string, unknown>[];
        piece!['figures'] = [{ at: 0, words: '7,500 litres', figure: 'wortVolume', value: 7500 }];
      },
      /no figure that stands there/,
    ],
    [(data) => ((data['rooms'] = []), delete data['due']), /no rooms/],
    [(data) => (data['rooms'] = Array.from({ length: 30 }, () => roomOf(data, 0))), /30 are given/],
  ];
  for (const [change, says] of cases) {
    const { problems, walk: found } = whole(changed(change));
    expect(problems.join(' ')).toMatch(says);
    expect(problems).toHaveLength(1);
    expect(whole(encodeWalk(found))).toEqual({ walk: found, problems: [] });
  }
});

test('a text may not hold more than a walk may', () => {
  const many = whole(changed((data) => (roomOf(data, 0)['pieces'] = Array.from({ length: 700 }, () => ({ text: 'x' }))))); // prettier-ignore
  expect(many.walk.rooms[0]!.pieces).toHaveLength(mostInWalk.pieces);
  expect(many.problems[0]).toContain('700 are given');
  const long = whole(changed((data) => (roomOf(data, 0)['pieces'] = [{ text: 'x'.repeat(300_000) }])));
  expect(textOfWalk(long.walk).length).toBeLessThanOrEqual(mostInWalk.text + 100);
});

test('hostile values at every place give a walk or a sentence, and are read again as they are', () => {
  const values: readonly unknown[] = [
    null,
    true,
    -1,
    [],
    {},
    [[]],
    ...injections,
    ...prototypeKeys,
    ...Object.values(brokenNames),
    ...notFigures,
  ];
  const keys = Object.keys(JSON.parse(encodeWalk(walk)) as object).filter((key) => key !== 'format' && key !== 'version'); // prettier-ignore
  for (const value of values) {
    if (typeof value === 'string' && value.length > 100_000) {
      expect(read(changed((data) => (data['name'] = value)))).toEqual({ problem: expect.stringContaining('characters') }); // prettier-ignore
      continue;
    }
    for (const key of keys) {
      const { walk: found } = whole(changed((data) => (data[key] = value)));
      expect(whole(encodeWalk(found))).toEqual({ walk: found, problems: [] });
    }
    for (const key of Object.keys(walk.rooms[4]!)) {
      const { walk: found } = whole(changed((data) => (roomOf(data, 4)[key] = value)));
      expect(whole(encodeWalk(found))).toEqual({ walk: found, problems: [] });
    }
  }
});
