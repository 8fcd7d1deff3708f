// What sheets of generators before 7 show for “The fire alarm sounds”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Lead everyone out by the marked way to the meeting point, and count them there.',
    'Every alarm is real until someone in charge says otherwise. Heat and pumps are stopped only as the site’s procedure lays down. Report, and stay outside.',
  ],
  others: [
    [
      'Finish the step you are at, make things safe, and then go.',
      'Spirit, vapour and fire leave no time for a step.',
    ],
    [
      'Send the people out, and look for the fire yourself.',
      'Looking for fire among spirit is work for those trained and sent for it.',
    ],
    ['Wait a few minutes to see whether it stops.', 'Those are the minutes in which one still gets out.'],
    ['Go and fetch coats and bags first, for it is cold outside.', 'Nobody goes back for anything.'],
    [
      'Lead everyone out through the store, since that is nearest.',
      'The marked way is chosen so that it does not lead past the spirit.',
    ],
    ['Open all windows on the way to let the smoke out.', 'That gives the fire air and costs time.'],
  ],
  would: [
    [
      'Lead everyone out by the marked way to the meeting point.',
      'Every alarm is real until someone in charge says otherwise.',
    ],
    [
      'Count them outside, and report if one is missing.',
      'Those who go in to look are told whom to look for.',
    ],
    ['Let what they have left behind lie, however cold it is.', 'Nobody goes back for anything.'],
    [
      'Stay out there until someone in charge lets you in again.',
      'An alarm that stops is no leave to go back.',
    ],
  ],
} satisfies Before;
