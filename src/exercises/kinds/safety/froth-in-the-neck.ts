// Froth that rises in the wash still.
import { judged } from '../../judged.ts';
import before from './before/froth-in-the-neck.ts';

export default judged({
  id: 'froth-in-the-neck',
  title: 'Froth in the neck',
  topic: 'safety',
  level: 1,
  sources: ['common-practice'],
  scene: (chance) => {
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
    return `The wash has been boiling for ${minutes} minutes, and ${seen}. ${who} What do you do?`;
  },
  would: [
    ['Cut the heat first, and then tell the stillman.', 'Froth goes over in less time than a talk takes.'],
    [
      'Turn the heat down, and look at the glass until it is clear.',
      'Wash boils up like milk, and less heat is what lets it fall. It may rise again when nobody looks.',
    ],
    [
      'Keep less heat on it until the glass is clear, even if that is a long while.',
      'A run can be slow. Carried over, wash fouls the low wines, and a still choked with froth is a danger.',
    ],
    [
      'Go and ease the heat as soon as you see it, whoever waits.',
      'Less heat is the one thing that lets froth fall, and it cannot wait.',
    ],
    [
      'Ease the heat, and shut it off if that is not enough.',
      'Less heat first, and none if that is not enough; and somebody has to see which.',
    ],
  ],
  wouldNot: [
    [
      'Look at the glass for five minutes, and ease the heat if it is not clear.',
      'In five minutes it may be through the condenser. The heat is eased first, and then one watches.',
    ],
    [
      'Keep the heat as it is, and wait for the froth to fall.',
      'It may fall or it may go over. Ease the heat, then wait.',
    ],
    [
      'Open the air valve slowly, and stand well away from it.',
      'In mid-run only the emergency procedure vents a still. Vapour and boiling wash would come out.',
    ],
    [
      'Have wet cloths put on the neck first, and then ease the heat.',
      'You would have to climb to a hot still, and meanwhile the froth goes over. The heat comes first.',
    ],
    [
      'Have more water put on the condenser, and leave the heat until that is done.',
      'The condenser is behind the neck, and more water there stops no froth.',
    ],
  ],
  before,
});
