// How warm a washback grows, with cooling and without.
import {
  heatOf,
  riseWithoutLoss,
  warmest,
  WASH_HEAT_CAPACITY,
  warmWashback,
} from '../../core/fermenting/heat.ts';
import { fermentWort } from '../../core/fermenting/wash.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { wortExtract } from '../../core/mashing/wort.ts';
import { kilograms, quantity, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const WARM = 34; // °C, as high as a peak should come; common practice
const TOO_WARM = 35; // °C, above which yeast suffers; common practice
const CHART_STEPS = 48;

interface Given {
  readonly volume: Quantity<'volume20'>;
  readonly original: Quantity<'gravity'>;
  readonly final: Quantity<'gravity'>;
  readonly start: Quantity<'temperature'>;
  readonly hours: Quantity<'hours'>;
  readonly perKilogram: Quantity<'heatOfExtract'>;
  readonly half: Quantity<'hours'>;
  readonly steepness: Quantity<'perHour'>;
  readonly air: Quantity<'temperature'>;
  readonly loss: Quantity<'heatLoss'>;
  readonly power: Quantity<'power'>;
  readonly from: Quantity<'temperature'>;
}

/** The wash and the heat it gives off. */
function washOf({ volume, original, final, perKilogram }: Given) {
  const wort = { volume, gravity: original };
  const { washMass: mass, attenuation } = fermentWort(wort, final);
  const used = kilograms((wortExtract(wort) * attenuation.extractUsed) / 100);
  return { mass, used, heat: heatOf(used, perKilogram) };
}

const follow = (given: Given, power = given.power) =>
  warmWashback({
    ...given,
    ...washOf(given),
    pace: given,
    cooling: { power, from: given.from },
  });

export default defineCalculator({
  id: 'washback-heat',
  stage: 'fermenting',
  title: 'How warm the washback gets',
  purpose:
    'Follows the temperature of the wash, from the heat of fermentation, the air around it and any cooling.',
  sources: ['memory', 'derived', 'reid-2021', 'balling', 'common-practice'],
  inputs: {
    volume: { label: 'Wort', house: 'wortVolume' },
    original: { house: 'originalGravity' },
    final: { house: 'finalGravity' },
    start: { house: 'setTemperature' },
    hours: { house: 'fermentationHours' },
    perKilogram: {
      kind: 'heatOfExtract',
      label: 'Heat from a kilogram of extract',
      range: [500, 700],
      step: 1,
      value: 586,
    },
    half: { kind: 'hours', label: 'Half the fall reached at', range: [4, 60], step: 1, value: 16 },
    steepness: { kind: 'perHour', label: 'Steepness of the fall', range: [0.05, 1], step: 0.01, value: 0.2 },
    air: { kind: 'temperature', label: 'Air around the washback', range: [-10, 40], step: 1, value: 15 },
    loss: {
      kind: 'heatLoss',
      label: 'Heat lost to the air',
      range: [0, 5000],
      step: 10,
      value: 60,
      sized: { by: 'wortVolume', power: 2 / 3 },
    },
    power: {
      kind: 'power',
      label: 'Cooling',
      range: [0, 1000],
      step: 1,
      value: 10,
      sized: { by: 'wortVolume' },
    },
    from: { kind: 'temperature', label: 'Cooling comes on at', range: [10, 40], step: 0.5, value: 32 },
  },
  main: ['original', 'final', 'start', 'power', 'from'],
  outputs: {
    peak: { kind: 'temperature', label: 'Warmest' },
    peakHour: { kind: 'hours', label: 'First reached at' },
    end: { kind: 'temperature', label: 'At the end' },
    uncooled: { kind: 'temperature', label: 'Warmest without cooling' },
    rise: { kind: 'temperatureDifference', label: 'Rise if no heat escaped' },
    heat: { kind: 'energy', label: 'Heat of fermentation', digits: 0 },
    cooled: { kind: 'energy', label: 'Removed by cooling', digits: 0 },
  },
  refuse: ({ original, final }) =>
    final >= original
      ? `The final gravity ${final} is not below the original ${original}; it must be lower, for wort that ferments grows lighter.`
      : undefined,
  compute: (given) => {
    const states = follow(given);
    const peak = warmest(states);
    const { mass, heat } = washOf(given);
    return {
      peak: peak.temperature,
      peakHour: peak.hour,
      end: states.at(-1)!.temperature,
      uncooled: warmest(follow(given, quantity('power', 0))).temperature,
      rise: riseWithoutLoss(heat, mass),
      heat,
      cooled: states.at(-1)!.cooled,
    };
  },
  steps: (given, result) => {
    const { mass, used } = washOf(given);
    const last = follow(given).at(-1)!;
    return [
      `Heat = extract used × heat from a kilogram: ${w(used, 8)} × ${n(given.perKilogram, 0)} ÷ 1,000 = ${w(result.heat)} MJ`,
      `Rise if none escaped = heat ÷ (mass × heat capacity): 1,000 × ${w(result.heat)} ÷ (${w(mass)} × ${n(WASH_HEAT_CAPACITY, 1)}) = ${n(result.rise, 1)} K`,
      `The heat comes as the extract falls; each small step of time warms by what is given off, less ${n(given.loss, 0)} W for each degree above the air, less what cooling takes`,
      `To the end: ${n(last.released, 0)} MJ given off − ${n(last.lost, 0)} lost to the air − ${n(last.cooled, 0)} taken by cooling = ${n(last.released - last.lost - last.cooled, 0)} MJ left, a change of ${n(result.end - given.start, 1)} K`,
    ];
  },
  remark: (given, { peak, uncooled }) => {
    if (peak > TOO_WARM)
      return `The wash passes ${TOO_WARM} °C, above which yeast suffers and the gravity may stop too high (common practice): start it cooler, or cool more and sooner.`;
    if (peak > WARM)
      return `The wash passes ${WARM} °C, the most it should reach (common practice), with little in hand: a warmer day or a quicker yeast would take it past ${TOO_WARM} °C.`;
    return given.power > 0 && uncooled > WARM
      ? `The cooling is needed: without it the wash would reach ${n(uncooled, 1)} °C, and it should not pass ${WARM} °C (common practice).`
      : `The wash stays below the ${WARM} °C that it should not pass (common practice), cooled or not.`;
  },
  chart: (given) => {
    const every = <T>(states: readonly T[]) =>
      states.filter((_, i) => i % ((states.length - 1) / CHART_STEPS) === 0);
    const states = every(follow(given));
    const uncooled = every(follow(given, quantity('power', 0)));
    return {
      caption: 'Temperature of the wash',
      limits: [{ value: WARM, label: 'limit for the peak', known: 'common practice' }],
      columns: [
        { kind: 'hours', label: 'Hours', values: states.map(({ hour }) => hour) },
        { kind: 'temperature', label: 'Temperature', values: states.map((state) => state.temperature) },
        { kind: 'temperature', label: 'Without cooling', values: uncooled.map((state) => state.temperature) },
        { kind: 'energy', label: 'Removed by cooling', values: states.map(({ cooled }) => cooled) },
      ],
    };
  },
  examples: [
    {
      given: {
        volume: 1000,
        original: 1.05914,
        final: 1.01129,
        start: 19,
        hours: 200,
        perKilogram: 586,
        half: 16,
        steepness: 0.4,
        air: 15,
        loss: 0,
        power: 0,
        from: 32,
      },
      gives: { rise: 15.137, peak: 34.137, end: 34.137, uncooled: 34.137, cooled: 0 },
      within: 0.001,
      source: 'balling',
      note: 'by hand: 100 kg of wash with 5 % alcohol by mass has used 5 × 2.0665 = 10.3325 kg of extract, and 10.3325 × 586 ÷ (100 × 4.0) = 15.137 K',
    },
  ],
});
