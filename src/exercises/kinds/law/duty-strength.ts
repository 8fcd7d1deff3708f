// The strength on which British duty is reckoned.
import { formatNumber as n } from '../../../core/format.ts';
import { dutyStrength } from '../../../core/maturing/duty.ts';
import { strength as vol } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const LABELS = [40, 43, 46, 48, 50, 54, 57, 60];

export default sum({
  id: 'duty-strength',
  title: 'Cut, and not rounded',
  topic: 'law',
  level: 1,
  sources: ['uk-technical-guide'],
  of: 'strength',
  to: 2,
  within: 0.0001,
  vary: {
    strength: [
      'strength',
      LABELS.flatMap((label) =>
        [0.06, 0.17, 0.28, 0.36, 0.47, 0.58, 0.69, 0.86].map((over) => Number((label + over).toFixed(2))),
      ),
    ],
  },
  answer: ({ strength }) => dutyStrength(vol(strength), 'down'),
  prompt: (show) =>
    `The laboratory finds ${show.strength} in a bottling. For British duty the strength is cut, not rounded, to one decimal. On what strength is the duty reckoned?`,
  working: ({ strength }, answer) => [
    'Cut off what stands behind the first decimal, as 7.59 becomes 7.5',
    `${n(strength, 2)} becomes ${n(answer, 1)} % vol`,
  ],
  slips: [
    {
      family: 'roundedWrongWay',
      gives: ({ strength }) => Number((strength + 0.001).toFixed(1)),
      say: 'That was rounded to the nearest tenth. This rule cuts: the second decimal is dropped, whatever it is.',
    },
    {
      family: 'forgotten',
      gives: ({ strength }) => strength,
      say: 'The strength was left as it was found. Drop the second decimal first.',
    },
    {
      family: 'thousand',
      gives: ({ strength }) => Math.floor(strength),
      say: 'That was cut to a whole per cent. The first decimal stays.',
    },
  ],
});
