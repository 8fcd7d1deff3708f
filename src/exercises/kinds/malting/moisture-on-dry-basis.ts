// Moisture of the whole as water beside the dry matter.
import { formatNumber as n } from '../../../core/format.ts';
import { waterInDry } from '../../../core/malting/moisture.ts';
import { percent } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'moisture-on-dry-basis',
  title: 'Moisture, of the whole and of the dry matter',
  topic: 'malting',
  level: 1,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  vary: { moisture: ['percent', Array.from({ length: 101 }, (_, i) => (300 + 2 * i) / 10)] },
  answer: ({ moisture }) => waterInDry(percent(moisture)),
  prompt: ({ moisture }) =>
    `Grain from the steep is at ${moisture} moisture, as a part of the whole. How much water is that in per cent of the dry matter?`,
  working: ({ moisture }, water) => [
    `Of 100 kg of grain ${moisture} kg are water and 100 − ${moisture} = ${n(100 - moisture, 1)} kg dry matter`,
    `${moisture} ÷ ${n(100 - moisture, 1)} × 100 = ${n(water, 1)} % of the dry matter`,
  ],
  slips: [
    {
      family: 'wetForDry',
      gives: ({ moisture }) => moisture,
      say: 'The two are not the same: of the dry matter alone the water is a larger part.',
    },
    {
      family: 'sign',
      gives: ({ moisture }) => (100 * moisture) / (100 + moisture),
      say: 'The dry matter is a hundred less the water; here the water was added.',
    },
    {
      family: 'upsideDown',
      gives: ({ moisture }) => (100 * (100 - moisture)) / moisture,
      say: 'Dry matter was divided by water; it is water over dry matter.',
    },
  ],
});
