// A new guide's file: what is told in which room, what is right, near and wrong, and what is asked again. Expectations made by hand.
import { describe, expect, test } from 'vitest';
import { cardFigures } from '../../src/house/card-figures.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { figuresByRoom, questionsByRoom, saidInShort } from '../../src/walk/guide-file.ts';
import { figureHeard } from '../../src/walk/guide-file-heard.ts';
import { judgeTold, type SaidVerdict } from '../../src/walk/guide-file-judge.ts';
import { roundOfMissed, nextToTell, nothingTold, readByWalk, stillTold, toldOf, withFigureTold, withWalk } from '../../src/walk/guide-file-told.ts'; // prettier-ignore
import { emptyRoom, firstWalk, type Piece, type Walk } from '../../src/walk/walk.ts';
import { sayings } from './guide-file-cases.ts';

const piece = (text: string, long = false): Piece => ({ text, long, figures: [] });

describe('what is told where', () => {
  test('of a room the first sentence of each piece; what is for long walks only stays out of a short one', () => {
    const room = {
      ...emptyRoom('Mill'),
      pieces: [piece('It is red. It is old.'), piece('Mind the belt!', true)],
    };
    expect(saidInShort(room, { length: 60 })).toEqual({ says: ['It is red.', 'Mind the belt!'], more: 0 });
    expect(saidInShort(room, { length: 30 })).toEqual({ says: ['It is red.'], more: 0 });
    const eight = { ...room, pieces: Array.from({ length: 8 }, (_, i) => piece(`This is number ${i}.`)) };
    expect(saidInShort(eight, { length: 60 }).says).toHaveLength(6);
    expect(saidInShort(eight, { length: 60 }).more).toBe(2);
    expect(saidInShort(emptyRoom('Mill'), { length: 60 })).toEqual({ says: [], more: 0 });
  });

  test('a figure or a question that two rooms have stands in one', () => {
    const stores = ['Filling store', 'Warehouse'].map((name) => emptyRoom(name, ['maturing']));
    const walk: Walk = { ...firstWalk('Two stores'), rooms: stores };
    const [first, second] = figuresByRoom(walk);
    expect(first).toHaveLength(6);
    expect(second).toEqual([]);
    const ticked = { ...walk, rooms: [stores[0]!, { ...stores[1]!, asks: ['b'] }] };
    const asked = (['a', 'b', 'c'] as const).map((id) => ({ id, stage: 'maturing' as const }));
    expect(questionsByRoom(ticked, asked).map((room) => room.map(({ id }) => id))).toEqual([
      ['a', 'c'],
      ['b'],
    ]);
    expect(questionsByRoom(ticked, [{ id: 'd', stage: 'milling' }]).flat()).toEqual([]);
  });

  test('the usual walk has every stage’s figures, none twice', () => {
    const all = figuresByRoom(firstWalk('My walk')).flat();
    expect(new Set(all).size).toBe(all.length);
    const ids = new Set(cardFigures.map(({ id }) => id));
    expect(all.every((id) => ids.has(id))).toBe(true);
    expect(all.length).toBeGreaterThan(20);
  });
});

describe('right, near and wrong', () => {
  test.each(sayings)('%s of %s: “%s” is %s', (kind, value, text, verdict) => {
    const said = figureHeard(text, { kind, label: 'Casks filled a week', unit: '' });
    if (verdict === 'unread') return void expect(isRefusal(said)).toBe(true);
    if (isRefusal(said)) throw new Error(said.refused);
    expect(judgeTold(said, value, kind)).toBe(verdict satisfies SaidVerdict);
  });

  test('what cannot be read says what was given', () => {
    const said = figureHeard('a great many', { kind: 'volume20', label: 'Wort collected', unit: 'L' });
    expect(said).toMatchObject({ refused: expect.stringContaining('“a great many” was given') });
  });
});

describe('what comes next', () => {
  const three = ['maltPerMash', 'wortVolume', 'draff'] as const;

  test('the walk’s order, then those missed, and those alone', () => {
    let told = nothingTold;
    expect(nextToTell(three, told)).toBe('maltPerMash');
    told = withFigureTold(told, 'maltPerMash', 'near', 1500);
    expect(nextToTell(three, told)).toBe('wortVolume');
    told = withFigureTold(withFigureTold(told, 'wortVolume', 'right', 7500), 'draff', 'wrong', 1578);
    expect(nextToTell(three, told)).toBeUndefined();
    expect(told.missed).toEqual(['maltPerMash', 'draff']);
    told = roundOfMissed(told);
    expect(nextToTell(three, told)).toBe('maltPerMash');
    told = withFigureTold(told, 'maltPerMash', 'right', 1500);
    expect(nextToTell(three, told)).toBe('draff');
    told = withFigureTold(told, 'draff', 'right', 1578);
    expect(told).toEqual({ right: { maltPerMash: 1500, wortVolume: 7500, draff: 1578 }, missed: [] });
  });

  test('a figure that has moved since, or left the walk, counts no more', () => {
    const told = { right: { maltPerMash: 1500, wortVolume: 7500 }, missed: ['draff', 'gone'] };
    expect(stillTold(told, three, (id, was) => id !== 'maltPerMash' || was === 1600)).toEqual({
      right: { wortVolume: 7500 },
      missed: ['draff'],
    });
  });

  test('is kept by walk, and nothing strange is taken for it', () => {
    const told = withFigureTold(nothingTold, 'draff', 'right', 1578);
    const text = withWalk(readByWalk(withWalk([], 'A', told)), 'B', nothingTold);
    expect(toldOf(readByWalk(text), 'A')).toEqual(told);
    expect(toldOf(readByWalk(text), 'C')).toEqual(nothingTold);
    for (const bad of [null, '', '{', '{}', '7', '[[]]', '[["A"]]', '[["A",{"right":[],"missed":[]}]]', '[[1,{"right":{},"missed":[]}]]'])
      expect(readByWalk(bad), String(bad)).toEqual([]);
    const odd = '[["A",{"right":{"draff":"x","barley":5,"__proto__":1},"missed":[null,"draff"]}]]';
    expect(toldOf(readByWalk(odd), 'A').missed).toEqual(['draff']);
    expect(toldOf(readByWalk(odd), 'A').right['draff']).toBeUndefined();
    let many = withWalk([], 'first', told);
    for (let i = 0; i < 40; i++) many = withWalk(readByWalk(many), `walk ${i}`, told);
    expect(readByWalk(many)).toHaveLength(30);
    expect(toldOf(readByWalk(many), 'first')).toEqual(nothingTold);
  }); // prettier-ignore
});
