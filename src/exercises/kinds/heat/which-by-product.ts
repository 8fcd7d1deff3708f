// By-products, by what is said of them.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'which-by-product',
  title: 'Which by-product is it?',
  topic: 'heat',
  level: 1,
  sources: ['common-practice', 'memory'],
  prompt: (said) => `${said} What is it?`,
  groups: [
    [
      [
        'Draff.',
        [
          'It is what the mash does not carry off, and a farmer fetches it the same day.',
          'It leaves wet, feeds cattle, and spoils within days in warm weather.',
        ],
        'Draff is the grain left in the mash tun: mostly water, then protein and fibre.',
      ],
      [
        'Pot ale.',
        [
          'It is hot and sour, and rich in things that use up the oxygen of a river.',
          'It holds spent yeast, and boiled down to a tenth it is a syrup.',
        ],
        'Pot ale is wash without its alcohol.',
      ],
      [
        'Spent lees.',
        [
          'It is nearly all water with some acids, and some copper, from the last still.',
          'It is poor in what a river minds most, but carries copper.',
        ],
        'Spent lees are the water left in the spirit still.',
      ],
      [
        'Rootlets.',
        [
          'It is rubbed off after the kiln, and about a fifth of it is protein.',
          'It grew in the maltings, and with dust comes to some 4 % of the malt.',
        ],
        'Rootlets are what the growing corn put out, and are sold as feed.',
      ],
      [
        'Carbon dioxide.',
        [
          'For each litre of pure alcohol there are 0.75 kg of it, and it is rarely captured.',
          'It came out of the air a summer before, and goes back to it.',
        ],
        'Barley took it from the air, and the yeast gives it back.',
      ],
    ],
  ],
});

export default { ...kind, since: 7 };
