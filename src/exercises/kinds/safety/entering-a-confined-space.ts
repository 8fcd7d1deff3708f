// The steps before and while someone is in a confined space.
import { order } from '../../order.ts';

export default order({
  id: 'entering-a-confined-space',
  title: 'Entering a confined space',
  topic: 'safety',
  level: 2,
  sources: ['hse-co2', 'memory'],
  prompt:
    'A vessel has to be entered for a repair. Put these steps in order, as this handbook gives them; the permit and the rules of your own site come first.',
  steps: [
    'A permit to work is asked for, and given by whoever may give it.',
    'As the permit says, every feed, drive and source of heat is shut off and locked.',
    'With all locked off, the air inside is tested for carbon dioxide, oxygen and vapour.',
    'When the test has been accepted, someone trained takes the post outside, with a way to raise the alarm.',
    'With the post outside taken, the person named on the permit goes in.',
    'While the work inside goes on, the air is tested again.',
    'When the work is done, the person inside comes out.',
    'When nobody is inside any more, the one outside leaves the post.',
  ],
  why: 'The permit comes first and says the rest. What could flow, turn or heat is locked before the air is tested, and nobody goes in before someone stands outside who can raise the alarm. How somebody would be got out again is settled before anyone goes in. No step is left out because the last one went well, and your site’s own procedure decides.',
});
