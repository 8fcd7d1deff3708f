// The figures that are moved on the line’s vessels themselves: where each knob stands, and what a move of it would mean.
import { format } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { numberFigures, type NumberName } from '../house/figures.ts';
import { cutHandles } from './cut-handles.ts';
import { roomFor } from './line-flows.ts';

export type HandleId = 'malt' | 'gravity' | 'heart-begins' | 'heart-ends' | 'years' | 'loss';

export interface LineHandle {
  readonly id: HandleId;
  readonly figure: NumberName;
  /** In full, for those who hear it, with what is seen in it; and short, beside the vessel. */
  readonly label: string;
  readonly short: string;
  /** The figure as printed beside the vessel, and in words. */
  readonly shows: string;
  readonly says: string;
  /** How far up its rail the knob stands, 0–1. */
  readonly part: number;
  /** The figure’s value with the knob so far up, rounded to what a hand can mean. */
  readonly valueAt: (part: number) => number;
  /** Its value some presses of a key further up (1) or down (−1). */
  readonly stepped: (steps: number) => number;
}

/** A rail: the figure at its foot and at its head, what a press moves, and what a drag rounds to. */
interface Rail {
  readonly ends: readonly [foot: number, head: number];
  readonly press: number;
  readonly drag: number;
}

const rails = {
  originalGravity: { ends: [1.02, 1.12], press: 0.001, drag: 0.001 },
  heartEnd: { ends: [45, 80], press: 0.5, drag: 0.1 },
  foreshotsShare: { ends: [0, 12], press: 0.5, drag: 0.1 },
  foreshotsMinutes: { ends: [0, 60], press: 1, drag: 1 },
  foreshotsStrength: { ends: [60, 80], press: 0.5, drag: 0.1 },
  yearsInWood: { ends: [0, 30], press: 1, drag: 1 },
  alcoholLoss: { ends: [0, 6], press: 0.1, drag: 0.1 },
} as const satisfies Partial<Record<NumberName, Rail>>;

/** What is heard of a handle: what is seen beside it, so that it can be called by that, and its name in full. */
const heard = (short: string, label: string): string =>
  label.toLowerCase().includes(short.toLowerCase())
    ? label
    : `${short}: ${label[0]!.toLowerCase()}${label.slice(1)}`;

const tidy = (value: number) => Number(value.toFixed(6));

/** The rail of a figure from where it was to where it is; one that stands beyond its usual ends gets all that the figure can be. */
function railOf(figure: NumberName, was: number, now: number): Rail {
  if (figure === 'maltPerMash') return { ends: [0, roomFor(was, now)], press: 50, drag: 10 };
  if (figure === 'foreshotsVolume') return { ends: [0, roomFor(4 * was, now) || 100], press: 1, drag: 1 };
  const rail = rails[figure as keyof typeof rails];
  const [low, high] = rail.ends;
  return Math.min(was, now) >= low && Math.max(was, now) <= high
    ? rail
    : { ...rail, ends: numberFigures[figure].range };
}

/** The six handles as they stand for a line, on rails with room for where the figures were and where they are. */
export function lineHandles(line: Line, was: Line, is: Line): readonly LineHandle[] {
  const cuts = cutHandles(line);
  const own = (
    id: HandleId,
    figure: NumberName,
    short: string,
    label: string = numberFigures[figure].label,
    said?: string,
    digits?: number,
  ): LineHandle => {
    const { kind, range } = numberFigures[figure];
    const value = line.house[figure];
    const { ends, press, drag } = railOf(figure, was.house[figure], is.house[figure]);
    const [foot, head] = ends;
    const held = (wanted: number) => tidy(Math.min(range[1], Math.max(range[0], wanted)));
    const shows = format(value, kind, digits);
    return {
      id,
      figure,
      label: heard(short, label),
      short,
      shows,
      says: said ?? shows,
      part: (value - foot) / (head - foot),
      valueAt: (part) => held(Math.round((foot + part * (head - foot)) / drag) * drag),
      stepped: (steps) => held(value + steps * press),
    };
  };
  const [begins, ends] = [cuts[0]!, cuts[1]!];
  return [
    own('malt', 'maltPerMash', 'In a mash'),
    own('gravity', 'originalGravity', 'Gravity'),
    own('heart-begins', begins.figure, 'Foreshots', begins.label, begins.says, 1),
    own('heart-ends', 'heartEnd', 'Heart ends', ends.label, ends.says, 1),
    own('years', 'yearsInWood', 'In wood'),
    own('loss', 'alcoholLoss', 'Loss a year', numberFigures.alcoholLoss.label, undefined, 1),
  ];
}
