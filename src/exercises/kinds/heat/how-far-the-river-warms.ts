// By how much a river is warmer below a house that cools with it.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'how-far-the-river-warms',
  title: 'How far the river warms',
  topic: 'heat',
  level: 2,
  sources: ['derived'],
  of: 'temperatureDifference',
  to: 2,
  vary: {
    river: ['flow', [300, 350, 400, 450, 500, 600]],
    drawn: ['flow', [16, 18, 20, 24, 25, 30]],
    rise: ['temperatureDifference', [18, 20, 22, 25, 28]],
  },
  answer: ({ river, drawn, rise }) => (drawn * rise) / river,
  prompt: (show, _, v) =>
    `A river brings ${show.river}. A house takes ${show.drawn} of it for cooling and gives all of that back, ${v.rise} degrees warmer. How much warmer than above the house is the river once all is mixed?`,
  slips: [
    {
      family: 'upsideDown',
      gives: ({ river, drawn, rise }) => (river * rise) / drawn,
      say: 'Upside down: the small flow warms the large one by little.',
    },
    {
      family: 'wrongWhole',
      gives: ({ river, drawn, rise }) => (drawn * rise) / (river - drawn),
      say: 'The heat was spread over what stayed in the river. The water given back has its part of it.',
    },
    {
      family: 'averaged',
      gives: ({ rise }) => rise / 2,
      say: 'The two waters were taken as equal amounts. Each counts by its flow.',
    },
  ],
  working: ({ river, drawn, rise }, answer) => [
    'The heat is spread over the whole river: rise of the river = flow drawn × its rise ÷ flow of the river',
    `${n(drawn, 0)} × ${n(rise, 0)} ÷ ${n(river, 0)} = ${n(answer, 2)} degrees. What is allowed, the permit says.`,
  ],
});

export default { ...kind, since: 7 };
