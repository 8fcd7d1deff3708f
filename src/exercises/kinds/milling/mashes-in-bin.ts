// How many mashes a full bin of malt feeds.
import millAndBin from '../../../calculators/milling/mill-and-bin.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(millAndBin, {
  id: 'mashes-in-bin',
  title: 'Mashes in a full bin',
  level: 2,
  ask: 'mashes',
  vary: {
    malt: [1000, 1200, 1500, 1800, 2000, 2500],
    bulk: [500, 520, 530, 540, 550, 560],
    bin: [25, 30, 35, 40, 45, 50, 60],
    rate: [1.5],
  },
  prompt: (show, { bulk }) =>
    `Malt can fill ${show.bin} of the bin, and a cubic metre of it weighs ${bulk} kg. A mash takes ${show.malt}. How many mashes does the full bin feed, to one decimal?`,
  slips: [
    {
      family: 'wrongConstant',
      gives: ({ malt, bin }) => (1000 * bin) / malt,
      say: 'A cubic metre was taken as a tonne, as of water; loose malt is mostly air between corns, and weighs little more than half of that.',
    },
    {
      family: 'upsideDown',
      gives: ({ malt, bulk, bin }) => malt / (bin * bulk),
      say: 'One mash was divided by the bin; it is the bin’s malt over one mash’s.',
    },
  ],
  working: ({ malt, bulk, bin }, { held, mashes }) => [
    `Malt in the full bin: ${bin} × ${bulk} = ${n(held, 0)} kg`,
    `${n(held, 0)} ÷ ${n(malt, 0)} = ${n(mashes, 1)} mashes`,
  ],
});
