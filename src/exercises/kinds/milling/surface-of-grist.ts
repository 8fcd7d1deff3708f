// The surface of broken grain.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'surface-of-grist',
  title: 'Surface of small pieces',
  topic: 'milling',
  level: 2,
  sources: ['derived'],
  of: 'area',
  to: 1,
  vary: {
    volume: ['volume', [0.5, 0.8, 1, 1.5, 2, 2.5, 3, 4]],
    width: ['length', [0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1.5]],
  },
  answer: ({ volume, width }) => (6 * (volume / 1000)) / (width / 1000),
  prompt: (show) =>
    `Suppose that ${show.volume} of malt, with no air between, were cut into cubes ${show.width} wide. Their surface is 6 ÷ width × volume, in metres throughout. How many square metres is it?`,
  working: ({ volume, width }, answer) => [
    `In metres: ${n(volume / 1000, 4)} m³, and a width of ${n(width / 1000, 5)} m`,
    `6 ÷ ${n(width / 1000, 5)} × ${n(volume / 1000, 4)} = ${n(answer, 1)} m²`,
  ],
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer / 1000,
      say: 'The width was left in millimetres; a thousand of them make a metre.',
    },
    {
      family: 'upsideDown',
      gives: ({ volume, width }) => 6 * volume * width,
      say: 'The width was multiplied by; narrower pieces have more surface, so divide.',
    },
    {
      family: 'forgotten',
      gives: (_, answer) => answer / 6,
      say: 'Only one face was counted; a cube has six.',
    },
  ],
});
