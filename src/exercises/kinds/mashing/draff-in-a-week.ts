// About how much draff leaves in a week.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const PER_TONNE = 0.98; // t of wet draff from a tonne of malt, computed in the chapter

export default sum({
  id: 'draff-in-a-week',
  title: 'Draff in a week',
  topic: 'mashing',
  form: 'estimate',
  level: 1,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    malt: ['mass', [1000, 1200, 1500, 2000, 2500, 4500, 6000, 9000], 'house.maltPerMash'],
    mashes: ['count', [4, 5, 6, 8, 10, 12, 16], 'house.mashesPerWeek'],
  },
  answer: ({ malt, mashes }) => PER_TONNE * malt * mashes,
  prompt: (show) =>
    `The farmer asks how much draff to expect. The house makes ${show.mashes} mashes a week of ${show.malt} of malt each, and a tonne of malt leaves about ${PER_TONNE} t of wet draff. About how many kilograms leave in a week?`,
  working: ({ malt, mashes }, answer) => [
    `Malt in a week: ${mashes} × ${n(malt, 0)} = ${n(mashes * malt, 0)} kg`,
    `Draff: × ${PER_TONNE}, about ${n(answer, 0)} kg, or ${n(answer / 1000, 1)} t`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ malt }) => PER_TONNE * malt,
      say: 'That is the draff of one mash; a week has several.',
    },
  ],
});
