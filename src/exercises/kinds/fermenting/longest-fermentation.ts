// How long the wash may stay when the washbacks are given.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const WEEK = 168; // h; by definition

export default sum({
  id: 'longest-fermentation',
  title: 'How long may it ferment?',
  topic: 'fermenting',
  level: 2,
  sources: ['derived'],
  of: 'hours',
  to: 1,
  within: 0.005,
  vary: {
    washbacks: ['count', [4, 5, 6, 7, 8, 9, 10, 12]],
    mashes: ['count', [6, 7, 8, 10, 12, 14, 15, 16], 'house.mashesPerWeek'],
    turnRound: ['hours', [6, 8, 9, 10, 12]],
  },
  answer: (v) => (v.washbacks * WEEK) / v.mashes - v.turnRound,
  prompt: (show) =>
    `A house has ${show.washbacks} washbacks and mashes ${show.mashes} times in a week of seven days, evenly, day and night. Filling, emptying and cleaning take ${show.turnRound}. How long can each wash be left to ferment at the most?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => (v.washbacks * WEEK) / v.mashes,
      say: 'Filling, emptying and cleaning must come out of that time.',
    },
    {
      family: 'wrongConstant',
      gives: (v) => (v.washbacks * 120) / v.mashes - v.turnRound,
      say: 'That is a week of five days. This house mashes through all seven, 168 hours.',
    },
    {
      family: 'sign',
      gives: (v) => (v.washbacks * WEEK) / v.mashes + v.turnRound,
      say: 'The turn-round was added. It takes its hours from the time between two fillings.',
    },
    {
      family: 'forgotten',
      gives: (v) => WEEK / v.mashes,
      say: 'That is the time from one mash to the next. With several washbacks each waits for its turn, so many times as long.',
    },
  ],
  working: (v, answer) => [
    `A mash comes every ${WEEK} ÷ ${v.mashes} = ${n(WEEK / v.mashes, 1)} h`,
    `Each washback is wanted again after ${v.washbacks} × ${n(WEEK / v.mashes, 1)} = ${n((v.washbacks * WEEK) / v.mashes, 1)} h`,
    `Less turn-round: ${n((v.washbacks * WEEK) / v.mashes, 1)} − ${n(v.turnRound, 1)} = ${n(answer, 1)} h`,
  ],
});
