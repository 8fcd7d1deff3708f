// A regauge that finds too little: what to think of first.
import { formatNumber as n } from '../../../core/format.ts';
import { choice } from '../../choice.ts';

export default choice({
  id: 'air-or-leak',
  title: 'The air, or a leak?',
  topic: 'maturing',
  form: 'judgement',
  level: 2,
  sources: ['common-practice', 'derived'],
  ask: (chance) => {
    const expected = chance.pick([98, 101, 104, 106, 108]);
    const years = chance.pick([8, 9, 10, 11, 12]);
    const leaks = chance.below(2) === 0;
    const found = leaks ? expected - chance.pick([14, 17, 20, 23]) : expected - chance.pick([0.5, 0.8, 1.1]);
    const beside = [0.9, -0.6, 0.4].map((off) => n(expected + off, 1)).join(', ');
    const look = {
      text: 'Measure it again, look and smell for a leak, and ask whether a sample was not written down.',
      why: leaks
        ? 'Its neighbours of the same filling lost what the air takes; this one lost far more, and a leak, a sample or a wrong reading is behind it.'
        : 'There is nothing to look for: it agrees with its neighbours.',
    };
    const write = {
      text: 'Write it down and let the cask lie: this is what the air takes.',
      why: leaks
        ? 'The air takes about as much from each cask of a row, and the neighbours lost far less.'
        : 'It agrees with the expectation and with its neighbours, and losses are never quite even.',
    };
    const others = [
      {
        text: 'Change the store’s yearly loss in the books to what this cask lost.',
        why: 'One cask is one cask: take the middle of several before a figure of the store is changed.',
      },
      {
        text: 'Top the cask up with new spirit so that the row is even again.',
        why: 'That would hide the reading, and the mixture would be as old as its youngest part.',
      },
    ];
    return {
      prompt: `After ${years} years a cask should hold ${n(expected, 1)} L of pure alcohol. Its regauge finds ${n(found, 1)} L; three beside it, of the same filling, hold ${beside} L. What do you do?`,
      right: leaks ? look : write,
      others: [leaks ? write : look, ...others],
    };
  },
});
