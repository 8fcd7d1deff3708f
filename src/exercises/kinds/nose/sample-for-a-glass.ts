// How much of a sample goes into a nosing glass.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'sample-for-a-glass',
  title: 'The sample in a nosing glass',
  topic: 'nose',
  level: 1,
  sources: ['derived', 'common-practice'],
  of: 'millilitres',
  to: 1,
  within: 0.015,
  vary: {
    glass: ['millilitres', [18, 20, 24, 28, 30, 32, 36]],
    to: ['strength', [20, 21, 22, 23]],
    from: ['strength', [46, 57, 60, 63.5, 66, 70], 'house.fillingStrength'],
  },
  answer: ({ glass, to, from }) => (glass * to) / from,
  prompt: (show) =>
    `A nosing glass is to hold ${show.glass} at ${show.to}, water and all. The sample has ${show.from}. How much of the sample goes in?`,
  slips: [
    {
      family: 'upsideDown',
      gives: ({ glass, to, from }) => (glass * from) / to,
      say: 'Upside down: that is more than the glass is to hold.',
    },
    {
      family: 'sign',
      gives: ({ glass, to, from }) => (glass * (from - to)) / from,
      say: 'That is about the water. The question is for the sample.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ glass, to }) => (glass * to) / 100,
      say: 'That is the pure alcohol of the glass. The sample brings it with water of its own.',
    },
  ],
  working: ({ glass, to, from }, answer) => [
    'The alcohol of the glass comes from the sample: sample = glass × its strength ÷ the sample’s',
    `${n(glass, 0)} × ${n(to, 0)} ÷ ${n(from, 1)} = ${n(answer, 1)} mL, and then water up to ${n(glass, 0)} mL`,
  ],
});

export default { ...kind, since: 7 };
