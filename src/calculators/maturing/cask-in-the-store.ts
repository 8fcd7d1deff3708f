// A cask in another store, and of another size, than the one on which the loss was found.
import { formatCount, formatNumber as n } from '../../core/format.ts';
import { ageCask, lossInStore, timesFaster, type CaskPlan } from '../../core/maturing/cask.ts';
import { vapourInTheStore } from '../../core/maturing/vapour-in-the-store.ts';
import { afterFirstDrink } from '../../core/maturing/to-bottle.ts';
import { litres20, litresOfAlcohol, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { indrinkInput, storeInputs, storeOf } from './store.ts';

interface Given {
  readonly size: Quantity<'volume'>;
  readonly measuredOn: Quantity<'volume'>;
  readonly strength: Quantity<'strength'>;
  readonly indrink: Quantity<'percent'>;
  readonly loss: Quantity<'percent'>;
  readonly humidity: Quantity<'percent'>;
  readonly steady: Quantity<'percent'>;
  readonly temperature: Quantity<'temperature'>;
  readonly measuredAt: Quantity<'temperature'>;
  readonly years: Quantity<'years'>;
}

const plan = (given: Given): CaskPlan => ({
  volume: afterFirstDrink(litres20(given.size), given.indrink),
  strength: given.strength,
  cask: { size: given.size, measuredOn: given.measuredOn },
  store: { ...storeOf(given), temperature: given.temperature, measuredAt: given.measuredAt },
  years: given.years,
});

const HOT = 20; // °C, from which a store is told what the sum leaves out; this handbook's own choice
const LEFT_OUT =
  'Hot places are said to lose 6 to 12 % (common practice), up to about twice what this sum says. It knows still air, a steady temperature and no rack under a hot roof: swings of ten degrees add only a fourteenth, a breathing head space a few tenths of a per cent. Regauge casks there.';

export default defineCalculator({
  id: 'cask-in-the-store',
  stage: 'maturing',
  title: 'The same spirit in another store',
  purpose: 'How warmth, damp and cask size change the loss.',
  sources: ['conner-2003', 'oxford-wine', 'de-nevers', 'common-practice', 'derived'],
  cautions: ['ethanol-vapour'],
  inputs: {
    size: { kind: 'volume', label: 'Cask, filled to', range: [20, 700], step: 10, from: 'casks.meanSize' },
    strength: { kind: 'strength', label: 'Filled at', range: [1, 80], step: 0.1, from: 'filling.strength' },
    indrink: indrinkInput,
    temperature: {
      kind: 'temperature',
      label: 'Temperature of this store',
      range: [0, 40],
      step: 1,
      value: 10,
    },
    humidity: storeInputs.humidity,
    loss: storeInputs.loss,
    measuredAt: {
      kind: 'temperature',
      label: 'Temperature where the loss was found',
      range: [0, 40],
      step: 1,
      value: 10,
    },
    measuredOn: {
      kind: 'volume',
      label: 'Cask that it was found on, filled to',
      range: [20, 700],
      step: 10,
      from: 'casks.meanSize',
    },
    steady: storeInputs.steady,
    years: { label: 'Years', house: 'yearsInWood' },
  },
  main: ['size', 'strength', 'temperature', 'humidity', 'years'],
  outputs: {
    volume: { kind: 'volume20', label: 'Left in the cask', digits: 1 },
    strength: { kind: 'strength', label: 'Strength', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol left' },
    lost: { kind: 'alcohol', label: 'Pure alcohol gone to the air' },
    lossHere: { kind: 'percent', label: 'Alcohol lost in a year, here', digits: 2 },
    ethanolPressure: { kind: 'pressure', label: 'Alcohol vapour over the wood', digits: 2 },
    waterPressure: { kind: 'pressure', label: 'Water vapour over the wood', digits: 2 },
    airWater: { kind: 'pressure', label: 'Water vapour in the air', digits: 2 },
  },
  refuse: (given) => {
    const loss = lossInStore(plan(given));
    return loss > 30
      ? `A cask of ${n(given.size, 0)} L at ${n(given.temperature, 1)} °C would lose ${n(loss, 0)} % of its alcohol in a year; this sum stops at 30 %.`
      : undefined;
  },
  compute: (given) => {
    const record = ageCask(plan(given));
    const [filled, last] = [record[0]!, record.at(-1)!];
    const vapour = vapourInTheStore(given.strength, given.temperature, given.humidity);
    return {
      volume: last.volume,
      strength: last.strength,
      alcohol: last.alcohol,
      lost: litresOfAlcohol(filled.alcohol - last.alcohol),
      lossHere: lossInStore(plan(given)),
      ethanolPressure: vapour.ethanol,
      waterPressure: vapour.water,
      airWater: vapour.waterInAir,
    };
  },
  steps: (given, result) => {
    const times = timesFaster(plan(given));
    const wood = (given.measuredOn / given.size) ** (1 / 3);
    return [
      'Pressure of a vapour over the wood = its activity in the spirit × that of the pure liquid at the temperature of the store',
      `Alcohol ${n(result.ethanolPressure, 2)} kPa, against none in the air; water ${n(result.waterPressure, 2)} kPa, against ${n(result.airWater, 2)} kPa in air of ${n(given.humidity, 0)} %`,
      'Pace = stated pace × vapour pressure here ÷ vapour pressure where the loss was found × (size there ÷ size here) to the power ⅓',
      `From ${n(given.measuredAt, 0)} to ${n(given.temperature, 0)} °C: × ${n(times.ethanol / wood, 3)} for alcohol, × ${n(times.water / wood, 3)} for water; from ${n(given.measuredOn, 0)} to ${n(given.size, 0)} L: × ${n(wood, 3)} for both`,
      `So ${n(given.loss, 2)} % a year becomes 100 × (1 − ${n(1 - given.loss / 100, 4)} to the power ${n(times.ethanol, 3)}) = ${n(result.lossHere, 2)} %`,
      `The wood drinks ${n(given.indrink, 1)} % of the filling first. Followed step by step for ${formatCount(given.years, 'year')}: ${n(result.volume, 1)} L at ${n(result.strength, 1)} % vol`,
    ];
  },
  remark: (given, result) => {
    const after = `over ${formatCount(given.years, 'year')}`;
    if (result.volume > given.size)
      return 'By these figures the cask would take in more from the air than it loses, and overflow: the two humidities cannot both be right.';
    if (result.volume < 0.01 * given.size) return `The cask is all but empty ${after}.`;
    const change = result.strength - given.strength;
    const hot = given.temperature >= HOT && given.temperature > given.measuredAt ? ` ${LEFT_OUT}` : '';
    if (Math.abs(change) < 0.05)
      return `The strength stays the same ${after}: alcohol and water leave in the proportion in which they lie in the cask.${hot}`;
    return change < 0
      ? `The strength falls by ${n(-change, 1)} % vol ${after}. The air is damp: it holds ${n(result.airWater, 2)} kPa of water against ${n(result.waterPressure, 2)} pressing out of the wood, so ${result.airWater > result.waterPressure ? 'water comes in rather than goes' : 'little water leaves'}, while nothing in the air holds the alcohol back.${hot}`
      : `The strength rises by ${n(change, 1)} % vol ${after}. The air is dry: it holds ${n(result.airWater, 2)} kPa of water against ${n(result.waterPressure, 2)} pressing out of the wood, so water leaves faster than its share.${hot}`;
  },
  chart: (given) => {
    const record = ageCask(plan(given));
    return {
      caption: 'Strength of the cask in this store, year by year',
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
      given: {
        size: 200,
        measuredOn: 200,
        strength: 63.5,
        indrink: 0,
        loss: 2,
        humidity: 65,
        steady: 65,
        temperature: 10,
        measuredAt: 10,
        years: 10,
      },
      gives: { alcohol: 103.768, strength: 63.5 },
      within: 1e-5,
      source: 'derived',
      note: '127 L times 0.98 to the tenth power, six figures; at the steady humidity the strength stands and the loss compounds',
    },
    {
      given: {
        size: 50,
        measuredOn: 200,
        strength: 63.5,
        indrink: 0,
        loss: 2,
        humidity: 65,
        steady: 65,
        temperature: 10,
        measuredAt: 10,
        years: 10,
      },
      gives: { lossHere: 3.156, alcohol: 23.039 },
      within: 5e-4,
      source: 'derived',
      note: 'a quarter of the size has the cube root of 4 = 1.5874 times the wood to a litre: 31.75 L × 0.98 to the power 15.874, by logarithms',
    },
    {
      given: {
        size: 200,
        measuredOn: 200,
        strength: 1,
        indrink: 0,
        loss: 2,
        humidity: 99,
        steady: 65,
        temperature: 15,
        measuredAt: 15,
        years: 1,
      },
      gives: { waterPressure: 1.705, airWater: 1.688 },
      within: 0.016,
      source: 'fao-56',
      note: 'water at 15 °C: 1.705 kPa, and 99 % of it; at 1 % vol the spirit is all but water, 0.3 % less, and the constants used here, fitted up to the boil, lie 1.2 % low so far down',
    },
  ],
});
