// One run of the spirit still, step by step.
import { order } from '../../order.ts';

export default order({
  id: 'order-of-a-spirit-run',
  title: 'One run of the spirit still',
  topic: 'distilling',
  level: 1,
  sources: ['common-practice', 'nicol-2003'],
  prompt: 'Put these in the order in which they happen in one run of the spirit still.',
  steps: [
    'Low wines, with foreshots and feints of earlier runs, are filled into the still as its charge.',
    'The charge is warmed.',
    'The first, strongest spirit comes over and turns hazy when it is mixed with water.',
    'Mixed with water, the run stays clear.',
    'The spout is turned, and the heart begins.',
    'The spirit at the safe is down to the strength at which the heart ends.',
    'The spout is turned again, and the feints begin.',
    'At about 1 % vol the feints end.',
    'The still is opened to the air by the site’s procedure, and the spent lees are drained.',
  ],
  why: 'The strength falls all through the run. Foreshots come first and are judged with water; when the test stays clear the heart may begin. It ends at the house’s strength, and feints follow until hardly any alcohol comes. Only a still that is open to the air is drained.',
});
