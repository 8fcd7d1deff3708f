// What made a note that somebody smells.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'made-by-what',
  title: 'What made this note?',
  topic: 'nose',
  level: 1,
  sources: ['common-practice'],
  prompt: (note) => `In a nosing session the first word on the sheet is “${note}”. What makes that note?`,
  groups: [
    [
      [
        'The kiln.',
        ['biscuit', 'toast', 'peat smoke', 'tar'],
        'Browning in the kiln makes cereal notes, and peat smoke clings to damp malt there.',
      ],
      [
        'The yeast.',
        ['pear', 'banana', 'soap', 'wax'],
        'Yeast makes esters: of short acids fruit, of long acids cream, soap and wax.',
      ],
      [
        'Bacteria.',
        ['sour milk', 'yoghurt', 'butter', 'vinegar'],
        'Bacteria bring sour milk and butter, and too much of them vinegar.',
      ],
      [
        'The wood.',
        ['vanilla', 'coconut', 'spice', 'bitter tea'],
        'Fire on oak makes vanilla and spice, the oak itself coconut, and too much of it bitter tea.',
      ],
    ],
  ],
});

export default { ...kind, since: 7 };
