// A closed still that cools.
import { choice } from '../../choice.ts';

export default choice({
  id: 'closed-while-it-cools',
  title: 'A still that cools',
  topic: 'safety',
  form: 'judgement',
  level: 2,
  sources: ['common-practice'],
  ask: (chance) => {
    const still = chance.pick(['the wash still', 'the spirit still', 'the low wines still']);
    const sign = chance.pick([
      'the vacuum valve has stuck',
      'the air valve was forgotten',
      'the man-door was shut too early',
      'nobody opened the vent',
    ]);
    const since = chance.pick([5, 10, 15, 20]);
    const extra = chance.pick([
      'Its side has begun to creak.',
      'The pressure gauge has gone below nothing.',
      'Cold water is about to be let in.',
      'A colleague wants to rinse it with cold water.',
    ]);
    return {
      prompt: `The run is over and the heat has been off for ${since} minutes. You see that ${sign}, so that ${still} is closed while it cools. ${extra} What do you do?`,
      right: {
        text: 'Keep all clear, let no cold water in, and follow the site’s procedure; call for help.',
        why: 'Steam that turns to water leaves a vacuum, and the still may collapse. It is let open to the air only in the way the procedure says.',
      },
      others: [
        {
          text: 'Open the man-door with a bar, quickly.',
          why: 'Air would rush in with great force, and you would stand before it, at a hot opening.',
        },
        {
          text: 'Spray cold water on it so that it cools evenly.',
          why: 'Cooling turns still more steam to water and deepens the vacuum.',
        },
        {
          text: 'Turn the heat on full again, to drive the vacuum out.',
          why: 'Heat under a still that was just drained or is out of order may bring a new danger. That is for the procedure and those in charge.',
        },
        {
          text: 'Climb up and knock the valve free with a hammer.',
          why: 'You would stand on a still that may fold in at that moment.',
        },
        {
          text: 'Wait and see, for copper of that thickness is strong enough.',
          why: 'Its walls grow thin with use, and the air presses with ten tonnes on each square metre.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Keep everybody well away from it, and call for help.',
            why: 'Steam that turns to water leaves a vacuum, and the still may collapse.',
          },
          {
            text: 'See to it that no cold water at all is let in.',
            why: 'Cooling turns still more steam to water and deepens the vacuum.',
          },
          {
            text: 'Have air let in only in the way the procedure says.',
            why: 'How that is done without harm is laid down for this still, and by nobody’s guess.',
          },
          {
            text: 'Have it looked over before anyone heats it again.',
            why: 'What has been under vacuum may have lost its shape, and a valve that stuck once sticks again.',
          },
        ],
      },
    };
  },
});
