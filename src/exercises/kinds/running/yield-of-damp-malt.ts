// What damp malt costs for a tonne.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'yield-of-damp-malt',
  title: 'Yield lost to damp malt',
  topic: 'running',
  level: 2,
  sources: ['derived'],
  of: 'yield',
  to: 1,
  vary: {
    usual: ['yield', [396, 398, 400, 402, 404, 406], 'malt.spiritYield'],
    dry: ['percent', [4, 4.2, 4.5, 4.8], 'house.maltMoisture'],
    damp: ['percent', [6, 6.2, 6.5, 6.8, 7], 'house.maltMoisture'],
  },
  answer: ({ usual, dry, damp }) => (usual * (damp - dry)) / (100 - dry),
  fits: ({ dry, damp }) => damp > dry,
  prompt: (show, _, v) =>
    `A tonne of malt of ${show.dry} moisture gives ${n(v.usual, 0)} L of pure alcohol. A lot of the same malt comes with ${show.damp}, weighed as it is. By how much does a tonne of it fall short for its water alone?`,
  slips: [
    {
      family: 'points',
      gives: ({ usual, dry, damp }) => (usual * (damp - dry)) / dry,
      say: 'The moisture was set against the moisture. What gives alcohol is the dry matter.',
    },
    {
      family: 'wrongWhole',
      gives: ({ usual, dry, damp }) => (usual * (damp - dry)) / 100,
      say: 'The usual yield comes from the dry matter of a tonne, which is less than a hundred per cent of it.',
    },
    {
      family: 'otherFigure',
      gives: ({ usual, dry, damp }) => (usual * (100 - damp)) / (100 - dry),
      say: 'That is what the damp tonne gives. The question is for what it falls short.',
    },
  ],
  working: ({ usual, dry, damp }, answer) => [
    'Shortfall = usual yield × dry matter that is missing ÷ usual dry matter',
    `Dry matter of a hundred kilograms: ${n(100 - dry, 1)} kg as a rule; ${n(damp, 1)} − ${n(dry, 1)} = ${n(damp - dry, 1)} kg are missing`,
    `${n(usual, 0)} × ${n(damp - dry, 1)} ÷ ${n(100 - dry, 1)} = ${n(answer, 1)} L`,
  ],
});

export default { ...kind, since: 7 };
