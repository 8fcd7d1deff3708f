// A tank read warm or cold, brought to 20 °C.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const PART = 0.0009; // growth of 63.5 % vol for each degree near 20 °C, as the handbook gives it

export default sum({
  id: 'warm-tank',
  title: 'Litres brought to 20 °C',
  topic: 'strength',
  level: 1,
  sources: ['oiml-r22', 'derived'],
  of: 'volume20',
  to: 0,
  within: 0.001,
  vary: {
    volume: ['volume', [4000, 4800, 5000, 6500, 7500, 8000, 9600, 10_000, 12_000, 15_000, 18_000]],
    temperature: ['temperature', [9, 10, 11, 12, 14, 26, 28, 30, 31]],
  },
  answer: ({ volume, temperature }) => volume * (1 - PART * (temperature - 20)),
  prompt: (show) =>
    `A tank of spirit at 63.5 % vol shows ${show.volume} at ${show.temperature}. Near that strength a litre grows by 0.09 % for each degree. How many litres would it show at 20 °C?`,
  working: ({ volume, temperature }, answer) => [
    `${temperature > 20 ? 'Warm spirit takes more room: take off' : 'Cold spirit takes less room: add'} 0.09 % for each degree away from 20 °C`,
    `${n(Math.abs(temperature - 20), 0)} degrees are ${n(Math.abs(temperature - 20) * 100 * PART, 2)} %, or ${n(volume * PART * Math.abs(temperature - 20), 0)} L of ${n(volume, 0)}; at 20 °C ${n(answer, 0)} L`,
  ],
  slips: [
    {
      family: 'sign',
      gives: ({ volume, temperature }) => volume * (1 + PART * (temperature - 20)),
      say: 'The correction went the wrong way. Warm spirit takes more room than it would at 20 °C, cold spirit less.',
    },
    {
      family: 'temperature',
      gives: ({ volume, temperature }) => volume * (1 - PART * temperature),
      say: 'The whole temperature was used. What counts is how far it is from 20 °C.',
    },
    {
      family: 'percent',
      gives: ({ volume, temperature }) => volume * (1 - 100 * PART * (temperature - 20)),
      say: 'The 0.09 was taken as a part and not as per cent. 0.09 % is 0.0009.',
    },
    {
      family: 'forgotten',
      gives: ({ volume }) => volume,
      say: 'The reading was left as it is. Bring it to 20 °C before it is compared or booked.',
    },
  ],
});
