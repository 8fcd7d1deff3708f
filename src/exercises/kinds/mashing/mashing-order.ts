// The steps of a mash in their order.
import { order } from '../../order.ts';

export default order({
  id: 'mashing-order',
  title: 'One mash from first water to empty tun',
  topic: 'mashing',
  level: 1,
  sources: ['common-practice'],
  prompt: 'Put these steps of a mash in order, the earliest first.',
  steps: [
    'The empty tun is warmed.',
    'Grist and the first water meet.',
    'The mash stands while starch becomes sugar.',
    'The first wort is drained, cooled and sent to the washback.',
    'The second water goes on to the bed, hotter than the mash was.',
    'The second wort fills the washback up to its volume.',
    'The last water, the hottest, goes on to the bed.',
    'The last, weak wort is drained and kept for the next mash.',
    'The draff is cleared out.',
  ],
  why: 'The first water must spare the enzymes; the later, hotter ones come when the sugar is made; and the weakest wort is kept, because it is too weak to ferment.',
});
