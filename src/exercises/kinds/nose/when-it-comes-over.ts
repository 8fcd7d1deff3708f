// When in the run a note comes over.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'when-it-comes-over',
  title: 'When does it come over?',
  topic: 'nose',
  level: 1,
  sources: ['common-practice', 'memory'],
  prompt: (note) =>
    `New spirit is nosed from the safe, glass by glass. One smells of ${note}. When does that come over?`,
  groups: [
    [
      [
        'First.',
        ['glue', 'solvent', 'green apple'],
        'Acetaldehyde and ethyl acetate come first: sharp, solvent, green apple, glue.',
      ],
      [
        'Early and in the middle.',
        ['pear', 'banana', 'ripe fruit'],
        'Esters of short acids, fruit, come early and in the middle.',
      ],
      [
        'All through the run.',
        ['cabbage', 'a struck match', 'meat'],
        'Sulphur comes through the whole run: meat, match, cabbage.',
      ],
      ['Last.', ['sweat', 'leather', 'a wet dog'], 'Sweat, leather and wet dog are feints, and come last.'],
    ],
  ],
});

export default { ...kind, since: 7 };
