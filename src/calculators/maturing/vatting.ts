// Casks put together before bottling.
import { formatCount, formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { vat } from '../../core/maturing/vatting.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'vatting',
  stage: 'maturing',
  title: 'A vatting of casks',
  purpose: 'Volume, strength and age of casks emptied together.',
  sources: ['swr-2009', 'oiml-r22'],
  cautions: ['ethanol-vapour'],
  inputs: {
    casks: {
      label: 'Casks',
      columns: {
        volume: { kind: 'volume20', label: 'Holds', range: [0.1, 100_000], step: 1 },
        strength: { kind: 'strength', label: 'Strength', range: [20, 95], step: 0.1 },
        age: { kind: 'years', label: 'Years in wood', range: [0, 80], step: 1 },
      },
      value: [
        { volume: 172, strength: 60.3, age: 12 },
        { volume: 215, strength: 58.1, age: 10 },
        { volume: 380, strength: 55.6, age: 18 },
      ],
      count: [1, 12],
    },
  },
  outputs: {
    volume: { kind: 'volume20', label: 'Makes', digits: 1 },
    strength: { kind: 'strength', label: 'Strength', digits: 2 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol' },
    contraction: { kind: 'volume20', label: 'Volume lost in mixing', digits: 2 },
    age: { kind: 'years', label: 'Age that may be stated', digits: 0 },
    meanAge: { kind: 'years', label: 'Mean age, by alcohol; never for a label', digits: 1 },
  },
  compute: ({ casks }) => vat(casks),
  steps: ({ casks }, result) => [
    'Alcohol adds up: volume × strength ÷ 100, cask by cask',
    `${casks.map(({ volume, strength }) => w((volume * strength) / 100)).join(' + ')} = ${n(result.alcohol, 1)} L`,
    'Masses add up too; the volume follows from mass and density of the mixture',
    `${n(result.volume, 1)} L at ${n(result.strength, 2)} % vol; ${n(result.contraction, 2)} L less than was poured`,
    `The age is that of the youngest cask: ${casks.map(({ age }) => n(age, age % 1 === 0 ? 0 : 1)).join(', ')} years, so ${n(result.age, 0)}`,
  ],
  remark: ({ casks }, { age, strength }) => {
    const youngest = Math.min(...casks.map((cask) => cask.age));
    const weak = strength < 40 ? ' Below 40 % vol it may not be sold as whisky.' : '';
    if (age < 3)
      return `The youngest part is under three years old, so none of it is whisky under British or European rules.${weak}`;
    const of = casks.filter((cask) => cask.age === youngest).reduce((sum, { volume }) => sum + volume, 0);
    const whole = casks.reduce((sum, { volume }) => sum + volume, 0);
    return casks.every((cask) => cask.age === youngest)
      ? `Every part is ${formatCount(age, 'year')} old, and the label may say so.${weak}`
      : `The label may say ${formatCount(age, 'year')} and no more, though only ${n((100 * of) / whole, 0)} % of the volume is that young; the mean age is for your own books.${weak}`;
  },
  examples: [
    {
      given: {
        casks: [
          { volume: 3000, strength: 40, age: 3 },
          { volume: 1000, strength: 60, age: 3 },
          { volume: 1000, strength: 70, age: 3 },
        ],
      },
      gives: { strength: 50, volume: 5000 },
      within: 0.0025,
      source: 'pharmacy-mixing',
      note: '3,000 mL of 40 % vol, 1,000 of 60 and 1,000 of 70 make 5,000 of 50, which leaves out that spirits shrink as they mix, here by 0.2 %',
    },
    {
      given: {
        casks: [
          { volume: 500, strength: 60, age: 12 },
          { volume: 100, strength: 60, age: 10 },
          { volume: 400, strength: 60, age: 18 },
        ],
      },
      gives: { age: 10, volume: 1000, strength: 60, alcohol: 600, meanAge: 14.2 },
      within: 1e-9,
      source: 'derived',
      note: 'an age statement means the youngest part, SI 2009/2890; equal strengths mix without a change, and the mean is 12 × 0.5 + 10 × 0.1 + 18 × 0.4',
    },
  ],
});
