// What sheets of generators before 7 show for “A spark near spirit”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stop it, have it taken away, and ask those in charge what may be used there.',
    'Spirit over 40 % vol may give off vapour that burns at room temperature. Which gear is allowed where, and with which permit, is settled by your site’s assessment and local code.',
  ],
  others: [
    [
      'Let it be used as long as all windows and doors are open.',
      'An open window is no measurement and no assessment. Sparks are kept away.',
    ],
    [
      'Let it be used quickly, with a fire extinguisher at hand.',
      'A flash of vapour is over before anyone reaches for the extinguisher. The spark is what must not be.',
    ],
    [
      'Allow it, since spirit can only be lit when it has been heated.',
      'From 40 % vol it is to be treated as flammable at room temperature.',
    ],
    [
      'Allow it, but only a few steps further away.',
      'How far the area reaches is settled by the site’s assessment and not by steps.',
    ],
    [
      'Sniff first, and allow it if you smell nothing.',
      'The nose grows used to spirit and measures nothing.',
    ],
    ['Wet the floor round it and let them go on.', 'Wet floors do not keep vapour from a spark.'],
  ],
  would: [
    [
      'Stop it, and have the thing taken out of the spirit area.',
      'Spirit over 40 % vol may give off vapour that burns at room temperature, and sparks are kept away from it.',
    ],
    [
      'Ask those in charge for a tool that is made for such a place.',
      'Which gear is allowed where is settled by your site’s assessment and local code.',
    ],
    [
      'Let it wait until a permit for this work has been given.',
      'Work that may spark needs leave, given as your site’s procedure says.',
    ],
    [
      'Have it done elsewhere, in a place without vapour.',
      'Where that is, the site’s assessment says, and not the nose.',
    ],
  ],
} satisfies Before;
