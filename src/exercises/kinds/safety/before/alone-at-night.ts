// What sheets of generators before 7 show for “Alone in the house”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Leave that job, report that you are alone, and keep to what one may do alone.',
    'Which work needs two is laid down by the site. If something happens to you, nobody would know, and nobody would raise the alarm.',
  ],
  others: [
    [
      'Do it, but call someone before and after.',
      'If the second call does not come, help is late. The job waits for a second person.',
    ],
    ['Do it quickly while everything is quiet.', 'Haste and nobody near are the two worst companions.'],
    [
      'Do it with the door open so that somebody might hear you.',
      'There is nobody to hear you. “Might” is no procedure.',
    ],
    [
      'Ask a visitor from the guest house to stand by.',
      'Someone untrained does not know what to look for and may follow you into danger.',
    ],
    [
      'Do half of it now and half when the other one comes.',
      'The dangerous half does not wait until there are two.',
    ],
  ],
  would: [
    [
      'Leave that job, and report that you are alone.',
      'Which work needs two is laid down by the site. If something happens to you, nobody would know.',
    ],
    ['Keep to what the site lets one person do at night.', 'Which work that is, the site’s procedure says.'],
    [
      'Wait with it until a second trained person has come to help.',
      'Two are asked for because one of them may have to raise the alarm.',
    ],
    [
      'Hand it over to the next shift, and note why.',
      'A job left with a note is found; one begun alone may not be.',
    ],
  ],
} satisfies Before;
