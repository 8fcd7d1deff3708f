// What sheets of generators before 7 show for “The earth wire”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Do not pump until vessel and hose are earthed as the procedure says; report it.',
    'Liquid that flows can charge a hose and a vessel, and the spark falls where the vapour is. Earthing comes before the flow.',
  ],
  others: [
    [
      'Pump at half the speed, since it is speed that makes the charge.',
      'Slower makes less charge, and not none. The procedure wants the bond before spirit flows.',
    ],
    [
      'Start with the first few litres, and let a colleague see to the cable.',
      'The first litres charge it too. The bond comes first.',
    ],
    [
      'Hold the hose against the vessel by hand while it runs.',
      'A hand is no bond, and it puts you where the spark would be.',
    ],
    [
      'Pump it: spirit contains water and cannot be charged.',
      'Nobody has told you that the site’s assessment says so. Vessels and hoses are earthed before spirit flows.',
    ],
    ['Wet the hose from outside and start.', 'Water on the outside is no earth that anybody has checked.'],
  ],
  would: [
    [
      'Do not pump until vessel and hose are earthed as laid down.',
      'Liquid that flows can charge a hose and a vessel, and the spark falls where the vapour is.',
    ],
    ['Have another cable brought and checked, however late it gets.', 'Earthing comes before the flow.'],
    [
      'Shut the valves again, and put the hose away.',
      'What stands ready is started by somebody who does not know.',
    ],
    [
      'Tell whoever is in charge that it cannot be earthed.',
      'They decide what is done, by the site’s procedure.',
    ],
  ],
} satisfies Before;
