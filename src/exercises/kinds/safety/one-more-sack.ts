// Lifting alone what is too much.
import { choice } from '../../choice.ts';

export default choice({
  id: 'one-more-sack',
  title: 'Too heavy for one',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['derived', 'memory'],
  ask: (chance) => {
    const load = chance.pick([
      'an empty hogshead of about 60 kg',
      'twelve sacks of malt of 25 kg',
      'a pump of 48 kg',
      'an empty butt of about 125 kg',
    ]);
    const way = chance.pick(['up three steps', 'on to a pallet', 'across a wet floor', 'into a van']);
    const missing = chance.pick([
      'The truck is in the other store.',
      'The lift is booked for an hour.',
      'Your colleague is at lunch.',
      'Nobody else is in sight.',
    ]);
    return {
      prompt: `${load[0]!.toUpperCase()}${load.slice(1)} must go ${way}. ${missing} You feel fit. What do you do?`,
      right: {
        text: 'Wait for the right gear or a second person, as the site’s rules say.',
        why: 'Sacks and casks hurt backs one at a time. Ask for a second person sooner than you think you need one.',
      },
      others: [
        {
          text: 'Do it alone, with straight back and bent knees.',
          why: 'Good posture does not make the load lighter. Gear or a second person comes first.',
        },
        {
          text: 'Do it alone, but slowly and with rests.',
          why: 'The back is hurt by the one wrong lift, not by hurry alone.',
        },
        {
          text: 'Tip and drag it along, which is no lifting.',
          why: 'It may slip or roll, and pulling strains a back as lifting does.',
        },
        {
          text: 'Ask a strong visitor to lend a hand.',
          why: 'Visitors are not trained, not dressed for it, and in your care.',
        },
        {
          text: 'Tie a belt round your waist and lift.',
          why: 'A belt is not what your site’s procedure means by lifting gear.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Wait for a second person who is free and trained.',
            why: 'Sacks and casks hurt backs one at a time. Ask sooner than you think you need to.',
          },
          {
            text: 'Fetch the gear for it, even if it takes an hour.',
            why: 'An hour lost is made up; a back is not.',
          },
          {
            text: 'Look up what the site’s rules say of such a load.',
            why: 'They say what one may move alone, and with what.',
          },
          {
            text: 'Leave it there, and say that it is waiting.',
            why: 'Then it is moved when gear or people are free.',
          },
        ],
      },
    };
  },
});
