// The fire alarm in the middle of a run.
import { judged } from '../../judged.ts';
import before from './before/the-fire-alarm.ts';

export default judged({
  id: 'the-fire-alarm',
  title: 'The fire alarm sounds',
  topic: 'safety',
  level: 1,
  sources: ['niosh-ethanol', 'ethanol-fires', 'common-practice'],
  scene: (chance) => {
    const during = chance.pick([
      'in the middle of the heart run',
      'while a tanker is being filled',
      'during a tasting with guests',
      'while the mash is being drained',
      'on filling day, with a full vat',
    ]);
    const guests = chance.pick([3, 6, 8, 12, 15]);
    const thought = chance.pick([
      'It was tested only yesterday.',
      'There was a false alarm last week.',
      'You can see no smoke.',
      'The next step is due in five minutes.',
    ]);
    return `The fire alarm sounds ${during}. ${guests} people are with you. ${thought} What do you do?`;
  },
  would: [
    [
      'Leave what you are at, and get everyone out by the marked way.',
      'Every alarm is real until someone in charge says otherwise. A stop on the way is pressed if the procedure says so.',
    ],
    [
      'Count the group at the meeting point, so that you can report who is missing.',
      'Those who go in to look are told whom to look for.',
    ],
    [
      'Hold the group back when the bell stops, until you are let in.',
      'An alarm that stops is no leave to go back.',
    ],
    ['Hold back anyone who looks for a coat or a bag.', 'Nobody goes back for anything.'],
    [
      'Take it for real first, and then ask when all are outside.',
      'Those who ask inside lose the minutes in which one still gets out.',
    ],
  ],
  wouldNot: [
    [
      'Go out by the marked way as soon as the step is done.',
      'Spirit, vapour and fire leave no time for a step.',
    ],
    [
      'Count the group outside, and go back with a colleague if one is missing.',
      'Nobody goes back. Report who is missing, and let those sent for it look.',
    ],
    [
      'Hold the group back until you have been told that it is real.',
      'Those are the minutes in which one still gets out.',
    ],
    [
      'Let nobody leave until smoke is seen, and wait by the door.',
      'Burning spirit gives little smoke and a flame that is hardly seen. The alarm is the sign.',
    ],
    [
      'Send the group out, and look for the fire so that you can report it.',
      'Looking for fire among spirit is work for those trained and sent for it.',
    ],
  ],
  before,
});
