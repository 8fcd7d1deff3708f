// Degrees of United States proof from a strength.
import { formatNumber as n } from '../../../core/format.ts';
import { strength as vol } from '../../../core/quantity.ts';
import { usProof } from '../../../core/spirit/proof.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'us-proof',
  title: 'United States proof',
  topic: 'strength',
  level: 1,
  sources: ['cfr-27-19', 'derived'],
  of: 'degreesProof',
  to: 1,
  within: 0.006,
  vary: { strength: ['strength', Array.from({ length: 61 }, (_, i) => 40 + i / 2)] },
  answer: ({ strength }) => 2 * strength,
  prompt: (show) =>
    `A buyer in the United States asks for the proof of a cask at ${show.strength}. There proof is twice the % vol, as near as a label needs. What do you answer?`,
  working: ({ strength }) => [
    'US proof = 2 × % vol, strictly at 60 °F',
    `2 × ${n(strength, 1)} = ${n(2 * strength, 1)}; measured at 60 °F and not at 20 °C it is ${n(usProof(vol(strength)), 1)}`,
  ],
  slips: [
    {
      family: 'upsideDown',
      gives: ({ strength }) => strength / 2,
      say: 'The strength was halved. Proof is the larger number there: two degrees to one % vol.',
    },
    {
      family: 'otherCountry',
      gives: ({ strength }) => 1.7553 * strength,
      say: 'That is the former British scale, 1.7553 degrees to one % vol. In the United States it is two.',
    },
  ],
});
