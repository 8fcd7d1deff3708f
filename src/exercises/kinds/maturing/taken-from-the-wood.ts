// How much of its flavour the wood has given after some years.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const left = (pace: number) => Number(Math.exp(-pace).toFixed(3));

export default sum({
  id: 'taken-from-the-wood',
  title: 'What the wood has given',
  topic: 'maturing',
  level: 2,
  sources: ['memory', 'derived'],
  of: 'percent',
  to: 1,
  vary: {
    pace: ['share', [0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.9]],
    years: ['years', [2, 3, 4, 5, 6]],
  },
  answer: ({ pace, years }) => 100 * (1 - left(pace) ** years),
  prompt: (show, _, { pace }) =>
    `Say that after each year in a certain cask ${n(left(pace), 3)} is left of what the wood still had to give. How much of the whole, in per cent, has the spirit taken up after ${show.years}?`,
  working: ({ pace, years }, answer) => [
    'Taken up = 1 − what is left; what is left shrinks by the same factor each year',
    `${n(left(pace), 3)} to the power ${years} = ${n(left(pace) ** years, 4)}; 1 − ${n(left(pace) ** years, 4)} = ${n(answer / 100, 4)}, or ${n(answer, 1)} %`,
  ],
  slips: [
    {
      family: 'compound',
      gives: ({ pace, years }) => 100 * years * (1 - left(pace)),
      say: 'The first year’s gift was counted again every year. The wood gives quickly at first and then slowly, and never more than all it has.',
    },
    {
      family: 'otherFigure',
      gives: ({ pace, years }) => 100 * left(pace) ** years,
      say: 'That is what is still in the wood. The spirit has taken up the rest.',
    },
    {
      family: 'forgotten',
      gives: ({ pace }) => 100 * (1 - left(pace)),
      say: 'That is the first year alone. Take the factor once for every year.',
    },
  ],
});
