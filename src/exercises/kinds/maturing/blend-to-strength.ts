// Stronger spirit for a vat that was let down too far.
import blendToStrength from '../../../calculators/maturing/blend-to-strength.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { litres20 } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

type Vat = Readonly<Record<'volume' | 'strength' | 'wanted' | 'second', number>>;
/** Litres to add if volumes added. */
const byVolumes = ({ volume, strength, wanted, second }: Vat) =>
  (volume * (wanted - strength)) / (second - wanted);

const kind = exercise(blendToStrength, {
  level: 2,
  ask: 'add',
  vary: {
    volume: [800, 1000, 1200, 1500, 2000, 2500],
    strength: [44.6, 44.8, 45, 45.2, 45.4],
    wanted: [46, 46.5],
    second: [58, 59, 60, 61, 62],
  },
  redo: (given) => ({ add: litres20(byVolumes(given)) }),
  prompt: (show) =>
    `Too much water went into a vat: ${show.volume} stand at ${show.strength}, and ${show.wanted} is wanted. Spirit of ${show.second} is to hand. How many litres of it bring the vat right? Count the alcohol alone, and leave out the little that vanishes in mixing.`,
  slips: [
    {
      family: 'wrongWhole',
      gives: ({ volume, strength, wanted, second }) => (volume * (wanted - strength)) / second,
      say: 'Each litre added brings only what it has above the strength wanted: divide by that difference.',
    },
    {
      family: 'upsideDown',
      gives: (vat) => (vat.volume * (vat.second - vat.wanted)) / (vat.second - vat.strength),
      say: 'That is how much of the blend the weak spirit makes, not what is to be added.',
    },
    {
      family: 'wrongWhole',
      gives: (vat) => (vat.volume * (vat.wanted - vat.strength)) / (vat.second - vat.strength),
      say: 'That would be its share if the whole were to stay as large as the vat was; it grows by what is added.',
    },
  ],
  working: (given) => [
    'What each litre of the vat lacks, over what each litre added has too much',
    `${w(given.volume)} × (${w(given.wanted)} − ${w(given.strength)}) ÷ (${w(given.second)} − ${w(given.wanted)}) = ${n(byVolumes(given), 1)} L; between strengths so near, mixing changes it by a few litres at most`,
  ],
});

export default { ...kind, since: 4 };
