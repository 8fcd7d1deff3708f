// How long the mill is busy with a mash, and how far a bin of malt goes.
import { formatNumber as n } from '../../core/format.ts';
import { maltInBin, mashesInBin, spaceFor } from '../../core/milling/bin.ts';
import { millingTime } from '../../core/milling/grist.ts';
import { hours } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'mill-and-bin',
  stage: 'milling',
  title: 'The mill and the bin',
  purpose:
    'Finds how long a mash takes at the mill, stops included, and how many mashes a bin of malt holds.',
  sources: ['memory'],
  cautions: ['dust', 'confined-space'],
  inputs: {
    malt: { house: 'maltPerMash' },
    rate: { house: 'millRate' },
    stops: { kind: 'hours', label: 'Stops, in all', range: [0, 48], step: 0.1, value: 0.2 },
    // Loose barley malt, from memory: about 500 to 560 kg/m³.
    bulk: {
      kind: 'bulkDensity',
      label: 'A cubic metre of malt weighs',
      range: [300, 900],
      step: 10,
      value: 530,
    },
    bin: {
      kind: 'space',
      label: 'Bin, the space malt can fill',
      range: [0.1, 5000],
      step: 1,
      value: 40,
      sized: { by: 'maltPerMash' },
    },
  },
  outputs: {
    running: { kind: 'hours', label: 'Rollers running', digits: 2 },
    time: { kind: 'hours', label: 'Start to finish', digits: 2 },
    space: { kind: 'space', label: 'Space for one mash of malt', digits: 2 },
    held: { kind: 'mass', label: 'Malt in the full bin' },
    mashes: { kind: 'count', label: 'Mashes in the full bin', digits: 1 },
  },
  compute: ({ malt, rate, stops, bulk, bin }) => {
    const running = millingTime(malt, rate);
    const held = maltInBin(bin, bulk);
    return {
      running,
      time: hours(running + stops),
      space: spaceFor(malt, bulk),
      held,
      mashes: mashesInBin(held, malt),
    };
  },
  steps: ({ malt, rate, stops, bulk, bin }, result) => [
    'Time = malt in tonnes ÷ rate, and the stops on top',
    `${n(malt / 1000, 3)} ÷ ${n(rate, 2)} + ${n(stops, 2)} = ${n(result.time, 2)} h`,
    'Space = malt ÷ what a cubic metre of it weighs',
    `${n(malt, 0)} ÷ ${n(bulk, 0)} = ${n(result.space, 2)} m³`,
    'Mashes = malt in the full bin ÷ malt in a mash',
    `${n(bin, 1)} × ${n(bulk, 0)} ÷ ${n(malt, 0)} = ${n(result.mashes, 1)}`,
  ],
  remark: ({ malt }, { held, mashes }) => {
    const whole = Math.floor(mashes);
    return whole === 0
      ? `The full bin falls ${n(malt - held, 0)} kg short of one mash.`
      : `The full bin feeds ${n(whole, 0)} whole ${whole === 1 ? 'mash' : 'mashes'} and leaves ${n(Math.max(0, held - whole * malt), 0)} kg. Weigh a measured bucket of your own malt: 530 kg in a cubic metre is a figure from memory.`;
  },
  examples: [
    {
      given: { malt: 9000, rate: 3.5, stops: 0.5, bulk: 500, bin: 63 },
      gives: { running: 2.57143, time: 3.07143, space: 18, held: 31_500, mashes: 3.5 },
      within: 1e-5,
      source: 'derived',
      note: '9 t at 3.5 t/h and half an hour of standing, to six figures; the bin by hand',
    },
    {
      given: { malt: 1000, rate: 2.5, stops: 0, bulk: 750, bin: 124 },
      gives: { held: 93_000 },
      within: 1e-9,
      source: 'storage-capacity',
      note: 'a silo of 124 m³ holds 124 × 0.75 = 93 t of wheat',
    },
  ],
});
