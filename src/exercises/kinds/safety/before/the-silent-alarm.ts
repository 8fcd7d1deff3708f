// What sheets of generators before 7 show for “The alarm is silent”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stay out until carbon dioxide itself has been measured by the site’s procedure.',
    'Air with 5 % carbon dioxide still holds 19.9 % oxygen, so an oxygen alarm set at 19.5 can stay silent in air that is already harmful.',
  ],
  others: [
    [
      'Go in: the alarm is set at 19.5 %, and the reading is above it.',
      'Carbon dioxide poisons long before it has crowded out enough oxygen to set off that alarm.',
    ],
    [
      'Go in with the oxygen meter on your belt and come out when it sounds.',
      'It may sound too late or never. It does not measure the gas that harms you here.',
    ],
    [
      'Go in quickly and breathe through a dust mask.',
      'A dust mask holds back dust. Gas goes straight through it.',
    ],
    [
      'Open the door for five minutes, and then go in.',
      'The gas is heavier than air and stays in low places. Only a measurement, by the site’s rules, can tell.',
    ],
    [
      'Go in while a colleague watches you from the door.',
      'A watcher does not make the air fit to breathe. The air is measured first, and the permit says the rest.',
    ],
  ],
  would: [
    [
      'Stay out until carbon dioxide itself has been measured there.',
      'Air with 5 % carbon dioxide still holds 19.9 % oxygen, so an oxygen alarm set at 19.5 can stay silent.',
    ],
    [
      'Ask for the permit, as for any place with bad air.',
      'The site’s procedure says what is measured, and by whom.',
    ],
    [
      'Have the right meter brought, and let the job wait for it.',
      'Only that meter measures the gas that harms here.',
    ],
    ['Warn the others that its silence says nothing.', 'They would trust it as you might have.'],
  ],
} satisfies Before;
