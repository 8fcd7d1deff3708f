// What sheets of generators before 7 show for “Before the permit”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stay outside until the permit is given and all that it asks for is done.',
    'Not even the head goes in before. Feeds, drives and heat are locked off, the air is tested, and someone trained stays outside. How the permit is given, and by whom, is your site’s and your local code’s to say.',
  ],
  others: [
    [
      'Go in, since the permit is as good as written and the job is short.',
      'What it asks for, locking off and testing the air, has not been done yet. The paper is not the point; those steps are.',
    ],
    [
      'Put only head and arms in and do it from the manhole.',
      'The head in the vessel is an entry. What the air does to you does not ask where your feet stand.',
    ],
    [
      'Go in, but leave your radio on and call out every minute.',
      'A call that stops does not bring you out. The air is tested before, and not by you.',
    ],
    [
      'Go in, since the vessel was entered yesterday and nothing happened.',
      'The air and the locks of today are not those of yesterday. Each entry has its own permit.',
    ],
    [
      'Let the colleague go in, and watch from above.',
      'Neither of you has a permit. Nobody goes in until it is given.',
    ],
  ],
  would: [
    ['Stay outside, head and arms too, until the permit is given.', 'Not even the head goes in before.'],
    [
      'Wait until feeds, drives and heat are locked off and the air is tested.',
      'Those steps are what the permit is for. Your site’s and your local code’s procedure says who does them.',
    ],
    [
      'Say no to it, whoever asks and however long it takes.',
      'Two minutes are long enough to be overcome in.',
    ],
    [
      'Go and see how far the permit has got, and let the job rest.',
      'Whoever gives it knows what is still to be done.',
    ],
  ],
} satisfies Before;
