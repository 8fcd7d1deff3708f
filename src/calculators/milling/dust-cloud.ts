// What settled dust becomes when it is raised into a room.
import { formatNumber as n } from '../../core/format.ts';
import { dustCloud, dustForCloud, LOWEST_CLOUDS } from '../../core/milling/dust.ts';
import { quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const [LEAST, MOST] = LOWEST_CLOUDS;

export default defineCalculator({
  id: 'dust-cloud',
  stage: 'milling',
  title: 'Dust raised in a room',
  purpose:
    'Shows how little settled dust makes a cloud that can explode. It is for teaching, and never a test of a room.',
  sources: ['derived', 'memory'],
  cautions: ['dust'],
  inputs: {
    dust: { kind: 'mass', label: 'Dust raised', range: [0.01, 1000], step: 0.1, value: 2 },
    space: { kind: 'space', label: 'Volume of the room', range: [1, 10_000], step: 1, value: 30 },
  },
  outputs: {
    cloud: { kind: 'dustCloud', label: 'Cloud, if it were spread evenly' },
    least: { kind: 'mass', label: `Dust that would make ${LEAST} g/m³ there`, digits: 2 },
  },
  compute: ({ dust, space }) => ({
    cloud: dustCloud(dust, space),
    least: dustForCloud(quantity('dustCloud', LEAST), space),
  }),
  steps: ({ dust, space }, result) => [
    'Cloud = dust in grams ÷ space in cubic metres',
    `${n(1000 * dust, 0)} ÷ ${n(space, 1)} = ${n(result.cloud, 1)} g/m³`,
    `The other way round, for the lowest explosive cloud quoted for malt dust, ${LEAST} g/m³: ${LEAST} × ${n(space, 1)} ÷ 1,000 = ${n(result.least, 2)} kg`,
  ],
  remark: (_, { cloud }) => {
    const even =
      'No cloud is even: close to where dust falls it is many times as thick. Nothing here tells that a room is safe; the site’s own assessment does.';
    const quoted = `the lowest explosive clouds quoted for barley and malt dust, ${LEAST} to ${MOST} g/m³, from memory`;
    if (cloud < LEAST) return `The average is below ${quoted}. ${even}`;
    return `The average is ${cloud > MOST ? 'above' : 'within the range of'} ${quoted}: a spark could set it off. Settled dust is taken up by the site’s procedure, long before it comes to this.`;
  },
  examples: [
    {
      given: { dust: 2, space: 30 },
      gives: { cloud: 66.6667, least: 1.5 },
      within: 1e-6,
      source: 'derived',
      note: '2,000 g over 30 m³, to six figures; 50 g in each of 30 m³ by hand',
    },
    {
      given: { dust: 3, space: 40 },
      gives: { cloud: 75 },
      within: 1e-9,
      source: 'derived',
      note: '3,000 g over 40 m³, by hand',
    },
  ],
});
