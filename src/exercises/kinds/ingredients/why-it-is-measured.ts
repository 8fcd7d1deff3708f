// Why a house measures what it measures of its water and its grain.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'why-it-is-measured',
  title: 'Why it is measured',
  topic: 'ingredients',
  level: 1,
  sources: ['oxford-beer', 'montana-barley', 'oiml-r22', 'memory'],
  prompt: (measure) => `A new starter sees ${measure}, and asks why. What is the reason?`,
  groups: [
    [
      [
        'It sets how much is needed for cooling.',
        ['the temperature of the intake being read all year', 'a thermometer in the water that comes in'],
        'Cold water takes up more heat for each litre.',
      ],
      [
        'It tells what a litre of spirit takes.',
        ['a meter in the pipe of the intake', 'the litres of the intake being written down each day'],
        'Litres drawn over litres of pure alcohol can be set beside other houses.',
      ],
      [
        'It tells of scale, and of the mash’s acidity.',
        ['the hardness of the water on the sheet', 'a test for calcium in the water'],
        'Salts of calcium and magnesium settle as scale, and act on the pH of a mash.',
      ],
      [
        'It says how much goes in by weight.',
        [
          'the density of the water that lets spirit down, on the filling sheet',
          '998.2 kg/m³ written beside the water for the vat',
        ],
        'Water is let into spirit by mass, and the density turns litres into kilograms.',
      ],
    ],
    [
      [
        'Part of what is paid for is water.',
        [
          'the moisture of each load of barley on the docket',
          'barley being dried in a small oven at the gate',
        ],
        'Barley is bought by weight, and only the dry matter makes malt.',
      ],
      [
        'Dead grain makes no malt.',
        ['four hundred corns being made to sprout', 'a count of sprouted corns before a load is let in'],
        'Malting is growing: 95 of a hundred or more must sprout.',
      ],
      [
        'Where there is more of it, there is less starch.',
        ['the nitrogen of each lot on the docket', 'protein being asked of every lot'],
        'The grain has room for starch or for protein.',
      ],
      [
        'Small ones do not take up water like large ones.',
        ['a sample of barley being shaken on sieves', 'what falls through the sieve being weighed'],
        'Uneven grains wet unevenly, and the smallest go for feed.',
      ],
    ],
  ],
});

export default { ...kind, since: 7 };
