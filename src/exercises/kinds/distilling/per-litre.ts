// Energy for a litre of pure alcohol, from the meters of a week.
import perLitre from '../../../calculators/distilling/per-litre.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(perLitre, {
  level: 1,
  ask: 'energy',
  vary: {
    alcohol: [8000, 9000, 10_000, 12_000, 15_000],
    fuel: [180_000, 200_000, 216_000, 240_000, 288_000],
    power: [14_400, 18_000, 21_600, 25_200],
    water: [1_000_000],
    factor: [0.18],
  },
  prompt: (show) =>
    `A week’s meters say ${show.fuel} of fuel and ${show.power} of electricity, and the house made ${show.alcohol}. How much energy is that for each litre of pure alcohol?`,
  working: ({ alcohol, fuel, power }, { energy }) => [
    'Both meters, over the litres of pure alcohol of the same days',
    `(${w(fuel)} + ${w(power)}) ÷ ${w(alcohol)} = ${n(energy, 2)} MJ`,
  ],
  slips: [
    {
      family: 'forgotten',
      gives: (_, { fuelOnly }) => fuelOnly,
      say: 'The electricity was left out.',
    },
    {
      family: 'otherFigure',
      gives: ({ fuel, power, alcohol }) => (fuel + power) / alcohol / 3.6,
      say: 'Those are kilowatt hours; megajoules were asked for, and one kilowatt hour is 3.6 of them.',
    },
    {
      family: 'sign',
      gives: ({ fuel, power, alcohol }) => (fuel - power) / alcohol,
      say: 'Both meters add: the electricity was taken off the fuel.',
    },
  ],
});

export default { ...kind, since: 4 };
