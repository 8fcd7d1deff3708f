// The malt that a load of barley makes once its small grains are sieved off.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const kind = sum({
  id: 'malt-after-screenings',
  title: 'Malt after the screenings are off',
  topic: 'ingredients',
  level: 2,
  sources: ['derived', 'common-practice'],
  of: 'mass',
  to: 0,
  vary: {
    load: ['mass', [18_000, 20_000, 22_000, 24_000, 25_000, 26_000, 28_000]],
    screenings: ['percent', [5, 6, 7, 8, 9, 10]],
    barley: ['count', [1.18, 1.2, 1.22]],
  },
  answer: ({ load, screenings, barley }) => (load * (100 - screenings)) / 100 / barley,
  prompt: (show) =>
    `A load of ${show.load} of barley is sieved before it is malted. ${show.screenings} of it falls through as screenings and goes for feed, and ${show.barley} t of what stays makes a tonne of malt. How much malt does the load make?`,
  slips: [
    {
      family: 'forgotten',
      gives: ({ load, barley }) => load / barley,
      say: 'The screenings were malted with the rest. They have gone for feed.',
    },
    {
      family: 'upsideDown',
      gives: ({ load, screenings, barley }) => ((load * (100 - screenings)) / 100) * barley,
      say: 'That is more malt than barley. Malting loses water and dry matter, so divide.',
    },
    {
      family: 'otherFigure',
      gives: ({ load, screenings }) => (load * (100 - screenings)) / 100,
      say: 'That is the barley which stays on the sieve. Malted, it weighs less.',
    },
    {
      family: 'otherFigure',
      gives: ({ load, screenings, barley }) => (load * screenings) / 100 / barley,
      say: 'That is the malt which the screenings would have made.',
    },
  ],
  working: ({ load, screenings, barley }, answer) => [
    'Barley to malt = load × (100 − screenings) ÷ 100; malt = barley ÷ tonnes of barley to a tonne',
    `${n(load, 0)} × ${n(100 - screenings, 0)} ÷ 100 = ${n((load * (100 - screenings)) / 100, 0)} kg`,
    `${n((load * (100 - screenings)) / 100, 0)} ÷ ${n(barley, 2)} = ${n(answer, 0)} kg`,
  ],
});

export default { ...kind, since: 7 };
