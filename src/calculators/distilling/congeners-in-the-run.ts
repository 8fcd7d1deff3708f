// Where a trace of the spirit comes over: its part in foreshots, heart, feints and spent lees.
import {
  congeners,
  followCongener,
  volatility,
  volatilityOverStill,
  type Congener,
} from '../../core/distilling/congeners.ts';
import { formatNumber as n } from '../../core/format.ts';
import { moleFraction, percent, quantity } from '../../core/quantity.ts';
import { amountsOf } from '../../core/spirit/amounts.ts';
import { isRefusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';
import { chargeOf, cutsOf, houseCuts, spiritCharge, stillOf } from './house-cuts.ts';

const names = {
  acetaldehyde: 'Acetaldehyde',
  ethylAcetate: 'Ethyl acetate',
  methanol: 'Methanol',
  isoamylAlcohol: 'Isoamyl alcohol',
} as const;

type Given = Parameters<typeof cutsOf>[0] & Parameters<typeof chargeOf>[0];
const follow = (given: Given, congener: Congener) =>
  followCongener(chargeOf(given), stillOf(given), cutsOf(given), congener);

/** Molecules of ethanol in one of the charge. */
function inCharge(given: Given) {
  const { ethanol, water } = amountsOf(chargeOf(given));
  return moleFraction(ethanol / (ethanol + water));
}
const overAll = (given: Given & { readonly trace: keyof typeof names }) =>
  volatilityOverStill(congeners[given.trace], inCharge(given), stillOf(given));

/** Part of the trace in the heart, %, when it boils out so many times as easily as assumed; nothing where there is no run. */
function heartWhen(given: Given, { inWater, inAlcohol }: Congener, times: number): number | undefined {
  const trace = follow(given, { inWater: inWater * times, inAlcohol: inAlcohol * times });
  return isRefusal(trace) ? undefined : 100 * trace.shares.heart;
}

export default defineCalculator({
  id: 'congeners-in-the-run',
  stage: 'distilling',
  title: 'Where a trace comes over',
  purpose:
    'A sketch from recalled figures of where a trace of the charge goes. Trust the order, not the numbers.',
  sources: ['trace-volatility', 'de-nevers'],
  cautions: ['licence', 'ethanol-vapour'],
  inputs: {
    trace: { label: 'Trace', options: names, value: 'ethylAcetate' },
    ...spiritCharge,
    ...houseCuts,
  },
  main: ['trace', 'strength', 'heartEnd', 'feintsEnd'],
  outputs: {
    foreshots: { kind: 'percent', label: 'In the foreshots', digits: 0 },
    heart: { kind: 'percent', label: 'In the heart', digits: 0 },
    feints: { kind: 'percent', label: 'In the feints', digits: 0 },
    residue: { kind: 'percent', label: 'In the spent lees', digits: 0 },
    atCharge: { kind: 'ratio', label: 'Volatility in the charge', digits: 1 },
    atEnd: { kind: 'ratio', label: 'Volatility in water', digits: 1 },
  },
  compute: (given) => {
    const trace = follow(given, congeners[given.trace]);
    if (isRefusal(trace)) return trace;
    const x = inCharge(given);
    const { foreshots, heart, feints, residue } = trace.shares;
    return {
      foreshots: percent(100 * foreshots),
      heart: percent(100 * heart),
      feints: percent(100 * feints),
      residue: percent(100 * residue),
      atCharge: quantity('ratio', volatility(congeners[given.trace], x, given.airPressure)),
      atEnd: quantity('ratio', congeners[given.trace].inWater),
    };
  },
  steps: (given, result) => [
    'Volatility K = part of the trace in the vapour ÷ part of it in the liquid, where it is so dilute that it changes nothing else',
    `${names[given.trace]}: K in water ${n(result.atEnd, 1)}; against ethanol, in ethanol, ${congeners[given.trace].inAlcohol}`,
    'Between the two, K ÷ (K of ethanol) is taken to go evenly, on a logarithmic scale, with the molecules of ethanol in a hundred: an assumption',
    `So in this charge K = ${n(result.atCharge, 1)}`,
    ...(stillOf(given).reflux > 0
      ? [`Head and neck lift it, as they lift ethanol: at the start K = ${n(overAll(given), 1)}`]
      : []),
    'Rayleigh’s law for the trace: each hundredth of the pot that boils off takes K hundredths of the trace with it, by the K of that moment',
    `Foreshots ${n(result.foreshots, 1)} + heart ${n(result.heart, 1)} + feints ${n(result.feints, 1)} + lees ${n(result.residue, 1)} = 100 %`,
  ],
  remark: (given, { heart }) => {
    const [half, twice] = [0.5, 2].map((times) => heartWhen(given, congeners[given.trace], times));
    const span = [half ?? heart, heart, twice ?? heart];
    return `Low confidence. If K were half or twice what is assumed here, the heart would hold from ${n(Math.min(...span), 0)} to ${n(Math.max(...span), 0)} % of it. Reactions in the still, copper and what the feints bring back are left out: rest no limit and no recipe on this.`;
  },
  chart: (given) => {
    const trace = follow(given, congeners[given.trace]);
    const points = isRefusal(trace) ? [] : trace.points;
    return {
      caption: `${names[given.trace]} to a litre of pure alcohol as it comes over, that of the charge being 1 (low confidence)`,
      columns: [
        { kind: 'volume20', label: 'Litres come over', values: points.map(({ volume }) => volume) },
        {
          kind: 'ratio',
          label: names[given.trace],
          values: points.map(({ concentration }) => concentration),
        },
        { kind: 'strength', label: 'At the safe', values: points.map(({ strength }) => strength) },
      ],
    };
  },
  examples: [
    {
      given: {
        trace: 'isoamylAlcohol',
        volume: 1000,
        strength: 70,
        foreshotsBy: 'share',
        foreshotsShare: 3,
        foreshotsVolume: 40,
        foreshotsMinutes: 15,
        foreshotsFlow: 160,
        runs: 1,
        foreshotsStrength: 73,
        heartEnd: 62,
        feintsEnd: 1,
        spiritReflux: 0,
        airPressure: 101.325,
      },
      gives: { atCharge: 1 },
      within: 0.12,
      source: 'trace-volatility',
      note: 'recalled: isoamyl alcohol boils out less easily than its liquid holds it above about 60–70 % vol, so its volatility is 1 there; the upper end',
    },
  ],
});
