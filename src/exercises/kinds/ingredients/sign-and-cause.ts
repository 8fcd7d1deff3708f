// What is wrong with barley, water or yeast, by its sign.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'sign-and-cause',
  title: 'A sign, and what is behind it',
  topic: 'ingredients',
  level: 1,
  sources: ['montana-barley', 'common-practice'],
  prompt: (sign) => `${sign} What is behind it?`,
  groups: [
    [
      [
        'Dormancy.',
        [
          'Fresh barley will not sprout in September’s count, and in November’s it does.',
          'A live lot refuses to sprout. Some weeks in store, and it sprouts.',
        ],
        'Dormant grain is alive and asleep, and time cures it.',
      ],
      [
        'A lot that stands little water.',
        [
          'A lot sprouts well in the laboratory. In the steep it starts, and then stops.',
          'Given a long first wet, one lot stands still in the steep, though it was alive.',
        ],
        'Some lots drown in a long wet: a trial steep shows how much one stands.',
      ],
      [
        'Damp grain, breathing.',
        [
          'A heap of barley is warm inside and smells musty.',
          'Barley went into store at 17 % moisture, and the probe in it climbs.',
        ],
        'Damp grain breathes and warms itself, and insects and mould follow.',
      ],
      [
        'Two varieties in one bin.',
        [
          'On one floor some corns have long rootlets when others have hardly begun.',
          'Growth is uneven, whatever the steep: half of the corns are always ahead.',
        ],
        'Varieties take up water at their own pace, so no steep suits both.',
      ],
      [
        'A dirty lot.',
        [
          'The intake stands in a cloud whenever one lot is tipped.',
          'A lot leaves a grey layer on every ledge of the intake.',
        ],
        'Dust is dirt in the lot. It burns, and mould spores in it harm the lungs.',
      ],
    ],
    [
      [
        'Scale.',
        [
          'Heating the hot liquor tank takes longer each month.',
          'The steam bill creeps up from month to month, at the same number of mashes.',
        ],
        'A crust of chalk keeps heat from passing.',
      ],
      [
        'Warm water.',
        [
          'In August the wort reaches the washback too warm, and the condensers struggle.',
          'At full flow nothing gets as cold as it did in March.',
        ],
        'Warm water takes up less heat for each litre, so more of it is needed.',
      ],
      [
        'A choked screen.',
        [
          'In autumn, after a wet night, the intake gives half of its flow.',
          'The river is high, and yet the flow meter of the intake falls from day to day.',
        ],
        'Leaves close the screen of an intake. A dry month would show in the river too.',
      ],
      [
        'A tank left standing.',
        [
          'After two weeks’ rest the first water has a stale taste, and next day it is gone.',
          'On Monday’s first draw the water smells. What is drawn later does not.',
        ],
        'Water that stands takes on a taste, and fresh water behind it has none.',
      ],
    ],
    [
      [
        'Old or warm yeast.',
        [
          'A washback starts slowly, and then goes sour.',
          'The start drags, and bacteria have used the time: the wash is sour.',
        ],
        'It has few living cells, and bacteria use the time that it loses.',
      ],
      [
        'Pitched into hot wort.',
        [
          'Fresh yeast went in, well counted. It never starts.',
          'The same box of yeast worked yesterday, and today’s washback shows no sign of life.',
        ],
        'Yeast suffers above 35 °C, however fresh it was.',
      ],
      [
        'Too little yeast.',
        [
          'Fresh yeast takes its time before it starts. Then all goes well, and nothing is sour.',
          'The lag is long, the wash is clean: the yeast had to grow first.',
        ],
        'What was pitched must first grow to its number.',
      ],
      [
        'Others came with it.',
        [
          'A strange smell stands over the washback within the first hours.',
          'Before the yeast can have done much, the wash smells foreign.',
        ],
        'Wild yeasts or bacteria that come with the yeast show early.',
      ],
    ],
  ],
});

export default { ...kind, since: 7 };
