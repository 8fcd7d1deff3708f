// A reading of the hydrometer brought to 20 °C by a rule for each degree.
import hydrometerInTheSafe from '../../../calculators/distilling/hydrometer-in-the-safe.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const SLOPE = 0.35; // % vol to a degree, near 60–70 % vol; arithmetic on density data
const SIXTY_FAHRENHEIT = 15.56; // °C

const signed = (value: number) => (value < 0 ? `− ${n(-value, 2)}` : `+ ${n(value, 2)}`);

export default exercise(hydrometerInTheSafe, {
  topic: 'strength',
  level: 1,
  ask: 'strength',
  to: 1,
  vary: {
    marked: ['strength'],
    strengthReading: [59.5, 60.4, 61, 61.5, 62, 62.8, 63.5, 64, 64.6, 65.2, 66, 66.8],
    temperature: [11, 12, 13, 14, 15, 16, 24, 25, 26, 27],
  },
  within: 0.004,
  redo: ({ strengthReading, temperature }, { strength }) => ({
    byDensity: strength,
    strength: strengthReading + SLOPE * (20 - temperature),
  }),
  prompt: (show) =>
    `The hydrometer in the safe, marked for 20 °C, reads ${show.strengthReading} and the thermometer ${show.temperature}. Near this strength each degree makes ${SLOPE} % vol. How strong is the spirit at 20 °C?`,
  slips: [
    {
      family: 'sign',
      gives: ({ strengthReading, temperature }) => strengthReading - SLOPE * (20 - temperature),
      say: 'The correction went the wrong way. Cold spirit is denser and seems weaker than it is; warm spirit seems stronger.',
    },
    {
      family: 'temperature',
      gives: ({ strengthReading }) => strengthReading,
      say: 'That is the reading itself, without its temperature. One without the other is worth nothing.',
    },
    {
      family: 'temperature',
      gives: ({ strengthReading, temperature }) => strengthReading + SLOPE * temperature,
      say: 'The whole temperature was multiplied. What counts is how far it is from 20 °C.',
    },
    {
      family: 'temperature',
      gives: ({ strengthReading, temperature }) => strengthReading + SLOPE * (SIXTY_FAHRENHEIT - temperature),
      say: 'That brings the reading to 60 °F, 15.56 °C. This hydrometer is marked for 20 °C.',
    },
  ],
  working: ({ strengthReading, temperature }, { strength }) => {
    const more = SLOPE * (20 - temperature);
    return [
      'Strength at 20 °C = reading + 0.35 × (20 − temperature)',
      `${n(strengthReading, 1)} + ${SLOPE} × (20 − ${n(temperature, 0)}) = ${n(strengthReading, 1)} ${signed(more)} = ${n(strengthReading + more, 1)} % vol`,
      `${temperature < 20 ? 'The spirit is cold, so denser, so it reads weak' : 'The spirit is warm, so lighter, so it reads strong'}; by the densities themselves it is ${n(strength, 1)} % vol`,
    ];
  },
});
