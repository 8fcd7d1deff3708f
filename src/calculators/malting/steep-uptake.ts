// Water into the grain, wetting by wetting.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { waterInDry } from '../../core/malting/moisture.ts';
import {
  hourOfWet,
  HYDRATION_ENERGY,
  k1At,
  moistureAfter,
  moistureInTheEnd,
  steepCurve,
  wetHoursTo,
  type Uptake,
  type Wetting,
} from '../../core/malting/steep.ts';
import { hours, kilograms, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

interface Given {
  readonly startMoisture: Quantity<'percent'>;
  readonly k1: Quantity<'hoursPerPercent'>;
  readonly k2: Quantity<'perPercent'>;
  readonly fitted: Quantity<'temperature'>;
  readonly water: Quantity<'temperature'>;
  readonly energy: Quantity<'molarEnergy'>;
}

const lot = ({ startMoisture, k1, k2, fitted, water, energy }: Given): Uptake => ({
  startMoisture,
  k1: k1At(k1, fitted, water, energy),
  k2,
});
const hoursInWater = (programme: readonly Wetting[]) =>
  hours(programme.reduce((sum, { wet }) => sum + wet, 0));
const length = (programme: readonly Wetting[]) =>
  programme.reduce((sum, { wet, rest }) => sum + wet + rest, 0);

export default defineCalculator({
  id: 'steep-uptake',
  stage: 'malting',
  title: 'Moisture through the steep',
  purpose:
    'Follows the grain’s moisture through wettings and air rests. Its two constants are for you to fit: none for malting barley were found in print.',
  sources: ['peleg-1988', 'mok-1983', 'memory'],
  cautions: ['carbon-dioxide', 'confined-space'],
  inputs: {
    barley: { kind: 'mass', label: 'Barley', range: [0.1, 1_000_000], step: 100, from: 'barley.mass' },
    startMoisture: { house: 'barleyMoisture' },
    target: { kind: 'percent', label: 'Moisture wanted', range: [25, 50], step: 0.5, value: 46 },
    water: { kind: 'temperature', label: 'Steep water', range: [5, 40], step: 0.5, value: 15 },
    programme: {
      label: 'Wettings and rests',
      columns: {
        wet: { kind: 'hours', label: 'Wet', range: [0, 48], step: 0.5 },
        rest: { kind: 'hours', label: 'Rest', range: [0, 48], step: 0.5 },
      },
      value: [
        { wet: 8, rest: 10 },
        { wet: 8, rest: 10 },
        { wet: 5, rest: 0 },
      ],
      count: [1, 6],
    },
    k1: {
      kind: 'hoursPerPercent',
      label: 'k1 of the lot: larger starts slower',
      range: [0.01, 2],
      step: 0.005,
      value: 0.1,
    },
    k2: {
      kind: 'perPercent',
      label: 'k2 of the lot: larger ends drier',
      range: [0.002, 0.05],
      step: 0.0005,
      value: 0.009,
    },
    fitted: {
      kind: 'temperature',
      label: 'Water when k1 was found',
      range: [5, 60],
      step: 0.5,
      value: 15,
    },
    energy: {
      kind: 'molarEnergy',
      label: 'Activation energy: larger, warmth speeds it more',
      range: [0, 100],
      step: 0.5,
      value: HYDRATION_ENERGY,
    },
  },
  main: ['target', 'water', 'programme'],
  outputs: {
    reached: { kind: 'percent', label: 'Moisture at the end' },
    taken: { kind: 'mass', label: 'Water taken up' },
    soaked: { kind: 'hours', label: 'In water, as planned' },
    needed: { kind: 'hours', label: 'In water, to the moisture wanted' },
    clock: { kind: 'hours', label: 'Moisture wanted, reached at' },
    k1Now: { kind: 'hoursPerPercent', label: 'k1 in this water' },
    ceiling: { kind: 'percent', label: 'Most moisture it could reach' },
  },
  compute: (given) => {
    const uptake = lot(given);
    const needed = wetHoursTo(uptake, given.target);
    if (typeof needed !== 'number') return needed;
    const soaked = hoursInWater(given.programme);
    const reached = moistureAfter(uptake, soaked);
    const dry = given.barley * (1 - given.startMoisture / 100);
    return {
      reached,
      taken: kilograms((dry * (waterInDry(reached) - waterInDry(given.startMoisture))) / 100),
      soaked,
      needed,
      clock: hourOfWet(given.programme, needed),
      k1Now: uptake.k1,
      ceiling: moistureInTheEnd(uptake),
    };
  },
  steps: (given, result) => {
    const [from, to, wanted] = [given.startMoisture, result.reached, given.target].map((moisture) =>
      waterInDry(moisture),
    );
    return [
      'k1 falls as the water is warmer: k1 × exp(energy ÷ 0.0083145 × (1 ÷ water − 1 ÷ water of the fit)), both in kelvins',
      `${given.k1} at ${n(given.fitted, 1)} °C is ${w(result.k1Now)} at ${n(given.water, 1)} °C`,
      `Moisture ${n(given.startMoisture, 1)} % of the whole is ${n(from!, 2)} % of the dry matter: moisture ÷ (100 − moisture) × 100`,
      'After t hours in water the grain has taken up t ÷ (k1 + k2 × t), in % of the dry matter; in air it takes up nothing here',
      `${w(result.soaked)} ÷ (${w(result.k1Now)} + ${given.k2} × ${w(result.soaked)}) = ${n(to! - from!, 2)} %; with ${n(from!, 2)} that is ${n(to!, 2)} % of the dry matter, ${n(result.reached, 2)} % of the whole`,
      'Hours in water for an uptake W = k1 × W ÷ (1 − k2 × W)',
      `${n(wanted! - from!, 2)} % asks for ${n(result.needed, 2)} h in water; counted through the plan, that is hour ${n(result.clock, 1)}`,
    ];
  },
  remark: (given, { reached, needed, soaked, clock }) => {
    const range =
      given.water < 20
        ? ' The activation energy was measured at 20 to 60 °C and is carried on to cooler water here.'
        : '';
    const rests =
      'In an air rest only the film of water on the skin soaks in, so the curve is kept level there.';
    return needed <= soaked
      ? `The ${n(given.target, 1)} % wanted is reached at hour ${n(clock, 1)} of ${n(length(given.programme), 1)}. ${rests}${range}`
      : `The plan ends at ${n(reached, 1)} %, short of ${n(given.target, 1)} %; ${n(needed - soaked, 1)} h more in water would make it up. ${rests}${range}`;
  },
  chart: (given) => {
    const curve = steepCurve(lot(given), given.programme);
    return {
      caption: 'Moisture of the grain, hour by hour',
      columns: [
        { kind: 'hours', label: 'Hour', values: curve.map(({ hour }) => hour) },
        { kind: 'percent', label: 'Moisture', values: curve.map(({ moisture }) => moisture) },
      ],
    };
  },
  examples: [
    {
      given: {
        barley: 1000,
        startMoisture: 20,
        target: 42.857142857,
        water: 15,
        programme: [
          { wet: 4, rest: 6 },
          { wet: 6, rest: 0 },
        ],
        k1: 0.1,
        k2: 0.01,
        fitted: 15,
        energy: HYDRATION_ENERGY,
      },
      gives: { reached: 42.857142857, taken: 400, needed: 10, clock: 16, ceiling: 55.555555556 },
      within: 1e-8,
      source: 'derived',
      note: 'by hand: 10 ÷ (0.1 + 0.1) = 50 % of 800 kg dry matter, on 25 % at the start; 75 ÷ 175 of the whole',
    },
    {
      given: {
        barley: 1000,
        startMoisture: 12,
        target: 46,
        water: 15,
        programme: [{ wet: 25.148, rest: 0 }],
        k1: 0.1,
        k2: 0.01,
        fitted: 15,
        energy: 0,
      },
      gives: { taken: 629.63, reached: 46 },
      within: 1e-4,
      source: 'derived',
      note: 'a worked sum: a tonne from 12 to 46 % takes up 629.63 kg, 71.549 % of the dry matter; 25.148 h are 0.1 × 71.549 ÷ (1 − 0.71549)',
    },
  ],
});
