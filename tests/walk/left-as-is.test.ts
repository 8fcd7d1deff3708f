// A sentence that is left as it is stays so in the walk's text, until the house has another of its figures.
import { expect, test } from 'vitest';
import { isLeft, leftAsIs, withLeft, withoutLeft } from '../../src/walk/left-as-is.ts';
import { staleIn, type HouseNow } from '../../src/walk/stale.ts';
import { decodeWalk, encodeWalk } from '../../src/walk/text.ts';
import { firstWalk, mostInWalk, type LeftAsIs, type Walk } from '../../src/walk/walk.ts';

const text = 'We keep 846 litres at 70 per cent.';
const figures = [
  { at: 8, words: '846 litres', figure: 'heartVolume', value: 846 },
  { at: 22, words: '70 per cent', figure: 'heartStrength', value: 70 },
] as const;
const houseOf =
  (heartVolume: number, heartStrength = 70): HouseNow =>
  (figure) => ({ value: figure === 'heartVolume' ? heartVolume : heartStrength, isKnown: true });
const asked = (house: HouseNow): LeftAsIs => {
  const kept = figures.map((each) => ({ ...each, chance: 1 }));
  const [sentence] = staleIn(text, kept, house).sentences;
  return leftAsIs(sentence!, figures, house);
};
const first = firstWalk('A walk');
const read = (walk: Walk): Walk => {
  const found = decodeWalk(encodeWalk(walk));
  if ('problem' in found) throw new Error(found.problem);
  expect(found.problems).toEqual([]);
  return found.walk;
};

test('what is left is known again after it was kept, and asked again when that figure changes, but not when another does', () => {
  const sentence = asked(houseOf(1000));
  expect(sentence).toEqual({ words: text, house: [{ figure: 'heartVolume', value: 1000 }] });
  const walk = read(withLeft(first, sentence));
  expect(isLeft(walk, asked(houseOf(1000)))).toBe(true);
  expect(isLeft(walk, asked(houseOf(1000, 70.2)))).toBe(true);
  expect(isLeft(walk, asked(houseOf(1001)))).toBe(false);
  expect(isLeft(walk, asked(houseOf(1000, 60)))).toBe(false); // that one no longer holds either
  expect(isLeft(walk, { ...sentence, words: 'We keep it.' })).toBe(false);
});

test('a sentence that is asked again leaves nothing behind, and one that is left anew is kept once', () => {
  const walk = withLeft(withLeft(first, asked(houseOf(1000))), asked(houseOf(1200)));
  expect(walk.left).toHaveLength(1);
  expect(isLeft(walk, asked(houseOf(1200)))).toBe(true);
  expect(encodeWalk(withoutLeft(walk, asked(houseOf(1200))))).toBe(encodeWalk(first));
});

test('a very long sentence and very many can be kept and read', () => {
  const long = leftAsIs({ ...staleIn(text, figures.map((each) => ({ ...each, chance: 1 })), houseOf(1000)).sentences[0]!, stood: '😀'.repeat(900) + 'x' }, figures, houseOf(1000)); // prettier-ignore
  expect(isLeft(read(withLeft(first, long)), long)).toBe(true);
  let walk: Walk = first;
  for (let i = 0; i < mostInWalk.left + 9; i++) walk = withLeft(walk, { words: `Sentence ${i}.`, house: [] });
  expect(read(walk).left).toHaveLength(mostInWalk.left);
});
