// Grams of caustic in a litre, by titration.
import { sum } from '../../sum.ts';
import { formatNumber as n } from '../../../core/format.ts';

const kind = sum({
  id: 'caustic',
  title: 'Caustic by titration',
  topic: 'fermenting',
  level: 2,
  sources: ['derived'],
  of: 'gramsPerLitre',
  to: 1,
  vary: {
    acid: ['millilitres', [2.2, 2.4, 2.6, 2.8, 3.1, 3.4, 3.6, 4.2]],
    sample: ['millilitres', [5, 8, 20]],
    strength: ['molarity', [0.5, 1]],
  },
  answer: (v) => (v.acid * v.strength * 40) / v.sample,
  prompt: (show) =>
    `${show.sample} of cleaning caustic are turned by ${show.acid} of hydrochloric acid of ${show.strength}. One mole of acid turns one of caustic, and a mole of caustic weighs 40 g. How many grams of caustic are in a litre?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, answer) => answer / 40,
      say: 'Those are moles in a litre. Each weighs 40 g.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (v.sample * v.strength * 40) / v.acid,
      say: 'Upside down: the more acid it takes, the more caustic there is.',
    },
    {
      family: 'wrongConstant',
      gives: (_, answer) => (answer * 36.5) / 40,
      say: '36.5 g is a mole of the acid. A mole of caustic weighs 40 g.',
    },
    {
      family: 'wrongWhole',
      gives: (v, answer) => (answer * v.sample) / 10,
      say: 'Divide by the millilitres of this sample, not by ten.',
    },
  ],
  working: (v, answer) => [
    'Grams in a litre = acid × its strength × 40 ÷ sample; millilitres cancel',
    `${n(v.acid, 1)} × ${n(v.strength, 1)} × 40 ÷ ${n(v.sample, 0)} = ${n(answer, 1)} g/L`,
  ],
});

export default { ...kind, since: 5 };
