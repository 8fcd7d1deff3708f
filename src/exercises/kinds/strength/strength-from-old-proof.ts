// Strength from degrees of former British proof.
import { formatNumber as n } from '../../../core/format.ts';
import { strength } from '../../../core/quantity.ts';
import { sikesProof } from '../../../core/spirit/proof.ts';
import { bracketedRoot } from '../../../core/numerics/root.ts';
import { sum } from '../../sum.ts';

const DEGREES = 1.7553; // of former British proof to one % vol, near enough for a ledger
const byDefinition = (proof: number) => bracketedRoot((vol) => sikesProof(strength(vol)) - proof, 0, 100);

export default sum({
  id: 'strength-from-old-proof',
  title: 'Old British proof into % vol',
  topic: 'strength',
  level: 1,
  sources: ['si-1979-241', 'alda-1979', 'derived'],
  of: 'strength',
  to: 1,
  within: 0.006,
  vary: {
    proof: ['degreesProof', Array.from({ length: 51 }, (_, i) => 100 + i / 2)],
    year: ['count', [1958, 1961, 1964, 1967, 1969, 1972]],
  },
  answer: ({ proof }) => proof / DEGREES,
  prompt: (_, __, { proof, year }) =>
    `A British cask book of ${year} gives a cask ${n(proof, 1)} degrees proof, and one % vol is 1.7553 degrees of that scale. How strong was the spirit in % vol?`,
  working: ({ proof }, answer) => [
    '% vol = degrees of former British proof ÷ 1.7553',
    `${n(proof, 1)} ÷ 1.7553 = ${n(answer, 1)} % vol; from the legal definition itself, which takes volumes at 50 °F and not at 20 °C, ${n(byDefinition(proof), 1)}`,
  ],
  slips: [
    {
      family: 'otherCountry',
      gives: ({ proof }) => proof / 2,
      say: 'Halving is right for proof of the United States. The old British degree is another: divide by 1.7553.',
    },
    {
      family: 'upsideDown',
      gives: ({ proof }) => proof * 1.7553,
      say: 'The degrees were multiplied, and more than 100 % vol cannot be. Divide by 1.7553.',
    },
  ],
});
