// A full cask that begins to roll.
import { judged, ONE_TONE_SINCE } from '../../judged.ts';
import before from './before/cask-on-the-ramp.ts';

export default judged({
  id: 'cask-on-the-ramp',
  title: 'A cask begins to roll',
  topic: 'safety',
  level: 1,
  sources: ['derived', 'common-practice'],
  scene: (chance) => {
    const cask = chance.pick([
      'a full barrel of about 230 kg',
      'a full hogshead of about 285 kg',
      'a full butt of over 550 kg',
    ]);
    const way = chance.pick([
      'down a ramp towards a doorway',
      'down the yard towards the lorry',
      'along the alley between two rows',
      'off the end of the rails',
    ]);
    const you = chance.pick([
      'You stand beside it.',
      'You are two steps below it.',
      'You hold a chock in your hand.',
      'Your hand is on its head.',
    ]);
    const isOutside = chance.generator >= ONE_TONE_SINCE && way.startsWith('down the yard');
    return `${isOutside ? 'Outside' : 'In'} the store ${cask} begins to roll ${way}. ${you} What do you do?`;
  },
  would: [
    [
      'Step aside, and let it break if it has to.',
      'A rolling cask is not stopped by hand or foot, and a wall is mended more easily than a leg.',
    ],
    [
      'Call out to those below, and keep well away from it yourself.',
      'They may not see it coming. You cannot stop it, and you can warn them.',
    ],
    [
      'Stay away until it lies still, and then keep sparks from what it spilt.',
      'What it spills is a fire danger: sparks are kept away and the alarm is raised, by the site’s procedure.',
    ],
    ['Let it go, even if it is slow and you are strong.', 'Even slow, it has the weight of several people.'],
    [
      'Hold your hands and feet back, and look out for the others.',
      'Whoever is caught between a cask and the next thing is crushed.',
    ],
  ],
  wouldNot: [
    [
      'Step well off to one side, and turn it away by the rim.',
      'Hands at a rolling cask are caught between it and the next thing.',
    ],
    [
      'Look for a chock, and lay it in front as soon as you can.',
      'That puts you in its path, and a moving cask jumps a chock.',
    ],
    [
      'Stop it with a boot while it only creeps, well before it can do harm.',
      'It goes over the foot. The boot is not made for such a weight.',
    ],
    [
      'Get in front with a pallet, and keep it from whoever may be there.',
      'You would be in its path, with a pallet that it shoves along. A shout keeps them safer.',
    ],
    [
      'Warn those in the way, and wait until it is on the level to stop it.',
      'It is as heavy on the level, and it still rolls.',
    ],
  ],
  before,
});
