// The fewest washbacks for a week's mashes, spread over seven days.
import washbacksNeeded from '../../../calculators/fermenting/washbacks-needed.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const WEEK = 168; // h; by definition
const up = (value: number) => Math.ceil(value - 1e-9);

export default exercise(washbacksNeeded, {
  level: 2,
  ask: 'needed',
  whole: 'up',
  vary: {
    hours: [52, 55, 56, 60, 64, 68, 72, 80, 90, 96],
    turnRound: [9, 10, 12, 14, 15, 16],
    mashes: [20, 21, 24, 28, 30, 32, 35, 36, 40],
    pattern: ['seven'],
  },
  prompt: (show) =>
    `A house mashes ${show.mashes} times a week, evenly over all seven days, a washback to each mash. The wash is given ${show.hours}, and filling, emptying and cleaning take ${show.turnRound} more. How many washbacks are needed at the least?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ mashes, hours }) => up((mashes * hours) / WEEK),
      say: 'The hours of filling, emptying and cleaning were left out. A washback is taken for them too.',
    },
    {
      family: 'wrongConstant',
      gives: ({ mashes, hours, turnRound }) => up((mashes * (hours + turnRound)) / 120),
      say: 'That spreads the mashes over five days of 24 hours. Here they go through the whole week, 168 hours.',
    },
    {
      family: 'upsideDown',
      gives: ({ mashes, hours, turnRound }) => up((mashes * WEEK) / (hours + turnRound)),
      say: 'The division is upside down: the longer each stays, the more washbacks are wanted.',
    },
  ],
  working: ({ mashes, hours, turnRound }, { needed }) => [
    `Each mash takes a washback for ${n(hours, 0)} + ${n(turnRound, 0)} = ${n(hours + turnRound, 0)} h; the week has ${WEEK} h`,
    'Washbacks taken at once = mashes × hours of each ÷ hours of the week',
    `${n(mashes, 0)} × ${n(hours + turnRound, 0)} ÷ ${WEEK} = ${n((mashes * (hours + turnRound)) / WEEK, 2)}, rounded up to ${n(needed, 0)}, for a part of a washback cannot be had`,
  ],
});
