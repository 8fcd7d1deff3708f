// What the ledger says is left in a spirit receiver.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'left-in-the-receiver',
  title: 'Left in the receiver, by the ledger',
  topic: 'running',
  level: 1,
  sources: ['derived'],
  of: 'alcohol',
  to: 1,
  vary: {
    held: ['volume20', [900, 1000, 1100, 1200, 1300], 'heart.volume'],
    heldStrength: ['strength', [67.8, 68.2, 68.6, 69], 'heart.strength'],
    came: ['volume20', [800, 820, 840, 860, 880], 'heart.volume'],
    cameStrength: ['strength', [69.4, 69.8, 70.2, 70.6], 'heart.strength'],
    went: ['volume20', [1400, 1450, 1500, 1550], 'heart.volume'],
    wentStrength: ['strength', [69.1, 69.2, 69.3], 'heart.strength'],
  },
  answer: ({ held, heldStrength, came, cameStrength, went, wentStrength }) =>
    (held * heldStrength + came * cameStrength - went * wentStrength) / 100,
  fits: ({ held, came, went }) => held + came - went > went / 10,
  prompt: (show) =>
    `In the morning the spirit receiver held ${show.held} at ${show.heldStrength}. The still brought ${show.came} at ${show.cameStrength}, and ${show.went} at ${show.wentStrength} went out to the filling vat; all at 20 °C. How much pure alcohol should the ledger show in the receiver?`,
  slips: [
    {
      family: 'bulkForAlcohol',
      gives: ({ held, came, went }) => held + came - went,
      say: 'Those are bulk litres. The ledger asks for their pure alcohol.',
    },
    {
      family: 'sign',
      gives: ({ held, heldStrength, came, cameStrength, went, wentStrength }) =>
        (held * heldStrength + came * cameStrength + went * wentStrength) / 100,
      say: 'What went out was added. It has left the receiver.',
    },
    {
      family: 'forgotten',
      gives: ({ held, heldStrength, came, cameStrength }) =>
        (held * heldStrength + came * cameStrength) / 100,
      say: 'What went out to the filling vat was left out.',
    },
  ],
  working: ({ held, heldStrength, came, cameStrength, went, wentStrength }, answer) => [
    'Left = held + came in − went out, each as litres × strength ÷ 100',
    `Held: ${n(held, 0)} × ${n(heldStrength, 1)} ÷ 100 = ${n((held * heldStrength) / 100, 1)} L; came in: ${n(came, 0)} × ${n(cameStrength, 1)} ÷ 100 = ${n((came * cameStrength) / 100, 1)} L; went out: ${n(went, 0)} × ${n(wentStrength, 1)} ÷ 100 = ${n((went * wentStrength) / 100, 1)} L`,
    `${n((held * heldStrength) / 100, 1)} + ${n((came * cameStrength) / 100, 1)} − ${n((went * wentStrength) / 100, 1)} = ${n(answer, 1)} L`,
  ],
});

export default { ...kind, since: 7 };
