// What a corrected book tells otherwise: told from what the reader saw last, once, and never from a text that cannot be read.
import { expect, test } from 'vitest';
import {
  correctedSince,
  rememberedFigures,
  nameOfRemembered,
  readRemembered,
  withRemembered,
  type LastTold,
} from '../../src/house/corrected.ts';
import { figureIds, figureTable, headOf, isGiven, pathsOf, stageOf } from '../../src/core/figures/index.ts';
import { figureText } from '../../src/house/prose.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { injections } from '../hostile-texts.ts';

const figures = rememberedFigures(builtInLine());
const told = (part: Partial<LastTold> = {}): LastTold => ({ book: '0.1.0-aaaaaa', house: 'built in', figures, news: [], ...part }); // prettier-ignore
const STRENGTH = 'lowWines.strength';

test('every reckoned figure that a card may carry is remembered, as the card tells it', () => {
  const onCards = figureIds.filter((id) => figureTable[id].card && !isGiven(figureTable[id]));
  expect(onCards.length).toBeGreaterThan(10);
  for (const id of onCards) {
    const [path] = pathsOf(id);
    expect(figures[path!], id).toBe(figureText(builtInLine(), path!));
    expect(nameOfRemembered(path!)).toEqual({ name: headOf(id), stage: stageOf(id) });
  }
});

test('what is told alike is no news; what is told otherwise is told from what was seen last', () => {
  expect(correctedSince(told(), figures)).toEqual([]);
  const now = { ...figures, [STRENGTH]: '22.8 % vol' };
  const once = correctedSince(told(), now);
  expect(once).toEqual([{ path: STRENGTH, was: figures[STRENGTH], now: '22.8 % vol' }]);
  // A second correction before the first was seen: from the text that the reader knows.
  const twice = correctedSince(told({ figures: now, news: once }), { ...now, [STRENGTH]: '22.7 % vol' });
  expect(twice).toEqual([{ path: STRENGTH, was: figures[STRENGTH], now: '22.7 % vol' }]);
  // And one that is taken back is none.
  expect(correctedSince(told({ figures: now, news: once }), figures)).toEqual([]);
});

test('a figure that the older book did not have, or this one has no more, is no news', () => {
  const { [STRENGTH]: _, ...without } = figures;
  expect(correctedSince(told({ figures: without }), figures)).toEqual([]);
  expect(correctedSince(told(), without)).toEqual([]);
});

test('is kept for each house, and the oldest give way', () => {
  let text: string | null = null;
  for (let i = 0; i < 70; i++)
    text = withRemembered(readRemembered(text), `House ${i}`, told({ book: String(i) }));
  text = withRemembered(readRemembered(text), '__proto__', told());
  const all = readRemembered(text);
  expect(all.size).toBe(60);
  expect(all.get('House 69')?.book).toBe('69');
  expect(all.get('__proto__')).toEqual(told());
  expect(text!.length).toBeLessThan(500_000);
});

test('what cannot be read is forgotten', () => {
  const damaged = [null, '', '{', '{}', '[1]', '[["a"]]', '[["a",{"book":1}]]', '"'.repeat(600_000), '[["a",null],[{},{}]]'];
  for (const text of [...damaged, ...injections]) expect(readRemembered(text).size).toBe(0);
  const strange = JSON.stringify([['A', { ...told(), figures: { constructor: '1', toString: 'x', [STRENGTH]: 'x'.repeat(61) }, news: [{ path: 'constructor', was: '1', now: '2' }, null, 7] }]]);
  expect(readRemembered(strange).get('A')).toMatchObject({ figures: {}, news: [] });
}); // prettier-ignore
