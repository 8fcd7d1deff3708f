// What sheets of generators before 7 show for “A cask begins to roll”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Get out of its path, shout a warning, and let it hit what it hits.',
    'A rolling cask is not stopped by hand or foot. Spilt spirit is then a fire danger: sparks are kept away, the alarm is raised, and the site’s procedure for spills follows.',
  ],
  others: [
    [
      'Put a foot against it while it is still slow enough for that.',
      'Even slow, it has the weight of several people. It goes over the foot.',
    ],
    [
      'Run ahead and throw a chock in front of it.',
      'That takes you into its path, and a moving cask jumps a chock.',
    ],
    [
      'Run along and pull at its rim to turn it.',
      'Hands at a rolling cask are caught between it and the next thing.',
    ],
    ['Brace your back against the doorway to stop it there.', 'You would be crushed between cask and frame.'],
    ['Call a colleague to catch it from below.', 'Nobody stands below a cask on a slope.'],
  ],
  would: [
    [
      'Get out of its path, and let it hit whatever it hits.',
      'A rolling cask is not stopped by hand or foot.',
    ],
    ['Shout a warning to all who stand further along.', 'They may not see it coming.'],
    [
      'Keep hands and feet away until it lies quite still.',
      'Even slow, it has the weight of several people.',
    ],
    [
      'Take what it spills for a fire danger, and raise the alarm.',
      'Sparks are kept away from spilt spirit, and the site’s procedure for spills follows.',
    ],
  ],
} satisfies Before;
