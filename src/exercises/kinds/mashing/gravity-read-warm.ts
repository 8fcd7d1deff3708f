// A hydrometer read in warm wort.
import gravityReadWarm from '../../../calculators/mashing/gravity-read-warm.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { quantity } from '../../../core/quantity.ts';
import { waterAt } from '../../../core/wort/warm-reading.ts';
import { exercise } from '../../exercise.ts';

const at20 = waterAt(quantity('temperature', 20));

const kind = exercise(gravityReadWarm, {
  level: 2,
  ask: 'gravity',
  within: 0.0006,
  vary: {
    reading: [1.04, 1.042, 1.044, 1.046, 1.048, 1.05, 1.052, 1.054, 1.056, 1.058],
    temperature: [28, 30, 32, 34, 35, 36, 38, 40],
  },
  quotes: { water: [2, ({ temperature }) => waterAt(temperature)] },
  redo: ({ reading }, { water }) => ({ gravity: quantity('gravity', (reading * at20) / water) }),
  prompt: (show, _, { water }) =>
    `A hydrometer made for 20 °C shows ${show.reading} in wort at ${show.temperature}. Water weighs ${n(at20, 2)} kg/m³ at 20 °C and ${n(water, 2)} there; take the wort to swell as water does, and leave the glass out. What is the gravity at 20 °C, to three decimals at least?`,
  working: ({ reading }, { gravity, water }) => [
    'Gravity at 20 °C = reading × water’s density at 20 °C ÷ water’s density there',
    `${w(reading)} × ${n(at20, 2)} ÷ ${n(water, 2)} = ${n(gravity, 4)}; the glass swells too and would take off 0.0005 at most`,
  ],
  slips: [
    {
      family: 'temperature',
      gives: ({ reading }) => reading,
      say: 'That is the reading as it stands. Warm wort is thinner, so it reads too low: bring it to 20 °C.',
    },
    {
      family: 'upsideDown',
      gives: ({ reading }, { water }) => (reading * water) / at20,
      say: 'Multiplied where one divides: cold wort is denser than warm, so the gravity must rise.',
    },
  ],
});

export default { ...kind, since: 4 };
