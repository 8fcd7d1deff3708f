// A bearing that runs hot in a dusty place.
import { judged, ONE_TONE_SINCE } from '../../judged.ts';
import before from './before/the-hot-bearing.ts';

export default judged({
  id: 'the-hot-bearing',
  title: 'A hot bearing',
  topic: 'safety',
  level: 1,
  sources: ['memory', 'common-practice'],
  scene: (chance) => {
    const machine = chance.pick([
      'the malt mill',
      'the malt lift',
      'the screw above the grist bin',
      'the dresser',
    ]);
    const sign = chance.pick([
      'A bearing is too hot to touch',
      'A belt slips and smells of rubber',
      'There is a knocking that was not there before',
      // Burning in dust is a fire, for which the options that follow are not enough.
      chance.generator < ONE_TONE_SINCE ? 'There is a smell of burning' : 'There is a grinding as of metal',
    ]);
    const left = chance.pick([20, 30, 40, 50]);
    const tonnes = chance.pick([0.4, 0.6, 0.9, 1.2]);
    return `The mill room is at work, with ${tonnes} t still to go and ${left} minutes to the mash. ${sign} at ${machine}. What do you do?`;
  },
  would: [
    [
      'Have it stopped first, even if the mash is not done, and then tell whoever is in charge.',
      'A hot bearing, a slipping belt or a spark from metal can light dust.',
    ],
    [
      'Have it shut off, and let the mash wait until it is sound.',
      'A late mash is the smaller trouble. The danger is there while it runs.',
    ],
    ['Hold your hands back until it is shut off with a lock.', 'Belts and rollers catch sleeves and hands.'],
    [
      'Go for the stop as soon as you notice it, and report it after that.',
      'Malt keeps. The danger is there while it runs.',
    ],
    [
      'Leave it off until the fitter has found out why and those in charge start it.',
      'Until the cause is known, it is the same fault that starts again. Someone in charge lets it go on.',
    ],
  ],
  wouldNot: [
    [
      'Tell whoever is in charge first, and then stop it if they say so.',
      'The danger is there while it runs. Stop first, explain later.',
    ],
    [
      'Keep water on it as it runs, even if the floor is wet, until it is cool.',
      'That hides the cause, and water on a running machine brings dangers of its own.',
    ],
    [
      'Keep it on until the fitter is there, so that they can hear it.',
      'The fitter finds the cause on a machine that stands still. Until then it may light the dust.',
    ],
    [
      'Take the guard off as it runs, and look before you touch anything.',
      'Nobody opens a guard on a machine that runs. It is stopped and locked first.',
    ],
    [
      'Have the dust extraction up, even if it is loud, until the malt is done.',
      'Extraction takes away dust and not the thing that lights it.',
    ],
  ],
  before,
});
