// What two waters leave in the bed.
import { allWaters } from '../../../calculators/mashing/bed.ts';
import successiveWaters from '../../../calculators/mashing/successive-waters.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { drainWaters, type Drained } from '../../../core/mashing/waters.ts';
import { exercise } from '../../exercise.ts';

type Given = Parameters<typeof allWaters>[0];

/** Kilograms of water that run off the first and the second time. */
function runoffsOf(given: Given): readonly number[] {
  const { runoffs } = drainWaters(given, allWaters(given)) as Drained;
  return runoffs.map(({ water }) => water);
}

export default exercise(successiveWaters, {
  level: 2,
  ask: 'left',
  vary: {
    malt: [1000, 1200, 1500, 2000, 2500],
    moisture: [4.5],
    extract: [77, 77.5, 78],
    ratio: [3.8, 4, 4.2],
    strike: [68],
    later: [1.2, 1.4, 1.6, 1.8, 2, 2.2].map((ratio) => [{ ratio, temperature: 75 }]),
    collected: [2],
    held: [0.65, 0.7, 0.75, 0.8],
    washing: [1],
  },
  within: 0.015,
  quotes: {
    dissolved: [0, ({ malt, extract }) => (malt * extract) / 100],
    kept: [0, ({ malt, held }) => malt * held],
    first: [0, (given) => runoffsOf(given)[0]!],
    second: [0, (given) => runoffsOf(given)[1]!],
  },
  redo: (_, { dissolved, kept, first, second }) => ({
    left: (dissolved * kept * kept) / (first + kept) / (second + kept),
  }),
  prompt: (_, __, { dissolved, kept, first, second }) =>
    `A bed with ${n(dissolved, 0)} kg of dissolved extract keeps ${n(kept, 0)} kg of water each time it is drained. From the first water ${n(first, 0)} kg of water run off, and from a second, which mixes with all that was kept, ${n(second, 0)} kg. How many kilograms of extract stay in the draff?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { dissolved, kept, first }) => (dissolved * kept) / (first + kept),
      say: 'That is what the first water leaves; the second carries off its part of it.',
    },
    {
      family: 'compound',
      gives: (_, { dissolved, kept, first, second }) => (dissolved * kept) / (first + second + kept),
      say: 'Both waters were taken as one large one; two rinses leave less than one of the same size.',
    },
    {
      family: 'wrongWhole',
      gives: (_, { dissolved, kept, first, second }) => (dissolved * (kept / first) * kept) / second,
      say: 'What is kept was set against the runoff alone; the extract is spread over runoff and kept water together.',
    },
  ],
  working: (_, { left, dissolved, kept, first, second }) => {
    const between = (dissolved * kept) / (first + kept);
    return [
      'Of the extract, each draining leaves the part kept ÷ (runoff + kept)',
      `First: ${w(dissolved)} × ${w(kept)} ÷ (${w(first)} + ${w(kept)}) = ${w(between)} kg`,
      `Second: ${w(between)} × ${w(kept)} ÷ (${w(second)} + ${w(kept)}) = ${n(left, 1)} kg`,
    ];
  },
});
