// What the strength of the charge does to the heart of a single run.
import { cutRun } from '../../core/distilling/cuts.ts';
import { runStill } from '../../core/distilling/run.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { percent, strength as percentVol, type Portion, type Spirit } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { chargeOf, cutsOf, houseCuts, spiritCharge, stillOf, type GivenCuts } from './house-cuts.ts';
import { isRefusal } from '../../core/refusal.ts';

const [WEAKEST, STRONGEST, STEP] = [15, 35, 1]; // % vol, the charges that the chart goes through

/** One run of a charge with its cuts, without anything put back. */
function cutCharge(charge: Spirit, given: GivenCuts) {
  const run = runStill({ ...stillOf(given), charge, until: given.feintsEnd });
  return isRefusal(run) ? run : cutRun(run, cutsOf(given));
}
const partOf = (part: Portion, charge: Spirit) =>
  percent((10_000 * part.alcohol) / (charge.volume * charge.strength));

export default defineCalculator({
  id: 'charge-strength',
  stage: 'distilling',
  title: 'The strength of the charge',
  purpose: 'Heart, foreshots and feints from one charge of this strength, with nothing put back.',
  sources: ['de-nevers', 'oiml-r22'],
  cautions: ['licence', 'ethanol-vapour'],
  inputs: { ...spiritCharge, ...houseCuts },
  main: ['strength', 'volume', 'heartEnd', 'feintsEnd'],
  outputs: {
    heart: { kind: 'volume20', label: 'Heart' },
    heartStrength: { kind: 'strength', label: 'Its strength' },
    heartVolumeShare: { kind: 'percent', label: 'Heart, share of the charge by volume' },
    heartShare: { kind: 'percent', label: 'Heart, share of the charge’s alcohol' },
    foreshotsShare: { kind: 'percent', label: 'Foreshots, share of the alcohol' },
    feints: { kind: 'volume20', label: 'Feints' },
    feintsShare: { kind: 'percent', label: 'Feints, share of the alcohol' },
  },
  compute: (given) => {
    const charge = chargeOf(given);
    const parts = cutCharge(charge, given);
    if (isRefusal(parts)) return parts;
    return {
      heart: parts.heart.volume,
      heartStrength: parts.heart.strength,
      heartVolumeShare: percent((100 * parts.heart.volume) / charge.volume),
      heartShare: partOf(parts.heart, charge),
      foreshotsShare: partOf(parts.foreshots, charge),
      feints: parts.feints.volume,
      feintsShare: partOf(parts.feints, charge),
    };
  },
  steps: (given, result) => [
    `The charge holds ${w(given.volume)} × ${w(given.strength)} ÷ 100 = ${w((given.volume * given.strength) / 100)} L of pure alcohol`,
    'It comes over by Rayleigh’s law, stronger at first the stronger the charge; the heart ends at one strength, whatever the charge',
    `Heart = ${w(result.heart)} × ${w(result.heartStrength)} ÷ 100 = ${w((result.heart * result.heartStrength) / 100, 5)} L of pure alcohol`,
    `Its part of the charge’s alcohol = ${w((result.heart * result.heartStrength) / 100, 5)} ÷ ${w((given.volume * given.strength) / 100)} × 100 = ${n(result.heartShare, 1)} %`,
    `Foreshots ${n(result.foreshotsShare, 1)} %, feints ${n(result.feintsShare, 1)} %; the rest stays in the spent lees`,
  ],
  remark: ({ strength }, { heartShare, heartVolumeShare }) =>
    strength > 30
      ? 'Common practice keeps a charge at 30 % vol or less: a stronger one takes the oily substances further into the heart.'
      : `From memory, a heart has 45–60 % of the charge’s alcohol and 15–22 % of its volume; here it has ${n(heartShare, 0)} and ${n(heartVolumeShare, 0)}. A weaker charge gives less heart and more to boil again.`,
  chart: (given, result) => {
    const tried = Array.from({ length: (STRONGEST - WEAKEST) / STEP + 1 }, (_, i) => WEAKEST + STEP * i);
    const strengths = [...new Set([...tried, given.strength])].sort((a, b) => a - b);
    const rows = strengths.flatMap((at) => {
      const charge = { volume: given.volume, strength: percentVol(at) };
      const parts = cutCharge(charge, given);
      return isRefusal(parts) ? [] : [{ at, charge, ...parts }];
    });
    return {
      caption: 'Share of the charge’s alcohol that is heart, by the strength of the charge',
      columns: [
        { kind: 'strength', label: 'Strength of the charge, % vol', values: rows.map(({ at }) => at) },
        {
          kind: 'percent',
          label: 'Heart, share of the alcohol',
          values: rows.map(({ heart, charge }) => partOf(heart, charge)),
        },
        { kind: 'strength', label: 'Strength of the heart', values: rows.map(({ heart }) => heart.strength) },
        {
          kind: 'percent',
          label: 'Foreshots, share of the alcohol',
          values: rows.map(({ foreshots, charge }) => partOf(foreshots, charge)),
        },
        {
          kind: 'percent',
          label: 'Feints, share of the alcohol',
          values: rows.map(({ feints, charge }) => partOf(feints, charge)),
        },
      ],
      points: [[given.strength, result.heartShare]],
    };
  },
  examples: [
    {
      given: {
        volume: 1000,
        strength: 42.96,
        foreshotsBy: 'share',
        foreshotsShare: 0,
        foreshotsVolume: 40,
        foreshotsMinutes: 15,
        foreshotsFlow: 160,
        runs: 1,
        foreshotsStrength: 73,
        heartEnd: 66.34,
        feintsEnd: 66.24,
        spiritReflux: 0,
        airPressure: 101.325,
      },
      gives: { heartStrength: 75.65, heartShare: 76.67, heartVolumeShare: 43.6 },
      within: 0.006,
      source: 'perry-batch',
      note: 'a charge of 18 mol %, 42.96 % vol, until the pot is at 6: 30 of 100 mol come over at 46 mol %, which is 75.65 % vol and 13.8 of the 18 mol of alcohol; read there off a graph, by another table of vapour',
    },
    {
      given: {
        volume: 5960,
        strength: 26,
        foreshotsBy: 'strength',
        foreshotsShare: 3,
        foreshotsVolume: 40,
        foreshotsMinutes: 15,
        foreshotsFlow: 160,
        runs: 1,
        foreshotsStrength: 73,
        heartEnd: 62,
        feintsEnd: 1,
        spiritReflux: 0.1,
        airPressure: 101.325,
      },
      gives: { heartShare: 52.5, heartVolumeShare: 18.5 },
      within: 0.2,
      source: 'memory',
      note: '45–60 % of the alcohol and 15–22 % of the volume are recalled for charges of 24–28 % vol: the middle of each',
    },
    {
      given: {
        volume: 5960,
        strength: 26,
        foreshotsBy: 'strength',
        foreshotsShare: 3,
        foreshotsVolume: 40,
        foreshotsMinutes: 15,
        foreshotsFlow: 160,
        runs: 1,
        foreshotsStrength: 72,
        heartEnd: 60,
        feintsEnd: 1,
        spiritReflux: 0.1,
        airPressure: 101.325,
      },
      gives: { heartStrength: 67 },
      within: 0.06,
      source: 'common-practice',
      note: 'new spirit is collected at 63–71 % vol: the middle of it, with the heart from 72 falling to 60',
    },
  ],
});
