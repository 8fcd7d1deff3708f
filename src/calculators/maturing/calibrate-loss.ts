// The two figures of a store from one cask measured twice.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { calibrateLoss, lossAYear } from '../../core/maturing/calibrate.ts';
import { ageCask } from '../../core/maturing/cask.ts';
import { litres, litres20, litresOfAlcohol, quantity, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { indrinkInput } from './store.ts';
import { isRefusal } from '../../core/refusal.ts';

interface Given {
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
  readonly indrink: Quantity<'percent'>;
  readonly foundVolume: Quantity<'volume20'>;
  readonly foundStrength: Quantity<'strength'>;
  readonly years: Quantity<'years'>;
  readonly humidity: Quantity<'percent'>;
}

/** The filling, less what the dry wood drank. */
const after = ({ volume, strength, indrink }: Given) => ({
  volume: litres20(volume * (1 - indrink / 100)),
  strength,
});

export default defineCalculator({
  id: 'calibrate-loss',
  stage: 'maturing',
  title: 'Your store, from a regauge',
  purpose: 'Loss and steady humidity, from a cask measured twice.',
  sources: ['conner-2003', 'derived', 'common-practice'],
  readings: ['foundVolume', 'foundStrength'],
  inputs: {
    volume: { kind: 'volume20', label: 'Filled with', range: [10, 700], step: 1, value: 200 },
    strength: { kind: 'strength', label: 'Filled at', range: [40, 80], step: 0.1, value: 63.5 },
    indrink: indrinkInput,
    years: { kind: 'years', label: 'Years until the regauge', range: [1, 60], step: 1, value: 10 },
    foundVolume: { kind: 'volume20', label: 'Volume found', range: [1, 700], step: 1, value: 171 },
    foundStrength: { kind: 'strength', label: 'Strength found', range: [20, 95], step: 0.1, value: 59.3 },
    humidity: { kind: 'percent', label: 'Humidity over those years', range: [20, 98], step: 1, value: 80 },
  },
  main: ['volume', 'strength', 'years', 'foundVolume', 'foundStrength'],
  outputs: {
    loss: { kind: 'percent', label: 'Alcohol lost in a year, at filling strength', digits: 2 },
    steady: { kind: 'percent', label: 'Humidity at which strength is steady', digits: 1 },
    mean: { kind: 'percent', label: 'Alcohol lost in an average year', digits: 2 },
    lost: { kind: 'alcohol', label: 'Pure alcohol gone, to wood and air' },
    fall: { kind: 'strength', label: 'Strength lost in an average year', digits: 2 },
  },
  refuse: (given) =>
    given.foundVolume > given.volume
      ? `${n(given.volume, 1)} L were filled and ${n(given.foundVolume, 1)} L found; a cask does not fill itself.`
      : undefined,
  compute: (given) => {
    const filled = after(given);
    const found = { volume: given.foundVolume, strength: given.foundStrength };
    const calibration = calibrateLoss({ filled, found, years: given.years, humidity: given.humidity });
    if (isRefusal(calibration)) return calibration;
    const left = given.foundVolume * given.foundStrength;
    return {
      loss: calibration.alcoholLoss,
      steady: calibration.steadyHumidity,
      mean: lossAYear(filled.volume * filled.strength, left, given.years),
      lost: litresOfAlcohol((given.volume * given.strength - left) / 100),
      fall: quantity('strength', (given.strength - given.foundStrength) / given.years),
    };
  },
  steps: (given, result) => {
    const filled = after(given);
    return [
      'Alcohol gone = (filled × its strength − found × its strength) ÷ 100',
      `(${w(given.volume)} × ${w(given.strength)} − ${w(given.foundVolume)} × ${w(given.foundStrength)}) ÷ 100 = ${n(result.lost, 2)} L`,
      `The wood drank ${n(given.indrink, 1)} % in the first days; ${n(filled.volume, 1)} L were left to the air`,
      `Mean loss = 100 × (1 − (alcohol found ÷ alcohol left to the air) to the power (1 ÷ years)): 100 × (1 − (${w((given.foundVolume * given.foundStrength) / 100)} ÷ ${w((filled.volume * given.strength) / 100)}) to the power (1 ÷ ${given.years})) = ${n(result.mean, 2)} %`,
      `The water found fixes the steady humidity: with ${n(result.steady, 1)} %, as much water has left by the time the alcohol has fallen so far`,
      `The years fix the loss: ${n(result.loss, 2)} % a year at filling strength`,
    ];
  },
  remark: (_, { loss, steady }) => {
    const panel =
      loss > 15 || steady < 40
        ? 'That is beyond what a house can have: check both readings before you believe it.'
        : 'Set both in your house’s figures, and the whole book reckons with your own store.';
    const usual =
      steady >= 60 && steady <= 70
        ? ''
        : ' The trade says 60–70 % for a steady strength; several casks will show whether yours differs.';
    return `${panel}${usual} One cask proves little: take the middle of several, of one row and one age.`;
  },
  chart: (given, { loss, steady }) => {
    const filled = after(given);
    const record = ageCask({
      ...filled,
      cask: { size: litres(given.volume) },
      store: { alcoholLoss: loss, humidity: given.humidity, steadyHumidity: steady },
      years: given.years,
    });
    return {
      caption: 'Strength between the two readings',
      below: 2,
      columns: [
        { kind: 'years', label: 'Year', values: record.map(({ year }) => year) },
        { kind: 'strength', label: 'Strength', values: record.map(({ strength }) => strength) },
        { kind: 'volume20', label: 'Volume', values: record.map(({ volume }) => volume) },
      ],
      points: [
        [0, given.strength],
        [given.years, given.foundStrength],
      ],
    };
  },
  examples: [
    {
      given: {
        volume: 200,
        strength: 63.5,
        indrink: 0,
        years: 3,
        foundVolume: 122.825,
        foundStrength: 63.5,
        humidity: 65,
      },
      gives: { mean: 15, loss: 15 },
      within: 1e-6,
      source: 'falling-value',
      note: '10,000 that loses 15 % a year is 6,141.25 after three: 200 × 0.614125 = 122.825 L found, at an unchanged strength',
    },
    {
      given: {
        volume: 200,
        strength: 63.5,
        indrink: 0,
        years: 10,
        foundVolume: 172,
        foundStrength: 60.3,
        humidity: 80,
      },
      gives: { lost: 23.284, mean: 2.00494, fall: 0.32 },
      within: 1e-5,
      source: 'derived',
      note: '(200 × 63.5 − 172 × 60.3) ÷ 100; the mean loss is 1 − (103.716 ÷ 127) to the power 0.1, by logarithms, six figures',
    },
    {
      given: {
        volume: 200,
        strength: 63.5,
        indrink: 0,
        years: 10,
        foundVolume: 163.4146,
        foundStrength: 63.5,
        humidity: 65,
      },
      gives: { loss: 2, steady: 65 },
      within: 1e-5,
      source: 'derived',
      note: '200 L × 0.98 to the tenth power at an unchanged strength: 2 % a year, and the store’s own humidity is the steady one; the volume has seven figures',
    },
  ],
});
