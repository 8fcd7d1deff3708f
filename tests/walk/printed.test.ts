// Printed cards of a walk: kept with it, held against the house as a card says its figures, and stale when a card printed now would differ.
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { cardFigures, saidOnCard } from '../../src/house/card-figures.ts';
import { figureValue } from '../../src/house/prose.ts';
import { lineIfAny } from '../../src/house/line-of.ts';
import {
  answersMoved,
  movedOn,
  withoutPrinted,
  withPrinted,
  type SaysOnCard,
} from '../../src/walk/printed.ts';
import { decodeWalk, encodeWalk } from '../../src/walk/text.ts';
import { firstWalk, mostInWalk, type PrintedCard, type Walk } from '../../src/walk/walk.ts';

/** What a card of Harrowmere says whose heart ends elsewhere. */
const cardsOf =
  (heartEnd: number, mark?: string): SaysOnCard =>
  (figure, told) => {
    const line = lineIfAny({ ...builtInHouse, heartEnd } as typeof builtInHouse)!;
    const card = cardFigures.find(({ id }) => id === figure)!;
    const value = told ?? figureValue(line, card.path);
    return { value, says: saidOnCard(card, line, value), mark };
  };
const ids = ['heartEnd', 'heartStrength', 'casksPerYear'] as const;
const cardOf = (says: SaysOnCard): PrintedCard => ({
  room: 'Still house',
  on: '2026-11-30',
  house: 'Harrowmere',
  figures: ids.flatMap((figure) => {
    const now = says(figure);
    return now ? [{ figure, value: now.value, says: now.says }] : [];
  }),
  answers: [{ ask: 'distilling-why-copper', says: 'Copper takes out sulphur.' }],
});
const first = firstWalk('A walk');

test('the heart’s end moves from 62 to 60 %: the card tells it with what it was and is, and stands again when it is printed anew', () => {
  const card = cardOf(cardsOf(62));
  expect(movedOn(card.figures, cardsOf(62))).toEqual([]);
  const moved = movedOn(card.figures, cardsOf(60));
  expect(moved[0]!.was).toMatch(/^62\b/);
  expect(moved[0]!.is).toMatch(/^60\b/);
  expect(moved[0]!.label).toBe('Strength at which the heart ends');
  expect(moved.length).toBeGreaterThan(1); // a longer heart is weaker too, and fills other casks
  expect(movedOn(cardOf(cardsOf(60)).figures, cardsOf(60))).toEqual([]);
});

test('units chosen since, and a change too small to be seen on a card, make nothing stale; another mark does', () => {
  const { figures } = cardOf(cardsOf(62));
  const inProof: SaysOnCard = (figure, told) => {
    const now = cardsOf(62)(figure, told)!;
    return { ...now, says: `${now.value * 2} proof` };
  };
  expect(movedOn(figures, inProof)).toEqual([]);
  expect(movedOn([{ figure: 'casksPerYear', value: 1000, says: '1,000 casks' }], (_, told = 1000.1) => ({ value: told, says: `${Math.round(told)} casks`, mark: undefined }))).toEqual([]); // prettier-ignore
  expect(movedOn(figures.slice(0, 1), cardsOf(62, 'as counted'))[0]!.is).toMatch(/\(as counted\)$/);
  expect(movedOn(figures, cardsOf(62, 'as measured'))).toEqual([]);
  expect(movedOn(figures.slice(0, 1), () => undefined)).toEqual([{ label: 'Strength at which the heart ends', was: figures[0]!.says }]); // prettier-ignore
});

test('a figure whose words go beyond its number is not told with the same words on both sides', () => {
  // Of the casks in the store a card adds “once the store is full”, which another value of them is not said with.
  const figure = 'casksInStore';
  const card = cardFigures.find(({ id }) => id === figure)!;
  const line = lineIfAny(builtInHouse)!;
  const says: SaysOnCard = (_, told) => ({
    value: told ?? figureValue(line, card.path),
    says: saidOnCard(card, line, told),
    mark: undefined,
  });
  const now = says(figure)!;
  expect(now.says).toContain('once the store is full');
  expect(movedOn([{ figure, value: now.value, says: now.says }], says)).toEqual([]);
  expect(movedOn([{ figure, value: 2 * now.value, says: 'about ten casks' }], says)).toHaveLength(1);
});

test('another answer on the back is told; a question that the book has no more is not', () => {
  const card = cardOf(cardsOf(62));
  expect(answersMoved(card, () => 'Copper takes out sulphur.')).toEqual([]);
  expect(answersMoved(card, () => 'Copper conducts heat.')).toEqual(['distilling-why-copper']);
  expect(answersMoved(card, () => undefined)).toEqual([]);
});

test('a card is kept once a room, comes back from a file, and a walk without any is written as before', () => {
  const [one, other] = [cardOf(cardsOf(62)), cardOf(cardsOf(60))];
  const walk = withPrinted(withPrinted(first, [one, { ...one, room: 'Mill', saidIn: 'American' }]), [other]);
  expect(walk.printed?.map(({ room }) => room)).toEqual(['Mill', 'Still house']);
  expect(walk.printed?.[1]).toEqual(other);
  expect(decodeWalk(encodeWalk(walk))).toEqual({ walk, problems: [] });
  expect(withoutPrinted(withoutPrinted(walk, 'Mill'), 'Still house')).toEqual(first);
  expect(encodeWalk(first)).not.toContain('printed');
  const many = Array.from({ length: mostInWalk.printed + 1 }, (_, i) => ({ ...one, room: `Room ${i}` }));
  expect(withPrinted(first, many).printed).toHaveLength(mostInWalk.printed);
});

test('a printed card that cannot be read is left out and told of, and the walk is read', () => {
  const card = cardOf(cardsOf(62));
  for (const bad of [
    { ...card, on: '30 November' },
    { ...card, on: '2026-13-01' },
    { ...card, room: '' },
    { ...card, house: 7 },
    { ...card, saidIn: 'Roman' },
    { ...card, figures: [{ figure: 'nothing', value: 1, says: '1' }] },
    { ...card, figures: [{ figure: 'heartEnd', value: '62', says: '62' }] },
    { ...card, figures: {} },
    { ...card, answers: [{ ask: 1, says: '' }] },
    null,
    'card',
  ]) {
    const text = JSON.stringify({ ...(JSON.parse(encodeWalk(first)) as Walk), printed: [bad, { ...card, room: 'Mill' }] }); // prettier-ignore
    const read = decodeWalk(text);
    if ('problem' in read) throw new Error(read.problem);
    expect(read.walk.printed?.map(({ room }) => room)).toEqual(['Mill']);
    expect(read.problems).toHaveLength(1);
  }
  const twice = decodeWalk(JSON.stringify({ ...(JSON.parse(encodeWalk(first)) as Walk), printed: [card, card] })); // prettier-ignore
  expect('problem' in twice ? 0 : twice.problems.length).toBe(1);
});
