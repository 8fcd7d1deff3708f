// Kst of a dust from the pressure rise in a test vessel.
import dustClass from '../../../calculators/milling/dust-class.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const side = (vessel: number) => Math.cbrt(vessel / 1000);

export default exercise(dustClass, {
  topic: 'safety',
  title: 'Kst from a laboratory’s report',
  level: 2,
  ask: 'violence',
  vary: {
    rise: [160, 180, 190, 200, 210, 220, 230, 240, 250, 260, 280, 300, 320, 340],
    vessel: [20, 27, 64, 125, 216],
  },
  within: 0.015,
  prompt: (show, { vessel }) =>
    `A report on a dust gives a fastest rise of ${show.rise} in a vessel of ${show.vessel}, which is ${vessel / 1000} m³; the cube root of that is ${n(side(vessel), 3)}. Kst is the rise times the cube root of the vessel’s cubic metres. What is it, in bar m/s?`,
  slips: [
    {
      family: 'thousand',
      gives: (_, { violence }) => violence * 10,
      say: 'The cube root of the litres was taken; the rule asks for cubic metres.',
    },
    {
      family: 'forgotten',
      gives: ({ rise, vessel }) => (rise * vessel) / 1000,
      say: 'The volume itself was used; take its cube root first.',
    },
    {
      family: 'upsideDown',
      gives: ({ rise, vessel }) => rise / side(vessel),
      say: 'It was divided by the cube root; in a small vessel pressure rises faster, so multiply.',
    },
  ],
  working: ({ rise, vessel }, { violence }) => [
    `Cube root of ${vessel / 1000} m³ = ${n(side(vessel), 3)}`,
    `${rise} × ${n(side(vessel), 3)} = ${n(violence, 0)} bar m/s`,
    'Even the lowest class, to 200 bar m/s, can kill; what a mill needs is decided by specialists from a test of its own dust',
  ],
});
