// To add a figure of the house, two files are touched: the table of figures and the built-in house. Here one is added, and every door has it.
import { expect, test, vi } from 'vitest';

vi.mock('../../src/core/figures/mashing.ts', async (original) => {
  const own = await original<typeof import('../../src/core/figures/mashing.ts')>();
  const one = { is: 'set', kind: 'temperature', label: 'Third water', limits: [55, 99], step: 1, meaning: 'Temperature of the third water.', card: true, quoted: { typical: 80, spread: { as: 'own', about: 2, exact: 0.5 } } }; // prettier-ignore
  return { ...own, mashingFigures: { ...own.mashingFigures, thirdWater: one } };
});
vi.mock('../../content/houses/harrowmere.json', async (original) => {
  const { default: house } = await original<{ default: { name: string; figures: object } }>();
  return { default: { ...house, figures: { ...house.figures, thirdWater: 82 } } };
});

test('the house’s table, its text, prose, a card and the quoted figures have the new figure', async () => {
  const { builtInHouse, numberFigures } = await import('../../src/house/figures.ts');
  const { decodeHouse, encodeHouse } = await import('../../src/house/codec.ts');
  const { problemOf } = await import('../../src/house/problem-of.ts');
  const { figureText, quotableInProse } = await import('../../src/house/prose.ts');
  const { cardFigures, saidOnCard } = await import('../../src/house/card-figures.ts');
  const { quotableFigures, measure } = await import('../../src/core/cross-check/quoted.ts');
  const { defineCalculator } = await import('../../src/calculators/define.ts');
  const { builtInLine } = await import('../../src/house/line-of.ts');
  const name = 'thirdWater' as 'lastWater'; // the compiler does not know it

  expect(numberFigures[name]).toMatchObject({ stage: 'mashing', label: 'Third water', range: [55, 99] });
  expect(builtInHouse[name]).toBe(82);
  expect(problemOf(name, 200)).toBe('Third water: “200” was given; it can be from 55 to 99 °C.');
  const kept = decodeHouse(encodeHouse({ name: 'Sallowby', house: { ...builtInHouse, [name]: 90 } as never }));
  expect([kept.problems, kept.house[name]]).toEqual([[], 90]);

  expect(quotableInProse).toContain(`house.${name}`);
  expect(figureText(builtInLine(), `house.${name}`)).toMatch(/^82\s°C$/);
  const card = cardFigures.find(({ label }) => label === 'Third water')!;
  expect(saidOnCard(card, builtInLine())).toBe('82 °C');
  expect(quotableFigures[name as never]).toMatchObject({ kind: 'temperature', range: [55, 99] });
  expect((measure({ [name as never]: { as: "exact", value: 81 } }) as { measured: unknown }).measured).toMatchObject([{ figure: name, spread: 0.5 }]);

  const { inputs } = defineCalculator({ inputs: { water: { house: name } } } as never);
  expect(inputs['water']).toMatchObject({ label: 'Third water', kind: 'temperature', range: [55, 99], step: 1 });
}); // prettier-ignore
