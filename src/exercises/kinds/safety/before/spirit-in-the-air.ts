// What sheets of generators before 7 show for “Spirit can be smelt”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stop the heat by the site’s procedure, keep people and sparks away, raise the alarm.',
    'Vapour is escaping or soon will be, and it burns in air from about 3.3 %. Somebody in charge finds the cause before the still is started again.',
  ],
  others: [
    [
      'Finish what is running first, so that the spirit of this cut is not spoilt.',
      'Each minute more brings more vapour. No cut is worth a fire.',
    ],
    [
      'Switch on the extra fan by its ordinary switch beside the receiver.',
      'A switch may make a spark, and the cloud is just there. Nothing electrical is switched in it.',
    ],
    [
      'Climb up and feel with the hand where the vapour comes out.',
      'You would stand in hot vapour that can burn you and catch fire.',
    ],
    [
      'Turn the cooling water up fully and wait to see whether the smell goes.',
      'The heat goes on making vapour meanwhile. Stop the heat first; the water is looked into from a safe place.',
    ],
    [
      'Open the safe a little, to see and feel how the spirit runs.',
      'The safe is locked by law for good reason, and an opening lets out more vapour.',
    ],
    [
      'Note it in the book, so that the next shift looks into it.',
      'It is a danger now. Stop the heat and raise the alarm.',
    ],
  ],
  would: [
    [
      'Stop the heat by the procedure, and let the cut be spoilt if it must be.',
      'Vapour is escaping or soon will be, and it burns in air from about 3.3 %.',
    ],
    [
      'Send everybody out, and keep whatever may spark away from there.',
      'Where vapour is, one spark is enough.',
    ],
    [
      'Raise the alarm from a place where nothing smells of spirit.',
      'A telephone or a switch may make the spark in the cloud.',
    ],
    [
      'Leave the still cold until someone in charge has found out what is wrong.',
      'A cause that was not found comes again with the next charge.',
    ],
  ],
} satisfies Before;
