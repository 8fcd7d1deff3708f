// What sheets of generators before 7 show for “Someone is down in a vessel”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stay outside, raise the alarm, and say that the air in there may be bad.',
    'You cannot help if you fall too. Rescuers trained and equipped for it, with air of their own, go in; your site’s procedure says how they are called.',
  ],
  others: [
    [
      'Climb down at once, hold your breath and bring them out into the open air.',
      'Whoever follows without air of their own becomes the second casualty. Lifting somebody takes more than one breath.',
    ],
    [
      'Tie a rope round your waist, have a second colleague hold it, and climb down.',
      'A rope does not give you air. Two untrained people then have to be pulled out instead of one.',
    ],
    [
      'Stay on the rim, lean in as far as you can and try to catch hold of them.',
      'The bad air may reach to the rim. Heads do not belong in there either.',
    ],
    [
      'Fetch the gas meter from the workshop first, so that you can tell what is wrong.',
      'Every minute counts. The alarm comes first, and no reading would allow you to go in.',
    ],
    [
      'Hold a burning match over the opening to see whether there is air.',
      'A flame says nothing of carbon dioxide in amounts that harm, and where there is vapour or dust it may kill you both.',
    ],
    [
      'Pour water over them to wake them, and wait a moment to see.',
      'That loses time, and they would wake in the same air. Raise the alarm.',
    ],
  ],
  would: [
    [
      'Stay outside, raise the alarm, and say that the air in there may be bad.',
      'You cannot help if you fall too. Rescuers trained and equipped for it go in.',
    ],
    [
      'Keep everybody else away from the opening too, until the rescuers are here with their gear.',
      'Those who want to help are the next to fall.',
    ],
    [
      'Call those who are trained to go in and bring air of their own along.',
      'Your site’s procedure says how they are called.',
    ],
    [
      'Tell the rescuers when you found them and what the vessel held before.',
      'It tells them what the air may be.',
    ],
  ],
} satisfies Before;
