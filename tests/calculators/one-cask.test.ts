// One cask on every page: what the line has in it at the end of its years is what each sum expects.
import { expect, test } from 'vitest';
import type { AnyCalculator, AnyGiven } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import type { House } from '../../src/core/line/house.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { figureValue } from '../../src/house/prose.ts';
import { answer, apart } from '../core/draw.ts';

/** What a calculator has in its fields for a house, unrounded. */
function fieldsOf({ inputs }: AnyCalculator, now: Line): AnyGiven {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [
      name,
      'value' in input
        ? input.value
        : 'house' in input
          ? now.house[input.house]
          : figureValue(now, input.from),
    ]),
  );
}

const houses = [{}, { indrink: 5, caskResidue: 4, filterLoss: 3 }, { storeHumidity: 50, yearsInWood: 20 }];

test.each(houses)('the sums of a cask agree with the line: %j', (change) => {
  const house = { ...builtInHouse, ...change } as House;
  const now = answer(line(house));
  const { casks, matured, filling } = now;
  const inCask = (matured.alcohol + matured.inCasks) / casks.perMash;
  const result = (id: string, own: Readonly<Record<string, number>>) => {
    const calculator = calculators.find((one) => one.id === id)!;
    return calculator.compute({ ...fieldsOf(calculator, now), ...own }) as Record<string, number>;
  };
  const size = casks.meanSize;
  const same = { size, strength: filling.strength };
  expect(apart(result('cask-through-years', same)['alcohol']!, inCask)).toBeLessThan(1e-9);
  expect(apart(result('cask-in-the-store', { ...same, measuredOn: size })['alcohol']!, inCask)).toBeLessThan(
    1e-9,
  );
  const regauged = { filled: size, filledAt: filling.strength, years: house.yearsInWood };
  for (const id of ['regauge-by-weight', 'regauge-by-dip'])
    expect(apart(result(id, regauged)['expected']!, inCask), id).toBeLessThan(1e-9);
});

test.each(houses)(
  'bottles of the same spirit are as many on the page of the sum as in the line: %j',
  (change) => {
    const house = { ...builtInHouse, ...change } as House;
    const now = answer(line(house));
    const { matured, bottling } = now;
    const calculator = calculators.find(({ id }) => id === 'casks-and-bottles')!;
    const own = { volume: matured.volume, from: matured.strength, to: bottling.strength };
    const { bottles } = calculator.compute({ ...fieldsOf(calculator, now), ...own }) as Record<
      string,
      number
    >;
    expect(bottles).toBe(Math.floor(bottling.bottles));
  },
);
