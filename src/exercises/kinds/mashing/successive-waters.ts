// What two waters leave in the bed.
import { allWaters } from '../../../calculators/mashing/bed.ts';
import successiveWaters from '../../../calculators/mashing/successive-waters.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { drainWaters, type Drained } from '../../../core/mashing/waters.ts';
import { exercise } from '../../exercise.ts';

type Given = Parameters<typeof allWaters>[0];

/** Extract at the start, water kept, and what runs off each time, in whole kilograms as a prompt says them. */
function kilogramsOf(given: Given) {
  const { runoffs } = drainWaters(given, allWaters(given)) as Drained;
  return {
    extract: Math.round((given.malt * given.extract) / 100),
    kept: Math.round(given.malt * given.held),
    first: Math.round(runoffs[0]!.water),
    second: Math.round(runoffs[1]!.water),
  };
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
  prompt: (_, given) => {
    const { extract, kept, first, second } = kilogramsOf(given);
    return `A bed with ${n(extract, 0)} kg of dissolved extract keeps ${n(kept, 0)} kg of water each time it is drained. From the first water ${n(first, 0)} kg of water run off, and from a second, which mixes with all that was kept, ${n(second, 0)} kg. How many kilograms of extract stay in the draff?`;
  },
  slips: [
    {
      family: 'forgotten',
      gives: (given) => {
        const { extract, kept, first } = kilogramsOf(given);
        return (extract * kept) / (first + kept);
      },
      say: 'That is what the first water leaves; the second carries off its part of it.',
    },
    {
      family: 'compound',
      gives: (given) => {
        const { extract, kept, first, second } = kilogramsOf(given);
        return (extract * kept) / (first + second + kept);
      },
      say: 'Both waters were taken as one large one; two rinses leave less than one of the same size.',
    },
    {
      family: 'wrongWhole',
      gives: (given) => {
        const { extract, kept, first, second } = kilogramsOf(given);
        return (extract * (kept / first) * kept) / second;
      },
      say: 'What is kept was set against the runoff alone; the extract is spread over runoff and kept water together.',
    },
  ],
  working: (given, { left }) => {
    const { extract, kept, first, second } = kilogramsOf(given);
    const between = (extract * kept) / (first + kept);
    return [
      'Of the extract, each draining leaves the part kept ÷ (runoff + kept)',
      `First: ${n(extract, 0)} × ${n(kept, 0)} ÷ (${n(first, 0)} + ${n(kept, 0)}) = ${n(between, 1)} kg`,
      `Second: ${n(between, 1)} × ${n(kept, 0)} ÷ (${n(second, 0)} + ${n(kept, 0)}) = ${n(left, 1)} kg`,
    ];
  },
});
