// The loss in a warmer store, by the pressure of alcohol vapour.
import caskInTheStore from '../../../calculators/maturing/cask-in-the-store.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { celsius } from '../../../core/quantity.ts';
import { ethanolPressure } from '../../../core/vapour/equilibrium.ts';
import { exercise } from '../../exercise.ts';

const pressure = (temperature: number) => Number(ethanolPressure(celsius(temperature)).toFixed(2));

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
  prompt: (show, { temperature, measuredAt }) =>
    `At ${show.measuredAt} the casks lose ${show.loss} of their alcohol in a year, and alcohol leaves as its vapour presses: ${n(pressure(measuredAt), 2)} kPa at that temperature, ${n(pressure(temperature), 2)} kPa at ${show.temperature}. What would they lose in a year in a store at ${show.temperature}?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ temperature, measuredAt, loss }) => (loss * temperature) / measuredAt,
      say: 'The degrees themselves were compared. Celsius starts at an arbitrary zero; compare the two pressures.',
    },
    {
      family: 'upsideDown',
      gives: ({ temperature, measuredAt, loss }) => (loss * pressure(measuredAt)) / pressure(temperature),
      say: 'The pressures changed places. Where it is warmer more must leave.',
    },
    {
      family: 'sign',
      gives: ({ temperature, measuredAt, loss }) => loss + pressure(temperature) - pressure(measuredAt),
      say: 'The difference of the pressures was added to the loss. Kilopascals are no per cent: multiply by the one over the other.',
    },
  ],
  working: ({ temperature, measuredAt, loss }, { lossHere }) => {
    const times = pressure(temperature) / pressure(measuredAt);
    return [
      'Loss here = loss there × vapour pressure here ÷ vapour pressure there',
      `${n(loss, 1)} × ${n(pressure(temperature), 2)} ÷ ${n(pressure(measuredAt), 2)} = ${n(loss * times, 2)} %; compounded over the year, ${n(lossHere, 2)} %`,
    ];
  },
});
