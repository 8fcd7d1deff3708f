// Lifting alone what is too much.
import { judged, ONE_TONE_SINCE } from '../../judged.ts';
import before from './before/one-more-sack.ts';

export default judged({
  id: 'one-more-sack',
  title: 'Too heavy for one',
  topic: 'safety',
  level: 1,
  sources: ['derived', 'memory'],
  scene: (chance) => {
    const load = chance.pick([
      'an empty hogshead of about 60 kg',
      chance.generator < ONE_TONE_SINCE ? 'twelve sacks of malt of 25 kg' : 'a crate of castings of 70 kg',
      'a pump of 48 kg',
      'an empty butt of about 125 kg',
    ]);
    const lifted = chance.generator < ONE_TONE_SINCE ? 'go' : 'be lifted';
    const way = chance.pick([
      'up three steps',
      'on to a pallet',
      chance.generator < ONE_TONE_SINCE ? 'across a wet floor' : 'over a pipe on a wet floor',
      'into a van',
    ]);
    const missing = chance.pick([
      'The truck is in the other store.',
      'The lift is booked for an hour.',
      'Your colleague is at lunch.',
      'Nobody else is in sight.',
    ]);
    return `${load[0]!.toUpperCase()}${load.slice(1)} must ${lifted} ${way}. ${missing} You feel fit. What do you do?`;
  },
  would: [
    [
      'Wait for a trained colleague, and then see what the two of you may lift.',
      'Ask for a second person sooner than you think you need one.',
    ],
    ['Go for the gear first, even if that takes an hour.', 'An hour lost is made up; a back is not.'],
    [
      'Leave it on the floor, and report it as too much for one.',
      'Then it is moved when gear or people are free. Sacks and casks hurt backs one at a time.',
    ],
    [
      'Have a look at the site’s rules for such a load before you touch it.',
      'Its rules say what one may move alone, and with what.',
    ],
    ['Hold off until a second person is there, so that no back is hurt.', 'A load that waits hurts nobody.'],
  ],
  wouldNot: [
    [
      'Look up how the site says to stand, and lift it alone in that way.',
      'Good posture does not make the load lighter. Gear or a second person comes first.',
    ],
    [
      'Wait until you are rested, and lift it with a belt and gloves on.',
      'Neither belt nor rest makes it lighter. The back is hurt by the one wrong lift.',
    ],
    [
      'Have the way cleared, and drag it so that it stays on the floor.',
      'It may slip or roll, and pulling strains a back as lifting does.',
    ],
    [
      'Lift one side of it first, and call for help if it is too much.',
      'The trial is the lift. A load of that weight is too much for one, and that is known before.',
    ],
    ['Lift it with care, and stop as soon as your back hurts.', 'The back tells you after the harm is done.'],
  ],
  before,
});
