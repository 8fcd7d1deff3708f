// What a house does to have less of a note.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'which-lever',
  title: 'Which lever?',
  topic: 'nose',
  level: 2,
  sources: ['common-practice', 'harrison-2011', 'memory'],
  prompt: (note) =>
    `The house finds too much ${note}, and wants less of it next time. Which lever does it pull?`,
  groups: [
    [
      [
        'End the heart sooner.',
        ['sweat and leather in its new spirit', 'wet dog in its new spirit'],
        'What comes last, feints, is kept out of the heart by ending it sooner.',
      ],
      [
        'Take more foreshots.',
        ['glue in its new spirit', 'sharp solvent in its new spirit'],
        'What comes first is kept out of the heart by beginning it later.',
      ],
      [
        'Rest the copper, and run slower.',
        ['cabbage all through its run', 'drains all through its run'],
        'Copper, rested and given time, takes up sulphur.',
      ],
      [
        'Fill refill casks.',
        ['plank in its matured spirit', 'bitter tea in its matured spirit'],
        'Wood that has been used gives less, and fewer years do the same.',
      ],
      [
        'Air and waft each cask before filling.',
        ['cork in single casks', 'mould in single casks'],
        'What the cask brings is found with the face off the bung, before it is filled.',
      ],
    ],
  ],
});

export default { ...kind, since: 7 };
