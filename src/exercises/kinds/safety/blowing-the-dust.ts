// Settled dust, and a hose of compressed air.
import { judged } from '../../judged.ts';
import before from './before/blowing-the-dust.ts';

export default judged({
  id: 'blowing-the-dust',
  title: 'Dust on the floor',
  topic: 'safety',
  level: 1,
  sources: ['flour-dust-2004', 'memory', 'fire-engineering', 'derived'],
  scene: (chance) => {
    const place = chance.pick([
      'in the mill room',
      'under the malt lift',
      'on the floor above the mill',
      'beside the grist bin',
    ]);
    const kilograms = chance.pick([2, 3, 5, 8]);
    const tool = chance.pick([
      'a compressed-air hose',
      'a leaf blower',
      'a water hose with a sharp jet',
      'an ordinary workshop vacuum cleaner',
    ]);
    const cause = chance.pick([
      'A sack has burst',
      'A seal has leaked for a week',
      'A hatch was left open',
      'A spout has come loose',
    ]);
    return `${cause}, and some ${kilograms} kg of malt dust lie ${place}. A helper comes with ${tool}. What do you do?`;
  },
  would: [
    [
      'Stop the helper first, and then send for the machine that is made for dust.',
      'Dust that is blown or hosed up is a cloud, and a cloud is what explodes. Gear that is made for it raises none.',
    ],
    [
      'Take it up with the machine that is made for dust, with a mask on.',
      'Such a machine neither raises a cloud nor makes the spark, and the mask is for your lungs.',
    ],
    [
      'Have the mill stopped if it runs, and keep all feet off the dust.',
      'No machine that may spark runs beside dust that lies open, and what lies still is no cloud.',
    ],
    [
      'Report what let it out, and have that mended before the mill goes on.',
      'Otherwise it lies there again tomorrow. What lies there now is taken up with gear made for dust.',
    ],
    [
      'Hold that tool back, and look for a machine that is made for dust.',
      'An hour of settled dust is a smaller danger than a moment of cloud.',
    ],
  ],
  wouldNot: [
    [
      'Have everyone leave first, and then let the helper begin with the doors open.',
      'An open door does not thin the cloud enough, and the helper is still in it.',
    ],
    [
      'Look for a mask for the helper, and let the job be done with it on.',
      'A mask keeps dust out of the lungs and does nothing against an explosion.',
    ],
    [
      'Shut the mill off, and let the helper begin as soon as it is cool.',
      'That takes away one spark. The tool itself still makes the cloud, and may bring a spark of its own.',
    ],
    [
      'Keep it down with water from the fire hose, and sweep it up after that.',
      'A jet raises a cloud first. That was said after an explosion of malt dust.',
    ],
    [
      'Report it for the yearly clean, and let nobody in there before that.',
      'Settled dust is the fuel of the second and larger explosion. It is taken up soon, with gear made for it.',
    ],
  ],
  before,
});
