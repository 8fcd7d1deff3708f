// United States proof gallons as litres of pure alcohol.
import { formatNumber as n } from '../../../core/format.ts';
import { alcoholFromUsProofGallons } from '../../../core/spirit/proof.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'alcohol-from-proof-gallons',
  title: 'US proof gallons into litres of pure alcohol',
  topic: 'strength',
  level: 1,
  sources: ['cfr-27-19', 'derived'],
  of: 'alcohol',
  to: 1,
  within: 0.002,
  vary: { gallons: ['count', Array.from({ length: 61 }, (_, i) => 200 + 20 * i)] },
  answer: ({ gallons }) => alcoholFromUsProofGallons(gallons),
  prompt: (_, __, { gallons }) =>
    `A ship’s paper from the United States says ${n(gallons, 0)} proof gallons. One such gallon holds 1.9018 L of pure alcohol at 20 °C. What do you enter in the ledger?`,
  working: ({ gallons }, answer) => [
    'Pure alcohol = proof gallons × 1.9018',
    `${n(gallons, 0)} × 1.9018 = ${n(answer, 1)} L of pure alcohol`,
  ],
  slips: [
    {
      family: 'temperature',
      gives: ({ gallons }) => gallons * 1.8927,
      say: 'That is half of 3.7854 L, which is right at 60 °F. The ledger counts alcohol at 20 °C, where it takes 0.48 % more room.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ gallons }) => gallons * 3.7854,
      say: 'That is the bulk of so many gallons. Only half of a proof gallon is alcohol.',
    },
    {
      family: 'otherCountry',
      gives: ({ gallons }) => gallons * 2.6188,
      say: 'That is the former British proof gallon. The paper is from the United States.',
    },
    {
      family: 'upsideDown',
      gives: ({ gallons }) => gallons / 1.9018,
      say: 'The gallons were divided. A gallon is more than a litre of alcohol here, so the litres are more.',
    },
  ],
});
