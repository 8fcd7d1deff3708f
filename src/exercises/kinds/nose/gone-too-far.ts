// Which note an off-note is too much of.
import { matched } from '../../matched.ts';

const kind = matched({
  id: 'gone-too-far',
  title: 'A good note gone too far',
  topic: 'nose',
  level: 2,
  sources: ['common-practice'],
  prompt: (off) => `A sample smells of ${off}. Too much of which note is that?`,
  groups: [
    [
      ['Cereal and toast.', ['raw husk', 'porridge'], 'Raw husk and porridge are cereal gone too far.'],
      ['Smoke.', ['ash', 'cold ash, in a peated spirit'], 'Smoke gone too far is ash.'],
      [
        'Cream and wax.',
        ['candles', 'rancid oil'],
        'Cream, soap and wax go over into candle and rancid oil.',
      ],
      ['Yoghurt and butter.', ['vinegar', 'sick'], 'What bacteria bring goes over into vinegar and sick.'],
      [
        'Solvent and green apple.',
        ['glue', 'something that stings like glue'],
        'Sharp notes gone too far are glue, and sting.',
      ],
      ['Meat and match.', ['drains', 'a blocked drain'], 'Sulphur is weight in little, and drains in much.'],
      [
        'Sweat and leather.',
        ['stale cheese', 'cheese left out for a week'],
        'Feints gone too far are stale cheese.',
      ],
      ['Vanilla and spice.', ['plank', 'bitter tea'], 'Wood gone too far is plank and bitter tea.'],
    ],
  ],
});

export default { ...kind, since: 7 };
