// Malt, the barley behind it, and the fields behind that.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import {
  alcoholFromMalt,
  harvestForMalt,
  harvestFromBarley,
  harvestFromLand,
} from '../../core/malting/land.ts';
import { quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'barley-and-land',
  stage: 'malting',
  title: 'Malt, barley and land',
  purpose:
    'Follows malt back to the barley bought and the hectares sown, or forward again, with the alcohol a hectare could give.',
  sources: ['common-practice', 'memory', 'derived'],
  inputs: {
    known: {
      label: 'Start from',
      options: { malt: 'the malt ordered', barley: 'the barley bought', land: 'the land sown' },
      value: 'malt',
    },
    malt: {
      kind: 'mass',
      label: 'Malt ordered',
      range: [10, 160_000_000],
      step: 1000,
      from: 'pace.maltPerYear',
      usedWhen: { choice: 'known', is: ['malt'] },
    },
    barley: {
      kind: 'mass',
      label: 'Barley bought',
      range: [10, 400_000_000],
      step: 1000,
      value: 500_000,
      usedWhen: { choice: 'known', is: ['barley'] },
    },
    land: {
      kind: 'land',
      label: 'Land sown',
      range: [0.01, 100_000],
      step: 1,
      value: 100,
      usedWhen: { choice: 'known', is: ['land'] },
    },
    screenings: { kind: 'percent', label: 'Screenings', range: [0, 40], step: 0.5, value: 7 },
    barleyMoisture: { house: 'barleyMoisture' },
    maltMoisture: { house: 'maltMoisture' },
    loss: { label: 'Dry matter lost', house: 'maltingLoss' },
    harvest: { kind: 'harvest', label: 'Barley yield', range: [0.5, 15], step: 0.1, value: 6 },
    spiritYield: {
      kind: 'yield',
      label: 'Spirit yield',
      range: [100, 560],
      step: 1,
      from: 'malt.spiritYield',
    },
  },
  main: ['known', 'malt', 'barley', 'land', 'screenings', 'spiritYield'],
  outputs: {
    maltMade: { kind: 'mass', label: 'Malt' },
    steeped: { kind: 'mass', label: 'Barley steeped' },
    bought: { kind: 'mass', label: 'Barley to buy' },
    area: { kind: 'land', label: 'Land' },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol it could give', digits: 0 },
    perHectare: { kind: 'alcoholPerLand', label: 'From a hectare' },
  },
  compute: ({ known, malt, barley, land, loss, spiritYield, ...rest }) => {
    const growing = { ...rest, dryLoss: loss };
    const chain =
      known === 'malt'
        ? harvestForMalt(malt, growing)
        : known === 'barley'
          ? harvestFromBarley(barley, growing)
          : harvestFromLand(land, growing);
    const alcohol = alcoholFromMalt(chain.malt, spiritYield);
    return {
      maltMade: chain.malt,
      steeped: chain.steeped,
      bought: chain.bought,
      area: chain.land,
      alcohol,
      perHectare: quantity('alcoholPerLand', alcohol / chain.land),
    };
  },
  steps: (given, result) => {
    const part = ((1 - given.barleyMoisture / 100) * (1 - given.loss / 100)) / (1 - given.maltMoisture / 100);
    return [
      'A kilogram of barley steeped makes (100 − its moisture) × (100 − loss) ÷ (100 − moisture of the malt) ÷ 100 kg of malt',
      `(100 − ${given.barleyMoisture}) × (100 − ${given.loss}) ÷ (100 − ${given.maltMoisture}) ÷ 100 = ${w(part)} kg; so ${n(result.steeped, 0)} kg of barley make ${n(result.maltMade, 0)} kg of malt`,
      'Barley bought = barley steeped ÷ (100 − screenings) × 100',
      `${w(result.steeped, 8)} ÷ (100 − ${given.screenings}) × 100 = ${n(result.bought, 0)} kg`,
      'Land = barley bought, in tonnes, ÷ barley yield',
      `${w(result.bought / 1000, 8)} ÷ ${given.harvest} = ${w(result.area)} ha`,
      'Pure alcohol = malt, in tonnes, × spirit yield; a hectare’s share is that ÷ land',
      `${w(result.maltMade / 1000, 8)} × ${w(given.spiritYield)} = ${n(result.alcohol, 0)} L`,
      `A hectare gives ${w(result.alcohol, 7)} ÷ ${w(result.area, 7)} = ${n(result.perHectare, 0)} L`,
    ];
  },
  remark: (given, { bought, maltMade }) => {
    const ratio = `A tonne of malt takes ${n(bought / maltMade, 2)} t of barley bought`;
    return given.harvest < 5.5 || given.harvest > 6.5
      ? `${ratio}. For spring barley 5.5 to 6.5 t/ha is usual in one northern country, a figure from memory; ask why this yield is ${n(given.harvest, 1)} t/ha.`
      : `${ratio}. The yield is weighed as bought, at the moisture above; published yields may be given at another.`;
  },
  examples: [
    {
      given: {
        known: 'barley',
        malt: 1000,
        barley: 1000,
        land: 1,
        screenings: 0,
        barleyMoisture: 12,
        maltMoisture: 5,
        loss: 10.4,
        harvest: 6,
        spiritYield: 410,
      },
      gives: { maltMade: 830, perHectare: 2042 },
      within: 0.001,
      source: 'common-practice',
      note: 'a tonne of barley gives 830 kg of malt; 6 t/ha × 0.83 × 410 L/t is about 2,000 L a hectare, here 2,042',
    },
    {
      given: {
        known: 'malt',
        malt: 2_439_024.4,
        barley: 1000,
        land: 1,
        screenings: 0,
        barleyMoisture: 12,
        maltMoisture: 5,
        loss: 10.4,
        harvest: 6,
        spiritYield: 410,
      },
      gives: { alcohol: 1_000_000, area: 489.764 },
      within: 0.0001,
      source: 'derived',
      note: 'a worked sum: a million litres at 410 L/t and 6 t/ha; it rounds 0.82998 t of malt a tonne of barley to 0.83',
    },
    {
      given: {
        known: 'malt',
        malt: 1000,
        barley: 1000,
        land: 1,
        screenings: 7.32,
        barleyMoisture: 12,
        maltMoisture: 5,
        loss: 10.4,
        harvest: 6,
        spiritYield: 410,
      },
      gives: { bought: 1300 },
      within: 0.001,
      source: 'common-practice',
      note: 'the other rule of the trade, 1.3 t of barley a tonne of malt, is met if 7.3 % is thrown out',
    },
    {
      given: {
        known: 'barley',
        malt: 1000,
        barley: 1000,
        land: 1,
        screenings: 0,
        barleyMoisture: 25,
        maltMoisture: 14,
        loss: 0,
        harvest: 6,
        spiritYield: 410,
      },
      gives: { maltMade: 872 },
      within: 6e-4,
      source: 'irri-moisture',
      note: '1,000 kg of paddy at 25 % are 872 kg at 14 %, printed whole: the same sum where nothing but water is lost',
    },
  ],
});
