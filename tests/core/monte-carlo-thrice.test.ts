// Rounds drawn of a house that distils three times are those of its own stills, and what its plant says carries a ± too.
import { expect, test } from 'vitest';
import {
  unsureInPlant,
  drawRounds,
  drawnFrom,
  summarise,
  type DrawnHouse,
} from '../../src/core/line/monte-carlo.ts';
import type { Line } from '../../src/core/line/line.ts';
import { drawnOf, settleInPlant } from '../../src/core/plant/drawn.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import type { Plant } from '../../src/core/plant/plant.ts';
import type { House } from '../../src/core/line/house.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { plainPlant, stills } from './plants.ts';

const house = { ...builtInHouse, heartEnd: 72, dilution: 'never' } as House;
const plants: Readonly<Record<string, Plant>> = {
  'three times': { ...plainPlant, scheme: 'thrice' },
  'a part of it': { ...plainPlant, scheme: 'part-thrice', runAgain: 70 },
  'twice, in unequal stills': { ...plainPlant, spiritStills: [stills(1, 3000, 0.05), stills(1, 2000, 0.2)] },
};
const draw = (plant: Plant, unsure: object, count: number, seed = 3, of = house) =>
  drawRounds(
    { ...of, ...drawnOf(plant) } as DrawnHouse,
    unsure,
    count,
    seed,
    undefined,
    settleInPlant(plant, of),
  );
const lineOf = (plant: Plant, change: object = {}) =>
  lineWithPlant({ ...house, ...change } as House, plant) as Line;

test.each(Object.entries(plants))('%s: with no ± every round is the one that the book tells', (_, plant) => {
  const { values, refused } = draw(plant, {}, 2);
  const { heart, charge, feints } = lineOf(plant);
  expect(refused).toBe(0);
  for (const i of [0, 1]) {
    expect(values.heartVolume[i]).toBeCloseTo(heart.volume, 6);
    expect(values.chargeStrength[i]).toBeCloseTo(charge.strength, 8);
    expect(values.feintsVolume[i]).toBeCloseTo(feints.volume, 6);
  }
}); // prettier-ignore

test.each(Object.entries(plants))(
  '%s: twice the wort is twice the heart, so its ± is the heart’s',
  (_, plant) => {
    const part = 0.02; // of the wort; a balanced round grows with what it is fed, by conservation alone
    const { mean, standard } = summarise(draw(plant, { wortVolume: part * house.wortVolume }, 3000).values.heartVolume)!; // prettier-ignore
    expect(standard / mean / part).toBeGreaterThan(0.96);
    expect(standard / mean / part).toBeLessThan(1.04);
  },
);

test.each([
  ['three times', 'strongFeintsEnd', 1],
  ['a part of it', 'runAgain', 2],
] as const)('%s: a small ± of “%s” comes out as slope × ±, as JCGM 100 has it', (name, figure, u) => {
  const plant = plants[name]!;
  const charge = (by: number) => lineOf({ ...plant, [figure]: plant[figure] + by }).charge.strength;
  const expected = Math.abs(charge(u) - charge(-u)) / 2;
  expect(expected).toBeGreaterThan(0.05);
  const { standard } = summarise(draw(plant, { [figure]: u }, 2000).values.chargeStrength)!;
  expect(standard / expected).toBeGreaterThan(0.95);
  expect(standard / expected).toBeLessThan(1.05);
});

test('draws that no still can have are counted, and another plant is another question', () => {
  const plant = plants['three times']!;
  const { refused, values } = draw(plant, { intermediateReflux: 0.16 }, 200);
  expect(refused).toBeGreaterThan(35); // a normal of mean 0.08 and ± 0.16 is below nought 31 % of the time
  expect(values.heartVolume.length + refused).toBe(200);
  expect(drawnFrom(house, {}, plant)).not.toBe(drawnFrom(house, {}));
  expect(drawnFrom(house, { runAgain: 1 }, plant)).not.toBe(drawnFrom(house, { runAgain: 2 }, plant));
  expect(unsureInPlant.thrice).toContain('strongFeintsEnd');
});
