// The beta-amylase that a rest leaves alive.
import conversion from '../../../calculators/mashing/conversion.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { halfLife } from '../../../core/mashing/enzymes.ts';
import { celsius, quantity } from '../../../core/quantity.ts';
import { exercise } from '../../exercise.ts';

const MINUTES = [5, 6, 8, 10, 12, 14, 15, 16, 18, 20, 22, 25];
const TEMPERATURES = [61.5, 61.7, 61.8, 62, 62.2, 62.3, 62.5, 62.8, 63, 63.2, 63.5];

export default exercise(conversion, {
  title: 'What a rest leaves of an enzyme',
  level: 2,
  ask: 'beta',
  vary: {
    rests: MINUTES.flatMap((minutes) =>
      TEMPERATURES.map((temperature) => [
        { minutes: quantity('minutes', minutes), temperature: celsius(temperature) },
      ]),
    ),
  },
  within: 0.03,
  quotes: { half: [1, ({ rests: [rest] }) => halfLife('beta', rest!.temperature)] },
  redo: ({ rests: [rest] }, { half }) => ({ beta: 100 * 0.5 ** (rest!.minutes / half) }),
  prompt: (_, { rests: [rest] }, { half }) =>
    `Half of the beta-amylase is lost in ${n(half, 1)} minutes at ${rest!.temperature} °C, and then half of the rest in as long again. The part left is ½ to the power of minutes ÷ half-life. What per cent is alive after ${rest!.minutes} minutes?`,
  before: {
    prompt: (_, { rests: [rest] }, { half }) =>
      `By constants recalled from memory, half of the beta-amylase is lost in ${n(half, 1)} minutes at ${rest!.temperature} °C, and then half of the rest in as long again. The part left is ½ to the power of minutes ÷ half-life. What per cent is alive after ${rest!.minutes} minutes?`,
  },
  slips: [
    {
      family: 'compound',
      gives: ({ rests: [rest] }, { half }) => 100 - (50 * rest!.minutes) / half,
      say: 'A straight line was drawn; each half-life takes half of what is left, so the loss slows down.',
    },
    {
      family: 'otherFigure',
      gives: (_, { beta }) => 100 - beta,
      say: 'That is the part lost; the question is for the part still alive.',
    },
    {
      family: 'upsideDown',
      gives: ({ rests: [rest] }, { half }) => 100 * 0.5 ** (half / rest!.minutes),
      say: 'The half-life was divided by the minutes; it is the minutes over the half-life.',
    },
  ],
  working: ({ rests: [rest] }, { beta, half }) => [
    `Half-lives: ${rest!.minutes} ÷ ${n(half, 1)} = ${n(rest!.minutes / half, 2)}`,
    `½ to the power of ${n(rest!.minutes / half, 2)} = ${n(beta / 100, 3)}, or ${n(beta, 1)} %`,
    'The constants are harsh: sugar in a real mash protects the enzyme',
  ],
});
