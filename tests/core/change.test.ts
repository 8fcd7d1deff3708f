// What gives way when one figure of a house changes: extract and alcohol reckoned here from the sugar table's own cubic and by hand.
import { expect, test } from 'vitest';
import { changeHouse, waysOf } from '../../src/core/line/change.ts';
import type { House } from '../../src/core/line/house.ts';
import { line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { answer } from './draw.ts';

type Name = keyof House;
const change = (figure: Name, value: number, gives?: never, house = builtInHouse) =>
  answer(changeHouse(house, figure, value as never, gives));
const lineOf = (house: House) => answer(line(house));
const readings: House = { ...builtInHouse, holds: 'readings' };

/** °P by the older three-term formula of the sugar tables, which shares no coefficient with the core's cubic; from memory. */
const plato = (sg: number) => 668.72 * sg - 463.37 - 205.347 * sg * sg;
const extract = ({ wortVolume, originalGravity }: House) =>
  (wortVolume * 0.9982 * originalGravity * plato(originalGravity)) / 100;

test('twice the malt makes twice the wort, the heart and the bottles', () => {
  const { house, gave } = change('maltPerMash', 3000);
  expect(house.wortVolume).toBeCloseTo(15_000, 6);
  expect(gave).toEqual([{ figure: 'wortVolume', from: 7500, to: house.wortVolume }]);
  const [one, two] = [lineOf(builtInHouse), lineOf(house)];
  expect(two.heart.alcohol / one.heart.alcohol).toBeCloseTo(2, 9);
  expect(two.bottling.bottlesPerYear / one.bottling.bottlesPerYear).toBeCloseTo(2, 3); // whole bottles
});

test('a higher gravity holds the same extract in less wort, or asks for more malt', () => {
  const less = change('originalGravity', 1.06).house;
  expect(extract(less) / extract(builtInHouse)).toBeCloseTo(1, 3);
  expect(less.wortVolume).toBeCloseTo((7500 * (14.282 * 1.058)) / (14.741 * 1.06), -1); // °P of 1.058 and 1.060: NBS Circular C440, from memory
  expect(less.maltPerMash).toBe(1500);
  const more = change('originalGravity', 1.06, 'maltPerMash' as never).house;
  expect(more.wortVolume).toBe(7500);
  expect(more.maltPerMash / 1500).toBeCloseTo(7500 / less.wortVolume, 9);
});

test('for the same extract and the same yeast the alcohol of the wash is the same', () => {
  for (const [figure, value] of [
    ['originalGravity', 1.065],
    ['originalGravity', 1.05],
    ['wortVolume', 7000],
    ['wortVolume', 8200],
  ] as const) {
    const { house } = change(figure, value);
    const [before, after] = [lineOf(builtInHouse), lineOf(house)];
    expect(after.wash.alcohol / before.wash.alcohol).toBeCloseTo(1, 9);
    expect(after.mash.efficiency).toBeCloseTo(before.mash.efficiency, 9);
  }
});

test('wetter malt brings less extract for its weight, by hand', () => {
  const { house } = change('maltMoisture', 6);
  expect(house.solubleExtract).toBeCloseTo((77.5 * 94) / 95.5, 9); // the same dry malt
  expect(house.wortVolume / 7500).toBeCloseTo(94 / 95.5, 9);
});

test('malt that ferments further makes more alcohol in proportion', () => {
  const { house } = change('fermentability', 88);
  const [before, after] = [lineOf(builtInHouse), lineOf(house)];
  expect(after.wash.attenuation.extractUsed / before.wash.attenuation.extractUsed).toBeCloseTo(88 / 87, 9);
  expect(house.finalGravity).toBeLessThan(builtInHouse.finalGravity);
});

test('there and back again is the same house', () => {
  for (const [figure, value] of [
    ['maltPerMash', 4000],
    ['originalGravity', 1.07],
    ['wortVolume', 6000],
    ['maltMoisture', 7],
    ['fermentability', 80],
    ['solubleExtract', 70],
  ] as const) {
    const there = change(figure, value).house;
    const back = answer(changeHouse(there, figure, builtInHouse[figure] as never)).house;
    for (const name of [
      'maltPerMash',
      'solubleExtract',
      'wortVolume',
      'originalGravity',
      'finalGravity',
    ] as const)
      expect(back[name] / builtInHouse[name]).toBeCloseTo(1, 9);
  }
});

test('a house that holds its readings moves one figure alone, and refuses more extract than there is', () => {
  const { house, gave } = answer(changeHouse(readings, 'maltPerMash', 1600 as never));
  expect(gave).toEqual([]);
  expect(house).toEqual({ ...readings, maltPerMash: 1600 });
  expect(changeHouse(readings, 'originalGravity', 1.09 as never)).toHaveProperty('refused');
});

test('a house that holds too much extract already may be mended a step at a time', () => {
  const over = { ...readings, originalGravity: 1.09 } as House;
  expect(answer(changeHouse(over, 'originalGravity', 1.08 as never)).house.originalGravity).toBe(1.08);
  expect(answer(changeHouse(over, 'yearsInWood', 12 as never)).house.yearsInWood).toBe(12);
});

test('what cannot give way says why', () => {
  expect(changeHouse(builtInHouse, 'wortVolume', 900 as never)).toHaveProperty(
    'refused',
    expect.stringContaining('900 L cannot hold'),
  );
  expect(waysOf('heartEnd')).toEqual([]);
});
