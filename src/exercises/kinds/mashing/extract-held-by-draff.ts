// The extract in the liquid that drained grains hold.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'extract-held-by-draff',
  title: 'Extract in what the grains hold',
  topic: 'mashing',
  level: 2,
  sources: ['derived'],
  of: 'percent',
  to: 2,
  within: 0.015,
  vary: {
    dry: ['mass', [260, 280, 300, 320, 340]],
    held: ['liquorRatio', [3, 3.2, 3.5, 3.8, 4]], // as in draff of 75 to 80 % moisture
    strength: ['gramsPerLitre', [6, 8, 10, 12, 15, 20]],
    extract: ['mass', [1100, 1150, 1200]],
  },
  renewed: 7,
  before: {
    vary: {
      dry: ['mass', [260, 280, 300, 320, 340]],
      held: ['liquorRatio', [1.4, 1.5, 1.6, 1.8, 2]],
      strength: ['gramsPerLitre', [15, 20, 25, 30, 40, 50]],
      extract: ['mass', [1100, 1150, 1200]],
    },
  },
  answer: ({ dry, held, strength, extract }) => (100 * dry * held * strength) / 1000 / extract,
  prompt: (show) =>
    `When the last water has drained, ${show.dry} of dry grains hold ${show.held} of weak wort with ${show.strength} of extract. The malt had ${show.extract} of extract. What part of it stays in the draff, in per cent?`,
  working: ({ dry, held, strength, extract }, answer) => [
    `Held: ${dry} × ${held} = ${n(dry * held, 0)} L, with ${n(dry * held, 0)} × ${strength} ÷ 1,000 = ${n((dry * held * strength) / 1000, 2)} kg of extract`,
    `${n((dry * held * strength) / 1000, 2)} ÷ ${n(extract, 0)} × 100 = ${n(answer, 2)} %`,
  ],
  slips: [
    {
      family: 'thousand',
      gives: (_, answer) => answer * 1000,
      say: 'Grams were taken as kilograms; no more can stay than there was.',
    },
    {
      family: 'forgotten',
      gives: ({ dry, strength, extract }) => (100 * dry * strength) / 1000 / extract,
      say: 'A kilogram of grains was taken to hold one litre; it holds more.',
    },
    {
      family: 'otherFigure',
      gives: ({ dry, held, strength }) => (dry * held * strength) / 1000,
      say: 'Those are the kilograms held; set them against the extract that the malt had.',
    },
  ],
});
