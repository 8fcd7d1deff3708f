// Pure alcohol in a cask from its weight.
import regaugeByWeight from '../../../calculators/maturing/regauge-by-weight.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { tabled } from '../strength/tabled.ts';

export default exercise(regaugeByWeight, {
  title: 'A cask on the scales',
  level: 2,
  ask: 'alcohol',
  vary: {
    gross: [192, 196, 200.5, 203, 205.5, 208, 212],
    tare: [46, 48, 50, 52, 54],
    strength: [57, 58, 59, 59.5, 60, 61],
    temperature: [20],
    filled: [200],
    filledAt: [63.5],
    years: [10],
  },
  within: 0.008,
  quotes: { density: [1, ({ strength }) => tabled(strength)] },
  prompt: (show, _, { density }) =>
    `On the scales a cask and its spirit show ${show.gross}, and the empty cask ${show.tare}. A sample is at ${show.strength}, for which the table gives ${n(density, 1)} kg/m³ at 20 °C. How much pure alcohol is in the cask?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ gross, strength }, { density }) => ((1000 * gross) / density) * (strength / 100),
      say: 'The wood was weighed as if it were spirit. Take the empty cask off first.',
    },
    {
      family: 'massForVolume',
      gives: ({ gross, tare, strength }) => ((gross - tare) * strength) / 100,
      say: 'Kilograms were taken for litres. Divide by the density before you multiply by the strength.',
    },
    {
      family: 'upsideDown',
      gives: ({ gross, tare, strength }, { density }) =>
        (((gross - tare) * density) / 1000) * (strength / 100),
      say: 'The kilograms were multiplied by the density. Spirit is lighter than water, so there are more litres than kilograms: divide.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ gross, tare }, { density }) => (1000 * (gross - tare)) / density,
      say: 'Those are the litres of spirit. Multiply by the strength for the pure alcohol.',
    },
  ],
  working: ({ gross, tare, strength }, { found, alcohol, density }) => [
    `Spirit: ${w(gross)} − ${w(tare)} = ${w(gross - tare)} kg`,
    `${w(gross - tare)} ÷ ${w(density)} × 1,000 = ${w((1000 * (gross - tare)) / density)} L; air carries about a thousandth of the weight, so there are ${w(found)} L`,
    `${w(found)} × ${n(strength, 1)} ÷ 100 = ${n(alcohol, 1)} L of pure alcohol`,
  ],
});
