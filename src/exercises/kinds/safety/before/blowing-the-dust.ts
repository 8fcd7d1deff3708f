// What sheets of generators before 7 show for “Dust on the floor”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stop the helper, and have the dust taken up with equipment made for it.',
    'Dust that is blown or hosed up is a cloud, and a cloud is what explodes. If the mill runs, it is stopped by the site’s procedure. Gear that is not made for dust may bring the spark as well.',
  ],
  others: [
    [
      'Let the helper begin, as long as the doors are left open.',
      'An open door does not thin the cloud enough for anyone to rely on.',
    ],
    [
      'Let the helper go on, but with a dust mask.',
      'A mask keeps dust out of the lungs and does nothing against an explosion.',
    ],
    [
      'Sprinkle it from above with the fire hose, so that it cannot burn.',
      'A jet raises a cloud first; that was said after an explosion of malt dust.',
    ],
    [
      'Leave it until the yearly cleaning; settled dust is harmless.',
      'Settled dust is the fuel of the second and larger explosion. It is taken up at once.',
    ],
    ['Sweep it briskly down the stair to the floor below.', 'That makes a cloud on two floors.'],
  ],
  would: [
    [
      'Have it taken up with a vacuum cleaner made for such dust.',
      'Gear that is made for it neither raises a cloud nor makes the spark.',
    ],
    [
      'Stop the helper before any of it has been stirred up.',
      'Dust that is blown or hosed up is a cloud, and a cloud is what explodes.',
    ],
    [
      'Have the mill stopped, if it runs, the way the procedure says.',
      'No machine that may spark runs beside dust that lies open.',
    ],
    ['Report it, and have the cause put right before you go on.', 'Otherwise it lies there again tomorrow.'],
  ],
} satisfies Before;
