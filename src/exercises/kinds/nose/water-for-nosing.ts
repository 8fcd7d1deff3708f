// The water that lets a sample down for the nose.
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, strength } from '../../../core/quantity.ts';
import { densityOfSpirit } from '../../../core/spirit/density.ts';
import { massPercentFromStrength } from '../../../core/spirit/strength.ts';
import { sum } from '../../sum.ts';

/** Density at 20 °C of a strength, as a table prints it. */
const tabled = (percent: number) => densityOfSpirit(massPercentFromStrength(strength(percent)), celsius(20));

const kind = sum({
  id: 'water-for-nosing',
  title: 'Water to let a sample down',
  topic: 'nose',
  level: 2,
  sources: ['oiml-r22', 'common-practice'],
  of: 'millilitres',
  to: 1,
  within: 0.02,
  vary: {
    sample: ['millilitres', [8, 10, 12, 15]],
    from: ['strength', [46, 57, 60, 63.5, 66, 70, 72], 'house.fillingStrength'],
    to: ['strength', [20, 21, 22, 23]],
  },
  quotes: {
    fromDensity: [1, ({ from }) => tabled(from)],
    toDensity: [1, ({ to }) => tabled(to)],
    waterDensity: [1, () => tabled(0)],
  },
  answer: ({ sample, from, to, fromDensity, toDensity, waterDensity }) =>
    (((sample * from) / to) * toDensity - sample * fromDensity) / waterDensity,
  prompt: (show, _, v) =>
    `For a session ${show.sample} of a sample at ${show.from} are let down to ${show.to}, all at 20 °C. The table gives ${n(v.fromDensity, 1)} kg/m³ for the one strength, ${n(v.toDensity, 1)} for the other and ${n(v.waterDensity, 1)} for water. How much water goes in?`,
  slips: [
    {
      family: 'otherFigure',
      gives: ({ sample, from, to }) => (sample * from) / to,
      say: 'That is all that is in the glass afterwards. The sample is a part of it.',
    },
    {
      family: 'upsideDown',
      gives: ({ sample, from, to }) => (sample * to) / from,
      say: 'Upside down: the weaker the glass is to be, the more goes in.',
    },
    {
      family: 'wrongWhole',
      gives: ({ sample, from, to }) => (sample * (from - to)) / from,
      say: 'The fall in strength was taken as a part of the old strength. What there is afterwards goes by the new one.',
    },
  ],
  working: ({ sample, from, to, fromDensity, toDensity, waterDensity }, answer) => {
    const made = (sample * from) / to;
    return [
      'The alcohol stays: millilitres afterwards = sample × its strength ÷ the new strength; the water is what it weighs more',
      `${n(sample, 0)} × ${n(from, 1)} ÷ ${n(to, 0)} = ${n(made, 2)} mL afterwards`,
      `It weighs ${n(made, 2)} × ${n(toDensity, 1)} ÷ 1,000 = ${n((made * toDensity) / 1000, 2)} g, the sample ${n(sample, 0)} × ${n(fromDensity, 1)} ÷ 1,000 = ${n((sample * fromDensity) / 1000, 2)} g`,
      `The water: ${n((made * toDensity - sample * fromDensity) / 1000, 2)} g ÷ ${n(waterDensity, 1)} × 1,000 = ${n(answer, 1)} mL`,
    ];
  },
});

export default { ...kind, since: 7 };
