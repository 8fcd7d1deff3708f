// What sheets of generators before 7 show for “Bending over the hatch”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Call them back at once, lead everyone away, then close the hatch.',
    'Above the wash may lie nearly pure carbon dioxide, which fells a person in a breath. If they are dizzy: fresh air, and help as your site lays down. Then report it.',
  ],
  others: [
    [
      'Let them have one quick sniff, and hold their jacket.',
      'One breath can be enough: at 25 % carbon dioxide in air a person drops almost at once.',
    ],
    [
      'Ask them to hold their nose, to be quick, and only to look.',
      'They would still breathe what lies over the wash. The head does not belong there.',
    ],
    [
      'Go up beside them and show how to fan the gas towards the nose by hand.',
      'Then two heads are over the hatch. Offer the smell in a glass, well away from it.',
    ],
    [
      'Nothing, for a little carbon dioxide is in every fizzy drink too.',
      'In air it poisons. At 7 to 10 % people pass out within a few minutes and may die, and at 25 % almost at once.',
    ],
    [
      'Finish your sentence, then explain the danger to the whole group.',
      'The explanation can wait and the person cannot. Stop first, explain later.',
    ],
  ],
  would: [
    [
      'Call them back at once, and lead the whole group away from the washback.',
      'Above the wash may lie nearly pure carbon dioxide, which fells a person in a breath.',
    ],
    [
      'Have the hatch closed, and let them smell it in a glass, well away.',
      'The smell can be had without the gas.',
    ],
    [
      'Break off in mid-sentence; what the danger is can be explained later.',
      'The explanation can wait and the person cannot.',
    ],
    ['Report it afterwards, and keep the step roped off.', 'What happened once on a tour happens again.'],
  ],
} satisfies Before;
