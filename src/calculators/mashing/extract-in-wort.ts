// How much of the malt's extract is in the wort.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { mashEfficiency, wortExtract, wortMass } from '../../core/mashing/wort.ts';
import { platoFromGravity } from '../../core/wort/extract.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'extract-in-wort',
  stage: 'mashing',
  title: 'Extract in the wort',
  purpose: 'Weighs the sugar in the wort and sets it against what the malt’s analysis promised.',
  sources: ['sugar-tables'],
  inputs: {
    volume: { house: 'wortVolume', staysHere: true },
    gravity: { house: 'originalGravity', staysHere: true },
    malt: { label: 'Malt', house: 'maltPerMash' },
    extract: { label: 'Soluble extract of the malt', house: 'solubleExtract' },
  },
  outputs: {
    plato: { kind: 'plato', label: 'Strength of the wort' },
    mass: { kind: 'mass', label: 'Mass of the wort' },
    extract: { kind: 'mass', label: 'Extract in it' },
    efficiency: { kind: 'percent', label: 'Mash efficiency' },
  },
  compute: ({ volume, gravity, malt, extract }) => ({
    plato: platoFromGravity(gravity),
    mass: wortMass({ volume, gravity }),
    extract: wortExtract({ volume, gravity }),
    efficiency: mashEfficiency({ volume, gravity }, { mass: malt, extract }),
  }),
  steps: (given, result) => [
    'Mass of the wort = volume × gravity × density of water',
    `${w(given.volume)} × ${given.gravity} × 0.9982 = ${n(result.mass, 0)} kg`,
    `Gravity ${given.gravity} is ${w(result.plato)} °P: that many kilograms of extract in 100 kg of wort`,
    `${w(result.mass)} × ${w(result.plato)} ÷ 100 = ${n(result.extract, 0)} kg`,
    `The malt promised ${w(given.malt)} × ${given.extract} ÷ 100 = ${w((given.malt * given.extract) / 100)} kg, so the wort has ${n(result.efficiency, 1)} % of it`,
  ],
  examples: [
    {
      given: { volume: 1000, gravity: 1.03998, malt: 150, extract: 75 },
      gives: { plato: 10, extract: 103.81 },
      within: 0.001,
      source: 'sugar-tables',
      note: '10 °P has gravity 1.03998 in the table; 1,000 L then weighs 1,038.1 kg',
    },
    {
      given: { volume: 3785.412, gravity: 1.02091, malt: 1000, extract: 75 },
      gives: { plato: 5.3, mass: 3853.72, extract: 204.12 },
      within: 0.005,
      source: 'c440-chen',
      note: 'a thousand US gallons of 5.3 °Brix: 8,496 lb with 450 lb of sugar, and 8.496 ÷ 8.322 is the gravity; weighed in air, a thousandth less, and to four figures',
    },
  ],
});
