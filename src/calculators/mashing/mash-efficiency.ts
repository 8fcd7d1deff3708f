// The efficiency of one mash, with its weak worts in the account.
import { formatNumber as n } from '../../core/format.ts';
import { accountOfMash } from '../../core/mashing/mash-account.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'mash-efficiency',
  stage: 'mashing',
  title: 'Efficiency of one mash',
  purpose:
    'Counts the weak wort that a mash was given and the weak wort it passes on, so that one good or poor day is judged fairly.',
  sources: ['sugar-tables', 'derived'],
  cautions: ['hot-liquor'],
  readings: ['givenVolume', 'givenGravity', 'passedVolume', 'passedGravity'],
  inputs: {
    malt: { label: 'Malt', house: 'maltPerMash' },
    extract: { label: 'Soluble extract of the malt', house: 'solubleExtract' },
    volume: { house: 'wortVolume', staysHere: true },
    gravity: { house: 'originalGravity', staysHere: true },
    givenVolume: {
      kind: 'volume20',
      label: 'Weak wort it was given',
      range: [0, 300_000],
      step: 50,
      value: 2900,
      sized: { by: 'wortVolume' },
    },
    givenGravity: {
      kind: 'gravity',
      label: 'Gravity of that weak wort',
      range: [1.001, 1.06],
      step: 0.001,
      value: 1.008,
    },
    passedVolume: {
      kind: 'volume20',
      label: 'Weak wort it passes on',
      range: [0, 300_000],
      step: 50,
      value: 2900,
      sized: { by: 'wortVolume' },
    },
    passedGravity: {
      kind: 'gravity',
      label: 'Gravity of the wort passed on',
      range: [1.001, 1.06],
      step: 0.001,
      value: 1.006,
    },
  },
  main: ['volume', 'gravity', 'givenVolume', 'givenGravity'],
  outputs: {
    efficiency: { kind: 'percent', label: 'Efficiency of this mash' },
    ofWortAlone: { kind: 'percent', label: 'Efficiency by the wort alone' },
    own: { kind: 'mass', label: 'Extract from its own malt', digits: 1 },
    borrowed: { kind: 'mass', label: 'Extract in the weak wort given', digits: 1 },
    passedOn: { kind: 'mass', label: 'Extract in the weak wort passed on', digits: 1 },
  },
  compute: ({ malt, extract, volume, gravity, givenVolume, givenGravity, passedVolume, passedGravity }) =>
    accountOfMash(
      { volume, gravity },
      { mass: malt, extract },
      {
        given: { volume: givenVolume, gravity: givenGravity },
        passedOn: { volume: passedVolume, gravity: passedGravity },
      },
    ),
  steps: ({ malt, extract }, { efficiency, own, borrowed, passedOn }) => [
    'Extract of each wort = volume × gravity × 0.9982 × °P ÷ 100',
    'Given by this malt = extract in the wort + passed on − given to it',
    `${n(own + borrowed - passedOn, 1)} + ${n(passedOn, 1)} − ${n(borrowed, 1)} = ${n(own, 1)} kg`,
    'Efficiency = given by this malt ÷ promised by its analysis × 100',
    `${n(own, 1)} ÷ (${n(malt, 0)} × ${n(extract, 1)} ÷ 100) × 100 = ${n(efficiency, 1)} %`,
  ],
  remark: (_, { efficiency, ofWortAlone, borrowed, passedOn }) => {
    if (efficiency > 100) {
      return 'More than 100 % cannot be true: a volume, a gravity, the weight of malt or its analysis is wrong.';
    }
    const gift = borrowed - passedOn;
    return Math.abs(efficiency - ofWortAlone) < 0.5
      ? 'This mash passed on about as much as it was given, so the wort alone gives nearly the same answer.'
      : `The wort alone would make this mash look ${gift > 0 ? 'better' : 'poorer'} than it was: ${n(Math.abs(gift), 0)} kg more extract was ${gift > 0 ? 'given to it than it passed on' : 'passed on than was given to it'}.`;
  },
  examples: [
    {
      given: {
        malt: 150,
        extract: 75,
        volume: 1000,
        gravity: 1.03998,
        givenVolume: 300,
        givenGravity: 1.01567,
        passedVolume: 500,
        passedGravity: 1.00779,
      },
      gives: { borrowed: 12.166, passedOn: 10.06, own: 101.706, efficiency: 90.406 },
      within: 0.001,
      source: 'sugar-tables',
      note: 'table rows 10, 4 and 2 °P: 1,038.12, 304.15 and 503.00 kg of wort hold 103.81, 12.17 and 10.06 kg',
    },
    {
      given: {
        malt: 1000,
        extract: 75,
        volume: 5000,
        gravity: 1.05,
        givenVolume: 3785.412,
        givenGravity: 1.01562,
        passedVolume: 3785.412,
        passedGravity: 1.00781,
      },
      gives: { borrowed: 153.31, passedOn: 76.2 },
      within: 0.01,
      source: 'c440-chen',
      note: 'a thousand US gallons of 4 and of 2 °Brix hold 338 and 168 lb of sugar; gravities by the pounds printed, 8.452 and 8.387 ÷ 8.322, which fixes the weaker to 1 %',
    },
  ],
});
