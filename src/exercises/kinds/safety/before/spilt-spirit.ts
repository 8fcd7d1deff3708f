// What sheets of generators before 7 show for “Spirit on the floor”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Keep people and sparks away, raise the alarm, and follow the spill procedure.',
    'At this strength it gives off vapour that can burn at room temperature. Who clears it, how, and where it goes, is laid down by the site.',
  ],
  others: [
    [
      'Hose it into the nearest drain with much water.',
      'Never into an open drain: vapour and spirit travel along it, and the river is at its end.',
    ],
    ['Mop it up at once with the floor machine.', 'Its motor may make the spark.'],
    [
      'Throw sawdust on it and sweep it up briskly.',
      'Sawdust soaked with spirit burns well. Use what the procedure names, once the sparks are away.',
    ],
    [
      'Open all doors and go on with your work until it has dried.',
      'While it dries it fills the room with vapour.',
    ],
    [
      'Switch the lights off by their ordinary switch to be safe.',
      'A switch may make a spark just then. Nothing electrical is switched in the cloud.',
    ],
    [
      'Save what you can into a bucket, since duty is due on it.',
      'The account comes later. You would stand in the vapour with an open bucket.',
    ],
  ],
  would: [
    [
      'Keep people and sparks away from it, and raise the alarm.',
      'At this strength it gives off vapour that can burn at room temperature.',
    ],
    [
      'Stop what still runs out, if that can be done from outside.',
      'Less spirit makes less vapour; nobody walks into it for that.',
    ],
    [
      'Keep it out of the drain with what is laid ready for that.',
      'Vapour and spirit travel along a drain, and the river is at its end.',
    ],
    [
      'Let those clear it up whom the procedure names.',
      'Who clears it, how, and where it goes, is laid down by the site.',
    ],
  ],
} satisfies Before;
