// The reflux of both stills from the house's own runs, to be kept as the house's figures.
import { fitSpiritStill, fitWashStill } from '../../core/distilling/fit-stills.ts';
import { runStill } from '../../core/distilling/run.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { remember } from '../../core/numerics/remember.ts';
import { quantity, share, strength, type Quantity } from '../../core/quantity.ts';
import { isRefusal, refuse } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';
import { airPressure, houseWash, spiritCharge } from './house-cuts.ts';

const { washReflux: _, ...wash } = houseWash;

interface Given {
  readonly known: 'strength' | 'volume' | 'both' | 'potAle' | 'all';
  readonly washVolume: Quantity<'volume20'>;
  readonly washStrength: Quantity<'strength'>;
  readonly washEnd: Quantity<'strength'>;
  readonly airPressure: Quantity<'pressure'>;
  readonly lowWinesStrength: Quantity<'strength'>;
  readonly lowWinesVolume: Quantity<'volume20'>;
  readonly potAle: Quantity<'percent'>;
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
  readonly safe: readonly {
    readonly volume: Quantity<'volume20'>;
    readonly strength: Quantity<'strength'>;
  }[];
  readonly strengthSure: Quantity<'strengthDifference'>;
  readonly volumeSure: Quantity<'percent'>;
}

const washStill = (given: Given) => {
  const counts = (...ways: readonly Given['known'][]) => ways.includes(given.known);
  return fitWashStill({
    wash: { volume: given.washVolume, strength: given.washStrength },
    until: given.washEnd,
    pressure: given.airPressure,
    ...(counts('strength', 'both', 'all') && { strength: given.lowWinesStrength }),
    ...(counts('volume', 'both', 'all') && { volume: given.lowWinesVolume }),
    ...(counts('potAle', 'all') && { potAle: share(given.potAle / 100) }),
    strengthSure: given.strengthSure,
    volumeSure: given.volumeSure / 100,
  });
};
const asText = ({ volume, strength, airPressure, safe, strengthSure }: Given) =>
  JSON.stringify([volume, strength, airPressure, safe, strengthSure]);
/** The working and the drawing ask for the fit again. */
const spiritStill = remember(
  ({ volume, strength, airPressure, safe, strengthSure }: Given) =>
    fitSpiritStill({ volume, strength }, airPressure, safe, strengthSure),
  2,
  (a, b) => asText(a) === asText(b),
);

export default defineCalculator({
  id: 'fit-stills',
  stage: 'distilling',
  title: 'Fit your own stills',
  purpose:
    'Finds the reflux of your stills: from low wines and pot ale, and from a few readings of the safe.',
  sources: ['de-nevers', 'oiml-r22', 'gum'],
  readings: ['lowWinesStrength', 'lowWinesVolume', 'potAle', 'safe'],
  together: true,
  cautions: ['licence', 'ethanol-vapour'],
  inputs: {
    ...wash,
    airPressure,
    known: {
      label: 'What was measured of the wash run',
      options: {
        strength: 'the low wines’ strength',
        volume: 'the low wines’ volume',
        both: 'both of these',
        potAle: 'the pot ale',
        all: 'all three',
      },
      value: 'all',
    },
    lowWinesStrength: {
      kind: 'strength',
      label: 'Strength of the low wines',
      range: [1, 80],
      step: 0.1,
      value: 23,
      usedWhen: { choice: 'known', is: ['strength', 'both', 'all'] },
    },
    lowWinesVolume: {
      kind: 'volume20',
      label: 'Low wines',
      range: [1, 300_000],
      step: 10,
      value: 2580,
      sized: { by: 'wortVolume' },
      usedWhen: { choice: 'known', is: ['volume', 'both', 'all'] },
    },
    potAle: {
      kind: 'percent',
      label: 'Pot ale, share of the wash',
      range: [10, 99],
      step: 0.5,
      value: 65,
      usedWhen: { choice: 'known', is: ['potAle', 'all'] },
    },
    volumeSure: { kind: 'percent', label: 'A volume may be out by', range: [0.1, 20], step: 0.1, value: 1 },
    ...spiritCharge,
    safe: {
      label: 'At the safe of the spirit still',
      columns: {
        volume: {
          kind: 'volume20',
          label: 'After',
          range: [0, 300_000],
          step: 10,
          sized: { by: 'wortVolume' },
        },
        strength: { kind: 'strength', label: 'Strength', range: [1, 96], step: 0.1 },
      },
      value: [
        { volume: 50, strength: 75 },
        { volume: 400, strength: 71.4 },
        { volume: 800, strength: 64.4 },
      ],
      count: [2, 8],
    },
    strengthSure: {
      kind: 'strengthDifference',
      label: 'A strength may be out by',
      range: [0.05, 5],
      step: 0.05,
      value: 0.3,
    },
  },
  main: ['known', 'lowWinesStrength', 'lowWinesVolume', 'potAle', 'safe'],
  outputs: {
    washReflux: { kind: 'share', label: 'Reflux of the wash still', keeps: 'washReflux' },
    washSure: { kind: 'share', label: 'Wash still, known to ±', digits: 3 },
    spiritReflux: { kind: 'share', label: 'Reflux of the spirit still', keeps: 'spiritReflux' },
    spiritSure: { kind: 'share', label: 'Spirit still, known to ±', digits: 3 },
    lowWines: { kind: 'strength', label: 'Low wines of such a wash still' },
    worst: { kind: 'strengthDifference', label: 'Largest gap from a reading at the safe' },
  },
  compute: (given) => {
    const first = washStill(given);
    if (isRefusal(first)) return refuse(`Wash still: ${first.refused}`);
    const second = spiritStill(given);
    if (isRefusal(second)) return refuse(`Spirit still: ${second.refused}`);
    const run = runStill({
      charge: { volume: given.washVolume, strength: given.washStrength },
      reflux: first.reflux,
      pressure: given.airPressure,
      until: given.washEnd,
    });
    if (isRefusal(run)) return run;
    const off = given.safe.map(({ strength }, i) => Math.abs(strength - second.fitted[i]!));
    return {
      washReflux: first.reflux,
      washSure: first.sure,
      spiritReflux: second.reflux,
      spiritSure: second.sure,
      lowWines: strength(run.distillate.strength),
      worst: quantity('strengthDifference', Math.max(...off)),
    };
  },
  steps: (given, result) => {
    const second = spiritStill(given);
    if (isRefusal(second)) return [];
    return [
      'Each still is run on paper with one reflux after another, until the squares of what is left over, each divided by the ± of its reading, add up to least',
      `Wash still: at ${n(result.washReflux, 3)} the low wines are ${n(result.lowWines, 1)} % vol`,
      ...given.safe.map(
        ({ volume, strength }, i) =>
          `Spirit still, after ${n(volume, 0)} L: ${w(strength)} − ${w(second.fitted[i]!)} = ${n(strength - second.fitted[i]!, 2)} % vol over the fit`,
      ),
      'The ± is that of the readings over the slope of each with reflux, or the scatter about the fit where that is more',
    ];
  },
  remark: (_, { washSure, spiritSure }) =>
    `${Math.max(washSure, spiritSure) > 0.05 ? 'So wide a ± says little. Take more readings, early ones above all, or better ones. ' : ''}A fitted reflux also takes up the error of the vapour formula, so the house’s strengths agree with the safe.`,
  chart: (given) => {
    const second = spiritStill(given);
    const rows = isRefusal(second)
      ? []
      : given.safe
          .map(({ volume, strength }, i) => ({ volume, strength, fitted: second.fitted[i]! }))
          .sort((a, b) => a.volume - b.volume);
    return {
      caption: 'Strength at the safe, by the fit; your readings as points',
      columns: [
        { kind: 'volume20', label: 'Come over', values: rows.map(({ volume }) => volume) },
        { kind: 'strength', label: 'By the fit', values: rows.map(({ fitted }) => fitted) },
        { kind: 'strength', label: 'Read', values: rows.map(({ strength }) => strength) },
      ],
      points: rows.map(({ volume, strength }) => [volume, strength] as const),
    };
  },
  examples: [
    {
      given: {
        washVolume: 12_000,
        washStrength: 7.8,
        washEnd: 1,
        airPressure: 101.325,
        known: 'all',
        lowWinesStrength: 23,
        lowWinesVolume: 4000,
        potAle: 66.7,
        volumeSure: 2,
        volume: 3600,
        strength: 26.4,
        safe: [
          { volume: 50, strength: 75 },
          { volume: 400, strength: 71.5 },
          { volume: 800, strength: 64.3 },
        ],
        strengthSure: 0.3,
      },
      gives: { lowWines: 23, spiritReflux: 0.1 },
      within: 0.03,
      source: 'common-practice',
      note: '12,000 L of wash leave 4,000 L of low wines and 8,000 of pot ale at 23 % vol, the middle of what is quoted; the safe was reckoned by plain steps for a reflux of 0.1',
    },
  ],
});
