// Working alone.
import { judged } from '../../judged.ts';
import before from './before/alone-at-night.ts';

export default judged({
  id: 'alone-at-night',
  title: 'Alone in the house',
  topic: 'safety',
  level: 1,
  sources: ['common-practice'],
  scene: (chance) => {
    const job = chance.pick([
      'clear a blocked drain below the washbacks',
      'climb on to the still to look at the vacuum valve',
      'pump spirit into the vat',
      'clean the malt bin’s mouth',
    ]);
    const hour = chance.pick(['22:40', '1:15', '3:30', '5:05']);
    const who = chance.pick([
      'Your partner has gone home ill',
      'The second man is an hour late',
      'Your colleague was called to the other building',
      'The night watch does not answer',
    ]);
    const reach = chance.pick([
      'The telephone works.',
      'You have a radio.',
      'Your phone has no signal here.',
    ]);
    return `It is ${hour}. ${who}, and you are alone. You were to ${job}. ${reach} What do you do?`;
  },
  would: [
    [
      'Wait until a trained colleague is there, and then do it together.',
      'Two are asked for because one of them may have to raise the alarm.',
    ],
    [
      'Leave it for the next shift, with a note that says why.',
      'A job left with a note is found; a person who began it alone may not be.',
    ],
    [
      'Keep the job for later, and tell whoever is in charge that you are alone.',
      'Which work needs two is laid down by the site. If something happens to you, nobody would know.',
    ],
    [
      'Hold back from it, and let the night run late if it must.',
      'A late night is made up. Nobody would raise the alarm for you.',
    ],
    [
      'Look for a job that the site lets one person do, and go to that.',
      'What one may do alone is written down by the site, and this is not.',
    ],
  ],
  wouldNot: [
    [
      'Wait a quarter of an hour for the other, and then do it slowly.',
      'A quarter of an hour does not make two of you.',
    ],
    [
      'Leave a note of where you are, even if it is a short job, and begin.',
      'That raises no alarm, and a note is read in the morning.',
    ],
    [
      'Tell the gate when they are to look for you, and then do the job.',
      'When they come to look, it may be too late. The job waits for a second person.',
    ],
    [
      'Have the driver who waits outside stand by, and tell them to call for help.',
      'Someone untrained does not know what to look for, and may follow you into danger.',
    ],
    [
      'Begin with the first steps, so that the rest is for two.',
      'The first steps are done alone too, and they are no safer.',
    ],
  ],
  before,
});
