// The fire alarm in the middle of a run.
import { choice } from '../../choice.ts';

export default choice({
  id: 'the-fire-alarm',
  title: 'The fire alarm sounds',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['niosh-ethanol', 'common-practice'],
  ask: (chance) => {
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
    return {
      prompt: `The fire alarm sounds ${during}. ${guests} people are with you. ${thought} What do you do?`,
      right: {
        text: 'Lead everyone out by the marked way to the meeting point, and count them there.',
        why: 'Every alarm is real until someone in charge says otherwise. Heat and pumps are stopped only as the site’s procedure lays down. Report, and stay outside.',
      },
      others: [
        {
          text: 'Finish the step you are at, make things safe, and then go.',
          why: 'Spirit, vapour and fire leave no time for a step.',
        },
        {
          text: 'Send the people out, and look for the fire yourself.',
          why: 'Looking for fire among spirit is work for those trained and sent for it.',
        },
        {
          text: 'Wait a few minutes to see whether it stops.',
          why: 'Those are the minutes in which one still gets out.',
        },
        {
          text: 'Go and fetch coats and bags first, for it is cold outside.',
          why: 'Nobody goes back for anything.',
        },
        {
          text: 'Lead everyone out through the store, since that is nearest.',
          why: 'The marked way is chosen so that it does not lead past the spirit.',
        },
        {
          text: 'Open all windows on the way to let the smoke out.',
          why: 'That gives the fire air and costs time.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Lead everyone out by the marked way to the meeting point.',
            why: 'Every alarm is real until someone in charge says otherwise.',
          },
          {
            text: 'Count them outside, and report if one is missing.',
            why: 'Those who go in to look are told whom to look for.',
          },
          {
            text: 'Let what they have left behind lie, however cold it is.',
            why: 'Nobody goes back for anything.',
          },
          {
            text: 'Stay out there until someone in charge lets you in again.',
            why: 'An alarm that stops is no leave to go back.',
          },
        ],
      },
    };
  },
});
