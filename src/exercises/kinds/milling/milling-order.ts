// The steps of milling and of the sieve test in their order.
import { order } from '../../order.ts';

export default order({
  id: 'milling-order',
  title: 'From the malt bin to the right gap',
  topic: 'milling',
  level: 1,
  sources: ['common-practice', 'memory'],
  prompt: 'Put these steps at the mill in order, the earliest first.',
  steps: [
    'The malt for the mash is weighed out of its bin.',
    'Magnets and destoner take metal and stones out of the malt.',
    'The first pair of rollers cracks the corn.',
    'The second pair of rollers breaks what the first released.',
    'A sample of grist is shaken through the sieves.',
    'What lies on each sieve is weighed.',
    'Each part is set against all that was found, in per cent.',
    'The percentages are compared with the house’s target.',
    'A gap that is off is moved a little, by the site’s procedure.',
  ],
  why: 'Metal and stones must be out before the rollers, for a spark can light dust; and a gap is moved only when the sieves have told which way.',
});
