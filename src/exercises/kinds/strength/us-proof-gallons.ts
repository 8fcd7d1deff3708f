// Litres of pure alcohol as United States proof gallons.
import { formatNumber as n } from '../../../core/format.ts';
import { alcoholFromUsProofGallons } from '../../../core/spirit/proof.ts';
import { sum } from '../../sum.ts';

const one = alcoholFromUsProofGallons(1);

export default sum({
  id: 'us-proof-gallons',
  title: 'Litres of pure alcohol into US proof gallons',
  topic: 'strength',
  level: 2,
  sources: ['cfr-27-19', 'derived'],
  of: 'count',
  to: 1,
  within: 0.0015,
  vary: { alcohol: ['alcohol', Array.from({ length: 59 }, (_, i) => 600 + 50 * i)] },
  answer: ({ alcohol }) => alcohol / one,
  prompt: (_, __, { alcohol }) =>
    `A shipment to the United States holds ${n(alcohol, 0)} L of pure alcohol, measured at 20 °C. A proof gallon is 3.7854 L at 50 % vol, both at 60 °F, and from 60 °F to 20 °C pure alcohol grows by 0.48 %. How many proof gallons are entered?`,
  working: ({ alcohol }, answer) => [
    `A proof gallon holds 3.7854 × 0.50 = 1.8927 L of pure alcohol at 60 °F; at 20 °C that is 1.8927 × 1.0048 = ${n(one, 4)} L`,
    `${n(alcohol, 0)} ÷ ${n(one, 4)} = ${n(answer, 1)} proof gallons`,
  ],
  slips: [
    {
      family: 'temperature',
      gives: ({ alcohol }) => alcohol / 1.8927,
      say: 'That is the trap of the proof gallon: 1.8927 L is its alcohol at 60 °F. At 20 °C the same alcohol takes 0.48 % more room, so fewer gallons were shipped.',
    },
    {
      family: 'sign',
      gives: ({ alcohol }) => alcohol / (1.8927 / 1.0048),
      say: 'The growth was taken the wrong way round. Warmer alcohol takes more room, so a proof gallon is more than 1.8927 L at 20 °C.',
    },
    {
      family: 'forgotten',
      gives: ({ alcohol }) => alcohol / (3.7854 * 1.0048),
      say: 'That counts gallons of pure alcohol. A proof gallon is only half alcohol, so there are twice as many.',
    },
    {
      family: 'otherCountry',
      gives: ({ alcohol }) => alcohol / (4.54609 * 0.5),
      say: 'The imperial gallon of 4.546 L was used. The gallon of the United States is 3.7854 L.',
    },
    {
      family: 'wrongConstant',
      gives: ({ alcohol }) => alcohol / 2.6188,
      say: 'That is the former British proof gallon, larger in its gallon and in its strength.',
    },
  ],
});
