// How little dust makes an explosive cloud in a room.
import { formatNumber as n } from '../../../core/format.ts';
import { dustForCloud, LOWEST_CLOUDS } from '../../../core/milling/dust.ts';
import { quantity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const [LEAST] = LOWEST_CLOUDS;

export default sum({
  id: 'dust-for-a-cloud',
  title: 'How little dust it takes',
  topic: 'safety',
  level: 2,
  sources: ['memory', 'derived'],
  of: 'mass',
  to: 2,
  vary: {
    long: ['count', [4, 4.5, 5, 6, 7, 8]],
    wide: ['count', [2.5, 3, 3.5, 4]],
    high: ['count', [2.4, 2.8, 3, 3.5]],
  },
  answer: ({ long, wide, high }) =>
    dustForCloud(quantity('dustCloud', LEAST), quantity('space', long * wide * high)),
  prompt: ({ long, wide, high }) =>
    `To teach how little it takes: a mill room is ${long} m long, ${wide} m wide and ${high} m high, and the lowest explosive cloud quoted for malt dust is ${LEAST} g in a cubic metre. How much dust, hanging evenly, would make that cloud?`,
  working: ({ long, wide, high }, answer) => [
    `Room: ${long} × ${wide} × ${high} = ${n(long * wide * high, 1)} m³`,
    `${n(long * wide * high, 1)} × ${LEAST} ÷ 1,000 = ${n(answer, 2)} kg`,
    'Close to where dust falls the cloud is far thicker, so less will do; no sum tells that a room is safe, and dust is taken up by the site’s procedure',
  ],
  slips: [
    {
      family: 'forgotten',
      gives: ({ long, wide }) => (LEAST * long * wide) / 1000,
      say: 'The floor was taken for the room; multiply by the height too.',
    },
    {
      family: 'upsideDown',
      gives: ({ long, wide, high }) => (long * wide * high) / LEAST,
      say: 'The room was divided by the cloud; each cubic metre holds that many grams, so multiply.',
    },
  ],
});
