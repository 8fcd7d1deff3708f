// About how much carbon dioxide a washback gives off.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'size-of-a-cloud',
  title: 'About how much gas?',
  topic: 'safety',
  form: 'estimate',
  level: 2,
  sources: ['derived'],
  of: 'space',
  to: 0,
  vary: {
    wash: ['volume20', [5000, 8000, 10_000, 15_000, 20_000, 30_000, 50_000], 'wash.volume'],
    strength: ['strength', [7, 7.5, 8, 8.5, 9, 10], 'wash.strength'],
  },
  answer: (v) => (v.wash * v.strength * 0.413) / 100,
  prompt: (show) =>
    `Without paper: a washback makes ${show.wash} of wash at ${show.strength}. About how many cubic metres of carbon dioxide does it give off on the way? With a litre of pure alcohol come about 400 L of the gas.`,
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer * 1000,
      say: 'That is in litres; a cubic metre is a thousand of them.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => v.wash * 0.413,
      say: 'All the wash was taken as alcohol.',
    },
    {
      family: 'thousand',
      gives: (_, answer) => answer / 10,
      say: 'A ten was lost.',
    },
  ],
  working: (v, answer) => [
    `Pure alcohol: ${n(v.wash, 0)} × ${v.strength} ÷ 100 = ${n((v.wash * v.strength) / 100, 0)} L`,
    `× 0.4 m³ = about ${n((v.wash * v.strength * 0.4) / 100, 0)} m³; in full, with 0.413, ${n(answer, 0)}`,
    'It lies low and flows into drains, pits and cellars. Where it is, only a meter for carbon dioxide tells.',
  ],
});
