// Rounds drawn at random: the same seed gives the same draws, and small spreads agree with the first-order law.
import { expect, test } from 'vitest';
import { roundOf } from '../../src/core/line/line.ts';
import { drawRounds, summarise } from '../../src/core/line/spread.ts';
import { normalRandom, uniformRandom } from '../../src/core/numerics/random.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const heartAlcohol = (change: object) => {
  const round = roundOf({ ...builtInHouse, ...change });
  if ('refused' in round) throw new Error(round.refused);
  return round.heart.alcohol;
};

test('the same seed draws the same, another seed does not', () => {
  const unsure = { heartEnd: 0.2 };
  expect(drawRounds(builtInHouse, unsure, 5, 7)).toEqual(drawRounds(builtInHouse, unsure, 5, 7));
  expect(drawRounds(builtInHouse, unsure, 5, 7)).not.toEqual(drawRounds(builtInHouse, unsure, 5, 8));
});

test('random numbers are spread as they should be', () => {
  const uniform = uniformRandom(3);
  const flat = summarise(Array.from({ length: 20_000 }, uniform))!;
  expect(flat.mean).toBeCloseTo(0.5, 2);
  expect(flat.standard).toBeCloseTo(Math.sqrt(1 / 12), 2);
  const bell = summarise(Array.from({ length: 20_000 }, normalRandom(3)))!;
  expect(bell.mean).toBeCloseTo(0, 1);
  expect(bell.standard).toBeCloseTo(1, 1);
  expect(bell.high).toBeCloseTo(1.96, 1); // 97.5 % point of the normal distribution
});

test('a small ± comes out as slope × ±, as JCGM 100 has it', () => {
  const [volume, gravity] = [40, 0.0004];
  const slope = (name: 'wortVolume' | 'originalGravity', u: number) =>
    (heartAlcohol({ [name]: builtInHouse[name] + u }) - heartAlcohol({ [name]: builtInHouse[name] - u })) / 2;
  const expected = Math.hypot(slope('wortVolume', volume), slope('originalGravity', gravity));
  const drawn = summarise(
    drawRounds(builtInHouse, { wortVolume: volume, originalGravity: gravity }, 2000, 11).values.heartAlcohol,
  )!;
  expect(drawn.standard / expected).toBeGreaterThan(0.95);
  expect(drawn.standard / expected).toBeLessThan(1.05);
  expect(Math.abs(drawn.mean - heartAlcohol({}))).toBeLessThan((4 * expected) / Math.sqrt(2000));
});

test('draws that cannot be are counted', () => {
  const { refused, values } = drawRounds(builtInHouse, { spiritReflux: 0.2 }, 200, 5);
  expect(refused).toBeGreaterThan(20); // a normal of mean 0.1 and ± 0.2 is below nought 31 % of the time
  expect(refused).toBeLessThan(110);
  expect(values.heartVolume.length + refused).toBe(200);
});
