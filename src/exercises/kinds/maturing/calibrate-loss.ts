// The mean yearly loss between filling and regauge.
import calibrateLoss from '../../../calculators/maturing/calibrate-loss.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const left = (volume: number, strength: number, indrink: number) =>
  ((volume * strength) / 100) * (1 - indrink / 100);

export default exercise(calibrateLoss, {
  title: 'A yearly loss from two readings',
  level: 3,
  ask: 'mean',
  vary: {
    volume: [195, 200, 205],
    strength: [63.5],
    indrink: [2],
    years: [8, 10, 12],
    foundVolume: [158, 160, 162, 164, 166, 168],
    foundStrength: [58.5, 59, 59.5, 60, 60.5],
    humidity: [80],
  },
  within: 0.02,
  prompt: (show) =>
    `A cask was filled with ${show.volume} at ${show.strength}, and the dry wood drank ${show.indrink} of it in the first days. After ${show.years} it holds ${show.foundVolume} at ${show.foundStrength}. What part of its alcohol has the air taken in a mean year, each year the same part of what was left?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ volume, strength, foundVolume, foundStrength, years }) =>
        100 * (1 - ((foundVolume * foundStrength) / (volume * strength)) ** (1 / years)),
      say: 'What the dry wood drank was put down to the air. Take it off the filling before the years begin.',
    },
    {
      family: 'compound',
      gives: ({ volume, strength, indrink, foundVolume, foundStrength, years }) =>
        (100 / years) * (1 - (foundVolume * foundStrength) / 100 / left(volume, strength, indrink)),
      say: 'The whole loss was divided by the years. Each year takes its part of less and less, so the yearly part is found by a root.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ volume, indrink, foundVolume, years }) =>
        100 * (1 - (foundVolume / (volume * (1 - indrink / 100))) ** (1 / years)),
      say: 'Only the litres were compared. The strength fell too: compare the pure alcohol.',
    },
  ],
  working: ({ volume, strength, indrink, foundVolume, foundStrength, years }, { mean }) => {
    const [start, end] = [left(volume, strength, indrink), (foundVolume * foundStrength) / 100];
    return [
      `Left to the air: ${n(volume, 0)} × ${strength} ÷ 100, less ${indrink} % = ${n(start, 2)} L of pure alcohol`,
      `Found: ${n(foundVolume, 0)} × ${foundStrength} ÷ 100 = ${n(end, 2)} L`,
      `${n(end, 2)} ÷ ${n(start, 2)} = ${n(end / start, 4)}; to the power 1 ÷ ${years} that is ${n((end / start) ** (1 / years), 4)}`,
      `So ${n(mean, 2)} % goes in a year`,
    ];
  },
});
