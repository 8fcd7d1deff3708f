// The loss in a warmer store, by the pressure of alcohol vapour.
import caskInTheStore from '../../../calculators/maturing/cask-in-the-store.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { celsius } from '../../../core/quantity.ts';
import { ethanolPressure } from '../../../core/vapour/equilibrium.ts';
import { exercise } from '../../exercise.ts';

const pressure = (temperature: number) => ethanolPressure(celsius(temperature));

export default exercise(caskInTheStore, {
  id: 'loss-in-a-warmer-store',
  title: 'The same cask in a warmer store',
  level: 2,
  ask: 'lossHere',
  vary: {
    size: [200],
    measuredOn: [200],
    loss: [1.5, 1.6, 1.8, 2, 2.2, 2.5],
    strength: [63.5],
    humidity: [65],
    steady: [65],
    temperature: [15, 16, 17, 18, 20, 22],
    measuredAt: [8, 9, 10, 11, 12],
    years: [5],
  },
  within: 0.025,
  quotes: {
    here: [2, ({ temperature }) => pressure(temperature)],
    there: [2, ({ measuredAt }) => pressure(measuredAt)],
  },
  redo: ({ loss }, { here, there }) => ({ lossHere: (loss * here) / there }),
  prompt: (show, _, { here, there }) =>
    `At ${show.measuredAt} the casks lose ${show.loss} of their alcohol in a year, and alcohol leaves as its vapour presses: ${n(there, 2)} kPa at that temperature, ${n(here, 2)} kPa at ${show.temperature}. What would they lose in a year in a store at ${show.temperature}?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ temperature, measuredAt, loss }) => (loss * temperature) / measuredAt,
      say: 'The degrees themselves were compared. Celsius starts at an arbitrary zero; compare the two pressures.',
    },
    {
      family: 'upsideDown',
      gives: ({ loss }, { here, there }) => (loss * there) / here,
      say: 'The pressures changed places. Where it is warmer more must leave.',
    },
    {
      family: 'sign',
      gives: ({ loss }, { here, there }) => loss + here - there,
      say: 'The difference of the pressures was added to the loss. Kilopascals are no per cent: multiply by the one over the other.',
    },
  ],
  working: ({ loss }, { lossHere, here, there }) => [
    'Loss here = loss there × vapour pressure here ÷ vapour pressure there',
    `${n(loss, 1)} × ${n(here, 2)} ÷ ${n(there, 2)} = ${n(lossHere, 2)} %; compounded over the year it is a trifle less`,
  ],
});
