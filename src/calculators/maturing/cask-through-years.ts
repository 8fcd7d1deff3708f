// A cask from filling to bottling, year by year.
import { formatCount, formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { ageCask, type CaskPlan } from '../../core/maturing/cask.ts';
import { afterFirstDrink } from '../../core/maturing/to-bottle.ts';
import { litres20, litresOfAlcohol, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { indrinkInput } from './store.ts';

interface Given {
  readonly size: Quantity<'volume'>;
  readonly strength: Quantity<'strength'>;
  readonly indrink: Quantity<'percent'>;
  readonly loss: Quantity<'percent'>;
  readonly humidity: Quantity<'percent'>;
  readonly steady: Quantity<'percent'>;
  readonly years: Quantity<'years'>;
}

const plan = ({ size, strength, indrink, loss, humidity, steady, years }: Given): CaskPlan => ({
  volume: afterFirstDrink(litres20(size), indrink),
  strength,
  cask: { size },
  store: { alcoholLoss: loss, humidity, steadyHumidity: steady },
  years,
});

/** Pure alcohol that the wood leaves to the air. */
const toAir = ({ size, strength, indrink }: Given) => (size * strength * (1 - indrink / 100)) / 100;

export default defineCalculator({
  id: 'cask-through-years',
  stage: 'maturing',
  title: 'A cask through the years',
  purpose: 'Volume, strength and alcohol of one cask, year by year.',
  sources: ['conner-2003', 'de-nevers', 'memory'],
  inputs: {
    size: { kind: 'volume', label: 'Cask, filled to', range: [1, 700], step: 10, value: 200 },
    strength: { kind: 'strength', label: 'Filled at', range: [1, 80], step: 0.1, from: 'filling.strength' },
    loss: { house: 'alcoholLoss' },
    humidity: { house: 'storeHumidity' },
    steady: { house: 'steadyHumidity' },
    years: { label: 'Years', house: 'yearsInWood' },
    indrink: indrinkInput,
  },
  main: ['size', 'strength', 'years', 'loss', 'humidity'],
  outputs: {
    volume: { kind: 'volume20', label: 'Left in the cask', digits: 1 },
    strength: { kind: 'strength', label: 'Strength', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol left' },
    lost: { kind: 'alcohol', label: 'Pure alcohol gone to the air' },
  },
  compute: (given) => {
    const record = ageCask(plan(given));
    const [filled, last] = [record[0]!, record.at(-1)!];
    return {
      volume: last.volume,
      strength: last.strength,
      alcohol: last.alcohol,
      lost: litresOfAlcohol(filled.alcohol - last.alcohol),
    };
  },
  steps: (given, result) => [
    `Filled with ${w(given.size)} × ${w(given.strength)} ÷ 100 = ${w((given.size * given.strength) / 100)} L of pure alcohol; the wood drinks ${given.indrink} %, and ${w(toAir(given))} L are left to the air`,
    `At ${given.loss} % a year for ${formatCount(given.years, 'year')}, about ${w(toAir(given))} × ${w(1 - given.loss / 100)} to the power ${given.years} = ${n(toAir(given) * (1 - given.loss / 100) ** given.years, 1)} L would be left`,
    `Below filling strength the loss of a year is a little more, above it a little less; both losses are taken in proportion to the mass left in the cask; followed month by month, ${n(result.alcohol, 1)} L are left`,
    `Water leaves as the air is drier than the wood; at ${given.humidity} % humidity the cask is at ${n(result.strength, 1)} % vol after ${formatCount(given.years, 'year')}`,
  ],
  chart: (given) => {
    const record = ageCask(plan(given));
    return {
      caption: 'Strength of the cask, year by year',
      below: 2,
      columns: [
        { kind: 'years', label: 'Year', values: record.map(({ year }) => year) },
        { kind: 'strength', label: 'Strength', values: record.map(({ strength }) => strength) },
        { kind: 'volume20', label: 'Volume', values: record.map(({ volume }) => volume) },
        { kind: 'alcohol', label: 'Pure alcohol', values: record.map(({ alcohol }) => alcohol) },
      ],
    };
  },
  examples: [
    {
      given: { size: 200, strength: 63.5, indrink: 0, loss: 15, humidity: 65, steady: 65, years: 3 },
      gives: { alcohol: 77.993875 },
      within: 1e-6,
      source: 'falling-value',
      note: '10,000 that loses 15 % a year is 6,141.25 after three, so of 127 L of pure alcohol 127 × 0.614125 are left',
    },
    {
      given: { size: 200, strength: 63.5, indrink: 0, loss: 2, humidity: 65, steady: 65, years: 10 },
      gives: { alcohol: 103.77 },
      within: 0.005,
      source: 'derived',
      note: '127 L times 0.98 to the tenth power: 2 % a year, compounded',
    },
    {
      given: { size: 200, strength: 63.5, indrink: 2, loss: 2, humidity: 65, steady: 65, years: 10 },
      gives: { alcohol: 101.693, lost: 22.767 },
      within: 1e-5,
      source: 'derived',
      note: '127 L less the 2.54 that the wood drinks, times 0.98 to the tenth power; the rest of 124.46 L goes to the air',
    },
  ],
});
