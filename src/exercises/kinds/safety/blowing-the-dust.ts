// Settled dust, and a hose of compressed air.
import { choice } from '../../choice.ts';

export default choice({
  id: 'blowing-the-dust',
  title: 'Dust on the floor',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['flour-dust-2004', 'memory', 'fire-engineering'],
  ask: (chance) => {
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
    return {
      prompt: `${cause}, and some ${kilograms} kg of malt dust lie ${place}. A helper comes with ${tool}. What do you do?`,
      right: {
        text: 'Stop the helper, and have the dust taken up with equipment made for it.',
        why: 'Dust that is blown or hosed up is a cloud, and a cloud is what explodes. If the mill runs, it is stopped by the site’s procedure. Gear that is not made for dust may bring the spark as well.',
      },
      others: [
        {
          text: 'Let the helper begin, as long as the doors are left open.',
          why: 'An open door does not thin the cloud enough for anyone to rely on.',
        },
        {
          text: 'Let the helper go on, but with a dust mask.',
          why: 'A mask keeps dust out of the lungs and does nothing against an explosion.',
        },
        {
          text: 'Sprinkle it from above with the fire hose, so that it cannot burn.',
          why: 'A jet raises a cloud first; that was said after an explosion of malt dust.',
        },
        {
          text: 'Leave it until the yearly cleaning; settled dust is harmless.',
          why: 'Settled dust is the fuel of the second and larger explosion. It is taken up at once.',
        },
        {
          text: 'Sweep it briskly down the stair to the floor below.',
          why: 'That makes a cloud on two floors.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Have it taken up with a vacuum cleaner made for such dust.',
            why: 'Gear that is made for it neither raises a cloud nor makes the spark.',
          },
          {
            text: 'Stop the helper before any of it has been stirred up.',
            why: 'Dust that is blown or hosed up is a cloud, and a cloud is what explodes.',
          },
          {
            text: 'Have the mill stopped, if it runs, the way the procedure says.',
            why: 'No machine that may spark runs beside dust that lies open.',
          },
          {
            text: 'Report it, and have the cause put right before you go on.',
            why: 'Otherwise it lies there again tomorrow.',
          },
        ],
      },
    };
  },
});
