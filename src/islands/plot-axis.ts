// The two ends of an axis: round, and still while a figure is dragged.
import { axisTicks, roundDown, roundUp } from './plot.ts';

export type AxisEnds = readonly [number, number];

const FILLED = 0.5; // part of the axis that the values must still fill for it to stay
const LEVEL = 0.02; // part of a level curve's height that is drawn above and below it

/** Round ends for the values; the ends before stay while the values lie between them and fill half of them. */
export function steadyEnds(values: readonly number[], marks: number, before?: AxisEnds): AxisEnds {
  let [low, high] = [Math.min(...values), Math.max(...values)];
  if (!(high > low)) {
    const room = Math.max(Math.abs(high) * LEVEL, 0.1);
    [low, high] = [low === 0 ? 0 : low - room, high + room];
  }
  const stays =
    before && low >= before[0] && high <= before[1] && high - low >= FILLED * (before[1] - before[0]);
  return stays ? before : [roundDown(low, high - low, marks), roundUp(high, marks, high - low)];
}

/** The marks of an axis: whole where it counts. */
export const axisMarks = (ends: AxisEnds, marks: number, isWhole: boolean): readonly number[] =>
  axisTicks(ends, marks, isWhole ? 1 : 0);
