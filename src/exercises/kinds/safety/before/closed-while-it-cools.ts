// What sheets of generators before 7 show for “A still that cools”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Keep all clear, let no cold water in, and follow the site’s procedure; call for help.',
    'Steam that turns to water leaves a vacuum, and the still may collapse. It is let open to the air only in the way the procedure says.',
  ],
  others: [
    [
      'Open the man-door with a bar, quickly.',
      'Air would rush in with great force, and you would stand before it, at a hot opening.',
    ],
    [
      'Spray cold water on it so that it cools evenly.',
      'Cooling turns still more steam to water and deepens the vacuum.',
    ],
    [
      'Turn the heat on full again, to drive the vacuum out.',
      'Heat under a still that was just drained or is out of order may bring a new danger. That is for the procedure and those in charge.',
    ],
    [
      'Climb up and knock the valve free with a hammer.',
      'You would stand on a still that may fold in at that moment.',
    ],
    [
      'Wait and see, for copper of that thickness is strong enough.',
      'Its walls grow thin with use, and the air presses with ten tonnes on each square metre.',
    ],
  ],
  would: [
    [
      'Keep everybody well away from it, and call for help.',
      'Steam that turns to water leaves a vacuum, and the still may collapse.',
    ],
    [
      'See to it that no cold water at all is let in.',
      'Cooling turns still more steam to water and deepens the vacuum.',
    ],
    [
      'Have air let in only in the way the procedure says.',
      'How that is done without harm is laid down for this still, and by nobody’s guess.',
    ],
    [
      'Have it looked over before anyone heats it again.',
      'What has been under vacuum may have lost its shape, and a valve that stuck once sticks again.',
    ],
  ],
} satisfies Before;
