// What sheets of generators before 7 show for “Too heavy for one”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Wait for the right gear or a second person, as the site’s rules say.',
    'Sacks and casks hurt backs one at a time. Ask for a second person sooner than you think you need one.',
  ],
  others: [
    [
      'Do it alone, with straight back and bent knees.',
      'Good posture does not make the load lighter. Gear or a second person comes first.',
    ],
    [
      'Do it alone, but slowly and with rests.',
      'The back is hurt by the one wrong lift, not by hurry alone.',
    ],
    [
      'Tip and drag it along, which is no lifting.',
      'It may slip or roll, and pulling strains a back as lifting does.',
    ],
    [
      'Ask a strong visitor to lend a hand.',
      'Visitors are not trained, not dressed for it, and in your care.',
    ],
    [
      'Tie a belt round your waist and lift.',
      'A belt is not what your site’s procedure means by lifting gear.',
    ],
  ],
  would: [
    [
      'Wait for a second person who is free and trained.',
      'Sacks and casks hurt backs one at a time. Ask sooner than you think you need to.',
    ],
    ['Fetch the gear for it, even if it takes an hour.', 'An hour lost is made up; a back is not.'],
    ['Look up what the site’s rules say of such a load.', 'They say what one may move alone, and with what.'],
    ['Leave it there, and say that it is waiting.', 'Then it is moved when gear or people are free.'],
  ],
} satisfies Before;
