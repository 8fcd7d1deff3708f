// The age of one cask, in full years.
import { months as monthNames } from '../../../core/months.ts';
import { choice } from '../../choice.ts';

/** The generator from which the highest age is asked for, as a lower one may be stated too. */
const HIGHEST_SINCE = 7;

export default choice({
  id: 'full-years-in-wood',
  title: 'How old may it be called?',
  topic: 'law',
  form: 'judgement',
  level: 1,
  sources: ['swr-2009', 'memory'],
  ask: (chance) => {
    const filled = { year: chance.pick([2001, 2004, 2006, 2007, 2009, 2010]), month: 3 + chance.below(6) };
    const after = chance.pick([10, 11, 12, 14, 15]);
    const months = chance.pick([-2, -1, 1, 2, 3]); // the emptying, from the day of the year it was filled
    const glass = chance.pick([2, 3, 4]);
    const age = months < 0 ? after - 1 : after;
    const day = chance.pick([1, 6, 14, 20]);
    const emptied = `${day} ${monthNames[filled.month + months]!} ${filled.year + after}`;
    const option = (years: string, why: string) => ({ text: `${years} years.`, why });
    const whole = `${after - (months < 0 ? 1 : 0)} years and ${months < 0 ? 12 + months : months} ${months === 1 ? 'month' : 'months'}`;
    const asked = chance.generator < HIGHEST_SINCE ? 'what age may' : 'what is the highest age that';
    return {
      prompt: `One cask, filled on ${day} ${monthNames[filled.month]!} ${filled.year}, was emptied and bottled on ${emptied}. The bottles are sold ${glass} years later; ${asked} their label ${chance.generator < HIGHEST_SINCE ? 'state' : 'may state'}?`,
      right: option(`${age}`, `It lay ${whole} in wood, and only full years count.`),
      others: [
        option(`${age + 1}`, 'The last year in wood was not full, and a part of a year counts for nothing.'),
        option(`${age + glass}`, 'The years in glass were counted. Only those in wood count.'),
        option(`${age - 1}`, 'A full year was left out: count from the day of filling.'),
      ],
    };
  },
});
