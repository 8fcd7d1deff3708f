// About how much pot ale leaves in a week: two thirds of the wash.
import { runStill } from '../../../core/distilling/run.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { litres20, share, strength } from '../../../core/quantity.ts';
import { isRefusal } from '../../../core/refusal.ts';
import { sum } from '../../sum.ts';

const REFLUX = share(0.05); // of a wash still whose low wines are the 20 to 25 % vol of common practice
const END = strength(1); // % vol at which the wash run ends; common practice

/** Pot ale of one charge, L. */
function potAle(wash: number, washStrength: number): number {
  const run = runStill({
    charge: { volume: litres20(wash), strength: strength(washStrength) },
    reflux: REFLUX,
    until: END,
  });
  return isRefusal(run) ? NaN : run.residue.volume;
}

export default sum({
  id: 'pot-ale-a-week',
  title: 'Pot ale in a week, by its size',
  topic: 'distilling',
  form: 'estimate',
  level: 1,
  sources: ['common-practice', 'de-nevers'],
  of: 'volume20',
  to: 0,
  within: 0.2,
  vary: {
    wash: ['volume20', [3000, 5000, 6000, 7500, 9000, 12_000, 15_000, 20_000], 'wash.volume'],
    washStrength: ['strength', [7.5, 8, 8.5], 'wash.strength'],
    mashes: ['count', [5, 6, 8, 10, 12, 15], 'house.mashesPerWeek'],
  },
  answer: (v) => v.mashes * potAle(v.wash, v.washStrength),
  prompt: (show) =>
    `A house boils ${show.mashes} charges a week, each of ${show.wash} of wash at ${show.washStrength}, and runs each down to 1 % vol. About two thirds of a wash stay behind. About how many litres of pot ale must be taken away in the week?`,
  renewed: 7,
  before: {
    prompt: (show) =>
      `A house boils ${show.mashes} charges a week, each of ${show.wash} of wash at ${show.washStrength}, and runs each down to 1 % vol. About how many litres of pot ale must be taken away in the week?`,
  },
  slips: [
    {
      family: 'forgotten',
      gives: (v) => v.mashes * v.wash,
      say: 'That is all the wash. About a third of it has gone over as low wines.',
    },
    {
      family: 'forgotten',
      gives: (v) => potAle(v.wash, v.washStrength),
      say: 'That is the pot ale of one charge. The question asks for the week’s.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => (v.mashes * v.wash * v.washStrength) / 100,
      say: 'That is the week’s pure alcohol. Pot ale is nearly all the liquid of the wash without it.',
    },
  ],
  working: (v, answer) => [
    'About two thirds of the wash stay behind as pot ale.',
    `Wash in the week: ${n(v.mashes, 0)} × ${n(v.wash, 0)} = ${n(v.mashes * v.wash, 0)} L`,
    `Two thirds of it are ${n((v.mashes * v.wash * 2) / 3, 0)} L; a run followed to 1 % vol leaves ${n(answer, 0)} L`,
  ],
});
