// The three cuts of the spirit run as handles: where each stands, and what moving it would mean for the house.
import type { Line } from '../core/line/line.ts';
import type { RunPoint } from '../core/distilling/run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { NumberName } from '../house/figures.ts';

export interface CutHandle {
  readonly id: 'heart-begins' | 'heart-ends' | 'feints-end';
  readonly label: string;
  /** Litres that have come over when the cut is made. */
  readonly volume: number;
  readonly strength: number;
  readonly says: string;
  /** The house figure that this cut is, as it stands, and its value if the cut were made at a point of the run. */
  readonly figure: NumberName;
  readonly value: number;
  readonly valueAt: (point: RunPoint) => number;
  /** The value some presses of a key higher (1) or lower (−1). */
  readonly stepped: (steps: number) => number;
}

const tenth = (value: number) => Math.round(value * 10) / 10;

const known = new WeakMap<Line, readonly CutHandle[]>();

/** The handles as they stand for a line, first to last along the run. */
export function cutHandles(line: Line): readonly CutHandle[] {
  const handles = known.get(line) ?? handlesOf(line);
  known.set(line, handles);
  return handles;
}

function handlesOf(line: Line): readonly CutHandle[] {
  const { house, foreshots, heart, round } = line;
  const whole = round.spiritRun.distillate.volume;
  const [begins, ends] = [foreshots.volume, foreshots.volume + heart.volume];
  const falling = (figure: 'heartEnd' | 'feintsEnd') => ({
    figure,
    value: house[figure],
    valueAt: ({ strength }: RunPoint) => tenth(strength),
    stepped: (steps: number) => tenth(house[figure] + steps * 0.1),
  });
  const after = (volume: number) => `after ${n(volume, 0)} L`;
  return [
    {
      id: 'heart-begins',
      label: 'Heart begins',
      volume: begins,
      strength: heart.begins,
      ...foreshotsCut(line),
    },
    {
      id: 'heart-ends',
      label: 'Heart ends',
      volume: ends,
      strength: house.heartEnd,
      says: `heart ends at ${n(house.heartEnd, 1)} % vol, ${after(ends)}`,
      ...falling('heartEnd'),
    },
    {
      id: 'feints-end',
      label: 'Feints end',
      volume: whole,
      strength: house.feintsEnd,
      says: `feints end at ${n(house.feintsEnd, 1)} % vol, ${after(whole)}`,
      ...falling('feintsEnd'),
    },
  ];
}

/** The first cut in the figure by which the house ends its foreshots. */
function foreshotsCut({
  house,
  charge,
  foreshots,
  heart,
  round: { runs },
}: Line): Pick<CutHandle, 'says' | 'figure' | 'value' | 'valueAt' | 'stepped'> {
  const at = `at ${n(heart.begins, 1)} % vol`;
  const litres = `after ${n(foreshots.volume, 0)} L`;
  switch (house.foreshotsBy) {
    case 'share':
      return {
        says: `heart begins after ${n(house.foreshotsShare, 1)} % of the alcohol, ${at}, ${litres}`,
        figure: 'foreshotsShare',
        value: house.foreshotsShare,
        valueAt: ({ alcohol }) => tenth((100 * alcohol) / charge.alcohol),
        stepped: (steps) => tenth(house.foreshotsShare + steps * 0.1),
      };
    case 'volume':
      return {
        says: `heart begins ${litres}, ${at}`,
        figure: 'foreshotsVolume',
        value: house.foreshotsVolume,
        valueAt: ({ volume }) => Math.round(volume / runs), // the curve is of all runs of a mash
        stepped: (steps) => Math.round(house.foreshotsVolume + steps),
      };
    case 'minutes':
      return {
        says: `heart begins after ${n(house.foreshotsMinutes, 1)} minutes, ${at}, ${litres}`,
        figure: 'foreshotsMinutes',
        value: house.foreshotsMinutes,
        valueAt: ({ volume }) => tenth((60 * volume) / runs / house.foreshotsFlow),
        stepped: (steps) => tenth(house.foreshotsMinutes + steps * 0.5),
      };
    case 'strength':
      return {
        says: `heart begins ${at}, ${litres}`,
        figure: 'foreshotsStrength',
        value: house.foreshotsStrength,
        valueAt: ({ strength }) => tenth(strength),
        stepped: (steps) => tenth(house.foreshotsStrength + steps * 0.1),
      };
  }
}

/** The point of a run when so many litres have come over; its first or its last beyond its ends. */
export function pointAt(curve: readonly RunPoint[], volume: number): RunPoint {
  const next = curve.findIndex((point) => point.volume >= volume);
  if (next <= 0) return next === 0 ? curve[0]! : curve.at(-1)!;
  const [from, to] = [curve[next - 1]!, curve[next]!];
  return between(from, to, (volume - from.volume) / (to.volume - from.volume));
}

/** A point part of the way from one point of a run to the next. */
function between(a: RunPoint, b: RunPoint, part: number): RunPoint {
  const mix = <N extends number>(from: N, to: N) => (from + part * (to - from)) as N;
  return {
    strength: mix(a.strength, b.strength),
    temperature: mix(a.temperature, b.temperature),
    volume: mix(a.volume, b.volume),
    alcohol: mix(a.alcohol, b.alcohol),
    pot: mix(a.pot, b.pot),
  };
}
