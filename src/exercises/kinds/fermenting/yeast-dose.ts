// Cream yeast for a dose that is known as pressed yeast.
import yeastDose from '../../../calculators/fermenting/yeast-dose.ts';
import { DRY_IN_PRESSED } from '../../../core/fermenting/yeast.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(yeastDose, {
  title: 'Cream for pressed yeast',
  level: 2,
  ask: 'volume',
  vary: {
    given: ['pressed'],
    pressed: [18, 20, 24, 25, 30, 36, 40, 45, 50, 60],
    holds: [150, 160, 165, 170, 175, 180, 190, 200],
    holdsAs: ['dry'],
  },
  prompt: (show) =>
    `A washback has always had ${show.pressed} of pressed yeast, of which ${n(100 * DRY_IN_PRESSED, 0)} % is dry matter. Now cream comes instead, with ${n(Number.parseFloat(show.holds), 0)} g of dry matter in a litre. How much cream is the same dose?`,
  slips: [
    {
      family: 'wetForDry',
      gives: ({ pressed, holds }) => (1000 * pressed) / holds,
      say: 'That takes the dry matter of the cream for pressed yeast. Pressed yeast is mostly water, so bring both to dry matter first.',
    },
    {
      family: 'upsideDown',
      gives: ({ pressed, holds }) => (1000 * pressed) / (holds * DRY_IN_PRESSED),
      say: 'The dry part was used the wrong way round: the dry matter in the dose is less than the dose.',
    },
    {
      family: 'thousand',
      gives: ({ pressed, holds }) => (pressed * DRY_IN_PRESSED) / holds,
      say: 'Kilograms were divided by grams. A kilogram is a thousand grams.',
    },
    {
      family: 'forgotten',
      gives: ({ pressed }) => pressed,
      say: 'A litre of cream is not a kilogram of pressed yeast: it holds more water.',
    },
  ],
  working: ({ pressed, holds }, { volume }) => [
    `Dry matter in the dose: ${n(pressed, 0)} × ${DRY_IN_PRESSED} = ${n(pressed * DRY_IN_PRESSED, 1)} kg, or ${n(1000 * pressed * DRY_IN_PRESSED, 0)} g`,
    'Cream = dry matter wanted ÷ dry matter in a litre',
    `${n(1000 * pressed * DRY_IN_PRESSED, 0)} ÷ ${n(holds, 0)} = ${n(volume, 1)} L`,
  ],
});
