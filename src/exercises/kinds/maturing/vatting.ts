// The strength of two casks put together.
import vatting from '../../../calculators/maturing/vatting.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const FIRST = [120, 150, 165, 172, 180, 190];
const SECOND = [320, 350, 380, 400, 420];
const STRONG = [60.3, 61, 61.8, 62.4, 63];
const WEAK = [50.5, 51.6, 52.8, 54, 55.2];
const spirit = (volume: number, strength: number) => ({ volume, strength, age: 12 });
const pairs = FIRST.flatMap((volume) =>
  SECOND.flatMap((other) =>
    STRONG.flatMap((strong) => WEAK.map((weak) => [spirit(volume, strong), spirit(other, weak)] as const)),
  ),
);

export default exercise(vatting, {
  level: 2,
  ask: 'strength',
  to: 1,
  vary: { casks: pairs },
  within: 0.004,
  redo: ({ casks: [one, two] }, { alcohol }) => ({
    strength: (100 * alcohol) / (one!.volume + two!.volume),
  }),
  prompt: (_, { casks: [one, two] }) =>
    `A cask of ${n(one!.volume, 0)} L at ${n(one!.strength, 1)} % vol and one of ${n(two!.volume, 0)} L at ${n(two!.strength, 1)} % vol are emptied into one vat. How strong is the mixture, leaving aside the little that vanishes in mixing?`,
  slips: [
    {
      family: 'averaged',
      gives: ({ casks: [one, two] }) => (one!.strength + two!.strength) / 2,
      say: 'The two strengths were averaged. The larger cask counts for more: add up the pure alcohol and divide by the litres.',
    },
    {
      family: 'wrongWhole',
      gives: ({ casks: [one, two] }) =>
        (one!.volume * two!.strength + two!.volume * one!.strength) / (one!.volume + two!.volume),
      say: 'Each volume was multiplied by the strength of the other cask. Keep each with its own.',
    },
  ],
  working: ({ casks: [one, two] }, { alcohol, strength }) => [
    `Pure alcohol: ${w((one!.volume * one!.strength) / 100)} + ${w((two!.volume * two!.strength) / 100)} = ${w(alcohol)} L`,
    `${w(alcohol)} ÷ (${w(one!.volume)} + ${w(two!.volume)}) × 100 = ${n(strength, 1)} % vol; by masses it is a trifle more`,
  ],
});
