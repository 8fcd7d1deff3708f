// The least number of washbacks for the week's mashes.
import { washbacksNeeded } from '../../core/fermenting/washbacks.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { hours, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

interface Given {
  readonly hours: Quantity<'hours'>;
  readonly turnRound: Quantity<'hours'>;
  readonly mashes: Quantity<'count'>;
  readonly pattern: 'seven' | 'five';
}
const planOf = ({ hours: fermenting, turnRound, mashes, pattern }: Given) =>
  washbacksNeeded({ mashes, pattern }, hours(fermenting + turnRound));

export default defineCalculator({
  id: 'washbacks-needed',
  stage: 'fermenting',
  title: 'How many washbacks',
  purpose: 'Finds the fewest washbacks that take a week’s mashes, and how long they could then ferment.',
  sources: ['derived', 'common-practice'],
  inputs: {
    hours: { house: 'fermentationHours' },
    turnRound: { kind: 'hours', label: 'Filling, emptying, cleaning', range: [0, 48], step: 0.5, value: 8 },
    mashes: { house: 'mashesPerWeek', range: [1, 100] },
    pattern: {
      label: 'Mashing is spread evenly over',
      options: { seven: 'seven days', five: 'five days, with none at the weekend' },
      value: 'five',
    },
  },
  outputs: {
    needed: { kind: 'count', label: 'Washbacks needed', digits: 0 },
    taken: { kind: 'percent', label: 'Time in use' },
    longest: { kind: 'hours', label: 'Longest fermentation they allow' },
  },
  compute: (given) => {
    const plan = planOf(given);
    return { needed: plan.needed, taken: plan.taken, longest: hours(plan.longest - given.turnRound) };
  },
  steps: (given, { needed, taken, longest }) => {
    const each = given.hours + given.turnRound;
    const [open, mashes] = given.pattern === 'five' ? [120, Math.ceil(given.mashes)] : [168, given.mashes];
    const whole = `${given.mashes} × ${n(each, 1)} ÷ 168 = ${w((given.mashes * each) / 168)}`;
    return [
      `Each mash takes a washback for ${n(given.hours, 1)} + ${n(given.turnRound, 1)} = ${n(each, 1)} h, and one is mashed every ${open} ÷ ${mashes} = ${n(open / mashes, 1)} h`,
      `On average ${whole} washbacks are taken, so fewer than ${n(Math.ceil((given.mashes * each) / 168 - 1e-9), 0)} cannot do`,
      `The washback that has been free longest takes the next mash. With ${n(needed, 0)}, each is wanted again after ${n(longest + given.turnRound, 1)} h at the soonest, and it is taken for ${n(each, 1)}${needed > 1 ? `; with ${n(needed - 1, 0)} it would be wanted after ${n(planOf(given).longestWithOneFewer, 1)} h, too soon` : ''}`,
      `Taken: ${w((given.mashes * each) / 168)} ÷ ${n(needed, 0)} × 100 = ${n(taken, 1)} %`,
    ];
  },
  remark: (given, { needed, longest }) => {
    const fewer = planOf(given).longestWithOneFewer - given.turnRound;
    const save =
      needed > 1 && fewer >= 24
        ? `${n(needed - 1, 0)} would do if nothing fermented longer than ${n(fewer, 1)} h. `
        : '';
    return `${save}${needed === 1 ? 'One would' : `${n(needed, 0)} would`} allow ${n(longest, 1)} h, if a washback is emptied when its hours are over, on any day; where nobody distils at the weekend, give the weekend’s hours, up to 120 in one survey (common practice).`;
  },
  examples: [
    {
      given: { hours: 72, turnRound: 8, mashes: 6, pattern: 'seven' },
      gives: { needed: 3, taken: 95.238, longest: 76 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: a mash every 28 h, 480 of 504 h taken, and three mashes on is 84 h',
    },
    {
      given: { hours: 55, turnRound: 5, mashes: 10, pattern: 'five' },
      gives: { needed: 5, taken: 71.429, longest: 55 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: a mash every 12 h from Monday to Friday; washback and turn-round of 60 h are just five mashes, 600 of 840 h',
    },
  ],
});
