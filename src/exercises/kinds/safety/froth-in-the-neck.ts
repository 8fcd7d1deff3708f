// Froth that rises in the wash still.
import { choice } from '../../choice.ts';

export default choice({
  id: 'froth-in-the-neck',
  title: 'Froth in the neck',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['common-practice'],
  ask: (chance) => {
    const seen = chance.pick([
      'froth climbs past the lower window of the neck',
      'the neck’s window turns white',
      'the low wines in the safe turn milky',
      'froth knocks in the neck',
    ]);
    const minutes = chance.pick([5, 10, 15, 20]);
    const who = chance.pick([
      'The stillman has just gone to the other still.',
      'A visitor asks you a question.',
      'The telephone rings.',
      'The next charge is waiting.',
    ]);
    return {
      prompt: `The wash has been boiling for ${minutes} minutes, and ${seen}. ${who} What do you do?`,
      right: {
        text: 'Ease the heat at once by the site’s procedure, and watch until the froth falls.',
        why: 'Wash boils up like milk. Carried over, it fouls the low wines, and a still that is choked with froth is a danger.',
      },
      others: [
        {
          text: 'Heat harder for a minute, to boil the froth away.',
          why: 'More heat makes more vapour and more froth.',
        },
        {
          text: 'Open the man-door to let it down.',
          why: 'Nothing is opened on a still at work: vapour and boiling wash would come out.',
        },
        {
          text: 'Pour cold water on the neck by hand.',
          why: 'The procedure decides on water, and you would have to climb a hot still.',
        },
        {
          text: 'Leave it; the froth always falls by itself.',
          why: 'It may fall or it may go over. Ease the heat, then wait.',
        },
        {
          text: 'Find the stillman first and ask.',
          why: 'It goes over in less time than that. The heat is eased first; then call.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Ease the heat at once, as the procedure says.',
            why: 'Wash boils up like milk, and less heat is what lets it fall.',
          },
          {
            text: 'Stay and watch until the froth has fallen.',
            why: 'It may rise again as soon as nobody looks.',
          },
          {
            text: 'Send someone for the stillman once the heat is down.',
            why: 'The heat comes first, and then the call.',
          },
          {
            text: 'Put the next thing off, whoever is waiting.',
            why: 'Froth goes over in less time than an answer takes.',
          },
        ],
      },
    };
  },
});
