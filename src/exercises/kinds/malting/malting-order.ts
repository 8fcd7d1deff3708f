// The steps of malting in their order.
import { order } from '../../order.ts';

export default order({
  id: 'malting-order',
  title: 'From barley to malt',
  topic: 'malting',
  level: 1,
  sources: ['oxford-beer', 'britannica-beer', 'memory'],
  prompt: 'Put these steps of malting in order, the earliest first.',
  steps: [
    'A sample of the dry barley is made to sprout, and the corns that grew are counted.',
    'The lot goes into water for the first time.',
    'The grain, drained for the first time, rests in air.',
    'The last wetting brings the grain to the moisture wanted.',
    'The damp grain grows for four to five days.',
    'The kiln takes off the first water, with its gentlest air.',
    'At about 25 % moisture the skin of the corn falls dry.',
    'The curing, with the hottest air, brings the malt to about 5 %.',
    'The rootlets are taken off, and the malt goes into store.',
  ],
  why: 'The seed is tried before it is wetted, wetted before it can grow, and grown before it is dried; and the kiln is hottest last, for wet enzymes die in heat that dry ones survive.',
});
