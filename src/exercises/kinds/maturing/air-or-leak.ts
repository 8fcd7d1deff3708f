// A regauge that finds too little: what to think of first.
import { formatNumber as n } from '../../../core/format.ts';
import type { Chance } from '../../seeded-random.ts';
import { choice, EVEN_WORDING_SINCE, type Option } from '../../choice.ts';

const LOOK = 'Read it once more, and look and smell for a leak or a sample not written down.';
const REST = 'Write it down and let the cask lie: it has lost what the air takes there.';
const RATE = 'Write it down, and see whether the yearly loss in the books still fits this row.';
const AGAIN = 'Write nothing down yet, and read it again: no cask can hold as much as this one.';

/** Four readings of a cask and its neighbours, of which each asks for another of the same four things. */
function fourWays(chance: Chance, expected: number, years: number) {
  const filled = expected + 12;
  const beside = (off: number) => [0.9, -0.6, 0.4].map((by) => n(expected + off + by, 1)).join(', ');
  const row = chance.pick([7, 8, 9]);
  const [found, others, right, why] = chance.pick([
    [expected - chance.pick([14, 17, 20, 23]), beside(0), LOOK, 'Its neighbours lost what the air takes; this one lost far more, and a leak, a sample or a wrong reading is behind it.'],
    [expected - chance.pick([0.5, 0.8, 1.1]), beside(0), REST, 'It agrees with the expectation and with its neighbours, and losses are never quite even.'],
    [expected - row, beside(-row), RATE, 'All four lost alike, and more than was reckoned with: it is the reckoning that does not fit.'],
    [filled + chance.pick([3, 4, 6]), beside(0), AGAIN, 'It would hold more pure alcohol than was filled, and wood gives none.'],
  ] as const); // prettier-ignore
  const wrong: Readonly<Record<string, string>> = {
    [LOOK]: 'Nothing here stands out from its neighbours by a loss that a leak would explain.',
    [REST]: 'That fits neither its neighbours nor what was expected.',
    [RATE]: 'The row as a whole has not lost otherwise than expected, and one cask is one cask.',
    [AGAIN]: 'It can hold that much: it is less than was filled.',
  };
  return {
    prompt: `A cask was filled with ${n(filled, 1)} L of pure alcohol, and after ${years} years should hold ${n(expected, 1)} L. Its regauge finds ${n(found, 1)} L; three beside it, of the same filling, hold ${others} L. What do you do?`,
    right: { text: right, why },
    others: [LOOK, REST, RATE, AGAIN].flatMap((text): readonly Option[] =>
      text === right ? [] : [{ text, why: wrong[text]! }],
    ),
  };
}

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
    if (chance.generator >= EVEN_WORDING_SINCE) return fourWays(chance, expected, years);
    return {
      prompt: `After ${years} years a cask should hold ${n(expected, 1)} L of pure alcohol. Its regauge finds ${n(found, 1)} L; three beside it, of the same filling, hold ${beside} L. What do you do?`,
      right: leaks ? look : write,
      others: [leaks ? write : look, ...others],
    };
  },
});
