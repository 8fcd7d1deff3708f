// What sheets of generators before 7 show for “A splash of cleaning liquor”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Rinse at once with much clean running water, and have somebody call for help.',
    'Heat and caustic both go on working until they are rinsed away. How long, and what then, is said by the site’s first-aid rules and the sheet of the chemical.',
  ],
  others: [
    [
      'Neutralise it with some vinegar or weak acid.',
      'Acid on caustic makes heat and a second burn, and looking for it loses time. Water comes first.',
    ],
    [
      'Wipe it off with a dry cloth and see whether it reddens.',
      'Wiping spreads it, and caustic burns before it shows.',
    ],
    ['Put ointment on it and wrap it up.', 'That keeps the caustic and the heat in.'],
    [
      'Walk with them to the office to enter it in the accident book.',
      'It has to be entered, but afterwards. Rinse at once.',
    ],
    ['Look up the chemical’s data sheet first.', 'Someone else can fetch it. The water cannot wait.'],
  ],
  would: [
    [
      'Rinse it at once with much clean running water.',
      'Heat and caustic both go on working until they are rinsed away.',
    ],
    [
      'Have somebody call for help while you go on with the water.',
      'How long, and what then, is said by the site’s first-aid rules.',
    ],
    [
      'Get them to the nearest shower or eye bath.',
      'Clean running water is nearest there, as your site has laid it out.',
    ],
    [
      'Send someone for the data sheet, and do not wait for it.',
      'The sheet is wanted, and the water does not stop for it.',
    ],
  ],
} satisfies Before;
