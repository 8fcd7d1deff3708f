// The stock of a store that is filled every year.
import { formatCount, formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { buildStock } from '../../core/maturing/warehouse.ts';
import { afterFirstDrink } from '../../core/maturing/to-bottle.ts';
import { litres20, litresOfAlcohol, count, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { indrinkInput } from './store.ts';

interface Given {
  readonly casks: Quantity<'count'>;
  readonly size: Quantity<'volume'>;
  readonly strength: Quantity<'strength'>;
  readonly indrink: Quantity<'percent'>;
  readonly years: Quantity<'years'>;
  readonly loss: Quantity<'percent'>;
}

/** Pure alcohol in a cask once the dry wood has drunk. */
const inCask = ({ size, strength, indrink }: Given) =>
  litresOfAlcohol((afterFirstDrink(litres20(size), indrink) * strength) / 100);
const stock = (given: Given, span: number) =>
  buildStock({ filled: given.casks, alcohol: inCask(given), years: given.years, loss: given.loss }, span);

export default defineCalculator({
  id: 'warehouse',
  stage: 'maturing',
  title: 'The warehouse, year by year',
  purpose: 'How the stock grows, and what the air takes of it.',
  sources: ['derived'],
  cautions: ['ethanol-vapour'],
  inputs: {
    casks: {
      kind: 'count',
      label: 'Casks filled in a year',
      range: [1, 1_000_000],
      step: 10,
      from: 'casks.perYear',
    },
    size: { kind: 'volume', label: 'Average cask', range: [1, 700], step: 5, from: 'casks.meanSize' },
    strength: { kind: 'strength', label: 'Filled at', range: [1, 80], step: 0.1, from: 'filling.strength' },
    years: { house: 'yearsInWood', range: [1, 80] },
    loss: { house: 'alcoholLoss' },
    indrink: indrinkInput,
  },
  main: ['casks', 'size', 'strength', 'years'],
  outputs: {
    stock: { kind: 'count', label: 'Casks in the full store' },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol in them', digits: 0 },
    lost: { kind: 'alcohol', label: 'Pure alcohol to the air in a year', digits: 0 },
    lostSpirit: { kind: 'volume20', label: 'as spirit at filling strength', digits: 0 },
    lostCasks: { kind: 'count', label: 'or as full casks', digits: 1 },
    emptied: { kind: 'alcohol', label: 'Pure alcohol taken out in a year', digits: 0 },
  },
  compute: (given) => {
    const whole = Math.ceil(given.years);
    const full = stock(given, whole + 1).at(-1)!;
    return {
      stock: full.casks,
      alcohol: full.alcohol,
      lost: full.lost,
      lostSpirit: litres20((100 * full.lost) / given.strength),
      lostCasks: count((100 * full.lost) / given.strength / given.size),
      emptied: full.emptied,
    };
  },
  steps: (given, result) => {
    const filled = given.casks * inCask(given);
    const left = 1 - given.loss / 100;
    return [
      `Filled in a year: ${w(given.casks, 9)} casks × ${w(given.size)} L × ${w(given.strength)} ÷ 100 × (1 − ${w(given.indrink / 100)}) = ${n(filled, 0)} L of pure alcohol, once the wood has drunk`,
      `Casks in the store, once it is full: ${w(given.casks, 9)} × ${given.years} = ${n(result.stock, 0)}`,
      `Alcohol in them, just after a filling: ${n(filled, 0)} × (1 + r + r² + … ) for ${formatCount(given.years, 'year')}, r = ${w(left)}: ${n(result.alcohol, 0)} L`,
      given.loss > 1e-6
        ? `The same in one go: ${w(filled, 9)} × (1 − ${w(left ** given.years, 9)}) ÷ ${w(given.loss / 100)} = ${n((filled * (1 - left ** given.years)) / (given.loss / 100), 0)} L`
        : 'With no loss every year counts whole',
      `The air takes ${n(given.loss, 1)} % of that in the next year: ${n(result.lost, 0)} L, and ${n(result.emptied, 1)} + ${n(result.lost, 1)} = ${n(filled, 0)} L, as much as was filled`,
      `The loss is held at ${w(given.loss)} % of the alcohol in every year; followed with the strength and the mass in the cask, as the house’s own figures are, it comes out a little different`,
    ];
  },
  remark: (given, { stock, lostCasks }) =>
    `After ${formatCount(given.years, 'year')} the store is full, at ${n(stock, 0)} casks: as many leave as come. Of each year’s ${n(given.casks, 0)} casks the air takes as much alcohol as ${n(lostCasks, 1)} full ones hold. How the store is aired for so much vapour is settled by your fire code and your site’s procedures.`,
  chart: (given) => {
    const span = Math.min(80, given.years + 5);
    const record = stock(given, span);
    return {
      caption: 'Pure alcohol in the store, just after each year’s filling',
      as: 'bars',
      columns: [
        { kind: 'years', label: 'Year', values: record.map(({ year }) => year) },
        { kind: 'alcohol', label: 'Pure alcohol', values: record.map(({ alcohol }) => alcohol) },
        { kind: 'count', label: 'Casks', values: record.map(({ casks }) => casks) },
        { kind: 'alcohol', label: 'Lost in the next year', values: record.map(({ lost }) => lost) },
      ],
    };
  },
  examples: [
    {
      given: { casks: 100, size: 200, strength: 50, indrink: 0, years: 3, loss: 15 },
      gives: { emptied: 6141.25 },
      within: 1e-9,
      source: 'falling-value',
      note: '10,000 that loses 15 % a year is 6,141.25 after three, here litres of pure alcohol in a hundred casks',
    },
    {
      given: { casks: 1000, size: 200, strength: 63.5, indrink: 0, years: 10, loss: 2 },
      gives: { stock: 10_000, alcohol: 1_161_600, lost: 23_232, emptied: 103_768, lostCasks: 182.93 },
      within: 2e-5,
      source: 'derived',
      note: '127 L × 0.98 to the tenth = 103.768 (six figures); 1,000 × (127 − 103.768) are lost a year, which is 2 % of the stock, by the geometric series',
    },
    {
      given: { casks: 1000, size: 200, strength: 63.5, indrink: 0, years: 3, loss: 0 },
      gives: { stock: 3000, alcohol: 381_000, lost: 0, emptied: 127_000 },
      within: 1e-9,
      source: 'derived',
      note: 'without loss three years of 127,000 L lie in the store',
    },
  ],
});
