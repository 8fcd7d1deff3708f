// The strength of one spirit run against the volume that has come over, as a curve to read.
import type { Chart } from '../../../calculators/define.ts';
import { runStill } from '../../../core/distilling/run.ts';
import { share, strength, litres20 } from '../../../core/quantity.ts';
import { isRefusal } from '../../../core/refusal.ts';

const ROWS = 60; // at most, each a hundredth of the charge
const END = 5; // % vol to which the curve is drawn

export interface Charged {
  readonly volume: number;
  readonly charge: number;
  readonly reflux: number;
}
type Point = readonly [volume: number, strength: number];

/** Volume over and strength at the safe, along the run. */
function points({ volume, charge, reflux }: Charged): readonly Point[] {
  const run = runStill({
    charge: { volume: litres20(volume), strength: strength(charge) },
    reflux: share(reflux),
    until: strength(END),
  });
  return isRefusal(run) ? [] : run.curve.map((point) => [point.volume, point.strength] as const);
}

/** Volume that has come over when a spirit has fallen to a strength. */
export function volumeAt(charged: Charged, wanted: number): number {
  const run = runStill({
    charge: { volume: litres20(charged.volume), strength: strength(charged.charge) },
    reflux: share(charged.reflux),
    until: strength(wanted),
  });
  return isRefusal(run) ? NaN : run.distillate.volume;
}

/** Strength when so much has come over, between two points of the run. */
function strengthAt(curve: readonly Point[], volume: number): number {
  const next = Math.max(
    1,
    curve.findIndex((point) => point[0] >= volume - 1e-9),
  );
  const [[from, before], [to, after]] = [curve[next - 1]!, curve[next]!];
  return before + ((after - before) * (volume - from)) / (to - from);
}

/** The curve, in rows of so many litres. */
export function chartOf(charged: Charged): Chart {
  const curve = points(charged);
  const step = charged.volume / 100;
  const most = curve.at(-1)![0];
  const volumes = Array.from({ length: ROWS }, (_, i) => i * step).filter((volume) => volume <= most);
  return {
    caption: 'Strength at the safe as the run goes on',
    columns: [
      { kind: 'volume20', label: 'Come over', values: volumes },
      {
        kind: 'strength',
        label: 'At the safe',
        values: volumes.map((volume) => strengthAt(curve, volume)),
      },
    ],
  };
}
