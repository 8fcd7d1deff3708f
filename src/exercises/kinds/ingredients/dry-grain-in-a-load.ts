// How much more dry grain a drier load holds.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'dry-grain-in-a-load',
  title: 'Dry grain in a load',
  topic: 'ingredients',
  level: 1,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    load: ['mass', [18_000, 20_000, 22_000, 24_000, 25_000, 26_000, 28_000]],
    damp: ['percent', [14, 14.5, 15, 15.5, 16], 'house.barleyMoisture'],
    dry: ['percent', [11.5, 12, 12.5, 13], 'house.barleyMoisture'],
  },
  answer: ({ load, damp, dry }) => (load * (damp - dry)) / 100,
  fits: ({ damp, dry }) => damp > dry,
  prompt: (show) =>
    `Two lots of barley cost the same by weight. One has ${show.damp} moisture, the other ${show.dry}, and a load of either weighs ${show.load}. How much more dry grain is in the load of the drier lot?`,
  slips: [
    {
      family: 'points',
      gives: ({ load, damp, dry }) => (load * (damp - dry)) / damp,
      say: 'The difference in moisture was taken as a part of the moisture. It is a part of the load.',
    },
    {
      family: 'wrongWhole',
      gives: ({ load, damp, dry }) => (load * (damp - dry)) / (100 - dry),
      say: 'That is the weight which the damp lot lacks, water and all. The question is for dry grain.',
    },
    {
      family: 'otherFigure',
      gives: ({ load, dry }) => (load * (100 - dry)) / 100,
      say: 'That is all the dry grain of the drier load. The question is by how much it is more.',
    },
  ],
  working: ({ load, damp, dry }, answer) => [
    'Dry grain = load × (100 − moisture) ÷ 100',
    `The damp lot: ${n(load, 0)} × ${n(100 - damp, 1)} ÷ 100 = ${n((load * (100 - damp)) / 100, 0)} kg`,
    `The drier lot: ${n(load, 0)} × ${n(100 - dry, 1)} ÷ 100 = ${n((load * (100 - dry)) / 100, 0)} kg`,
    `${n((load * (100 - dry)) / 100, 0)} − ${n((load * (100 - damp)) / 100, 0)} = ${n(answer, 0)} kg`,
  ],
});

export default { ...kind, since: 7 };
