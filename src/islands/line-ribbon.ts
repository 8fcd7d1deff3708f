// The alcohol drawn as one ribbon along the line: its width is litres, it narrows where some is lost, and the feints are a loop.
import type { LineFlows, LossName, RibbonRoom } from './line-flows.ts';

/** How the ribbon lies: where each of the seven stations begins and the last ends, and the length that looks as long as a unit across. */
export interface RibbonCourse {
  readonly bounds: readonly number[];
  readonly perAcross: number;
  /** Down the page, its width across it; otherwise along the page. */
  readonly isDown: boolean;
}

export const RIBBON_HEIGHT = 100; // units across the drawing, whatever its size
const [EDGE, HOLE, TAIL] = [1, 6, 13]; // units: free at the edge, inside the loop, and for what is lost to bend away

export interface Ribbon {
  /** Outlines as SVG paths: sugar, alcohol, what goes round with the way it goes, and each loss. */
  readonly promise: string;
  readonly spirit: string;
  readonly round: string;
  readonly way: string;
  readonly lost: Readonly<Record<LossName, string>>;
  /** Widths, in units across, along the ribbon: each stretch between two losses, in order. */
  readonly widths: readonly number[];
  /** Widths of what is lost after each stretch, in the same units. */
  readonly losses: readonly number[];
  /** Units across for one litre. */
  readonly scale: number;
}

/** Where each loss leaves: after how many stations, and how far into the next. */
const places = [
  ['left', 2, 0.4],
  ['potAle', 3, 0.5],
  ['lees', 4, 0.62],
  ['wood', 5, 0.2],
  ['air', 5, 0.45],
  ['inCasks', 5, 0.8],
  ['filters', 6, 0.3],
] as const satisfies readonly (readonly [LossName, number, number])[];
const [LOOP_FROM, LOOP_TO] = [0.14, 0.86]; // of the spirit still’s place

/** Units across for one litre, when the drawing has this room. */
export const ribbonScale = ({ ribbon, round }: RibbonRoom): number =>
  (RIBBON_HEIGHT - 2 * EDGE - HOLE - TAIL) / (ribbon + 2 * round);

/** The ribbon of a line. Lengths are in the units of the course along, and of `RIBBON_HEIGHT` across. */
export function ribbonOf(
  flows: LineFlows,
  room: RibbonRoom,
  { bounds, perAcross, isDown }: RibbonCourse,
): Ribbon {
  const scale = ribbonScale(room);
  const base = EDGE + HOLE + 2 * room.round * scale; // where the ribbon’s straight edge runs
  const at = (station: number, part: number) =>
    bounds[station]! + part * (bounds[station + 1]! - bounds[station]!);
  const point = (along: number, across: number) => {
    const [a, b] = [along.toFixed(2), across.toFixed(3)];
    return isDown ? `${b} ${a}` : `${a} ${b}`;
  };
  /** A loss of a width that leaves the ribbon’s edge and bends away from it. */
  const bend = (along: number, edge: number, width: number) => {
    const length = width * perAcross;
    const turn = 9 * perAcross;
    const end = Math.max(edge + width + 8, RIBBON_HEIGHT - EDGE);
    return (
      `M${point(along, edge)} C${point(along + turn, edge)} ${point(along + turn + length, edge)} ${point(along + turn + length, end)} ` +
      `L${point(along + turn, end)} C${point(along + turn, edge + width)} ${point(along + turn, edge + width)} ${point(along, edge + width)}Z`
    );
  };

  const after = [flows.wash, flows.lowWines, flows.heart, undefined, undefined, flows.matured, flows.bottles];
  const lost = {} as Record<LossName, string>;
  const widths = [flows.promise * scale];
  const losses: number[] = [];
  const [beginning, end] = [at(places[0][1], places[0][2]), bounds.at(-1)!];
  let edge = ''; // the edge that steps in where some is lost
  places.forEach(([name, station, part], i) => {
    const along = at(station, part);
    const width = flows.lost[name] * scale;
    const before = widths.at(-1)!;
    const left = after[i] === undefined ? before - width : after[i] * scale;
    edge += `${i === 0 ? '' : ` L${point(along, base + before)}`} L${point(along, base + left)}`;
    lost[name] = bend(along, base + left, width);
    widths.push(left);
    losses.push(width);
  });
  const loop = loopOf(flows.round * scale);
  return {
    promise: `M${point(bounds[0]!, base)} L${point(beginning, base)} L${point(beginning, base + widths[0]!)} L${point(bounds[0]!, base + widths[0]!)}Z`,
    spirit: `M${point(end, base)} L${point(beginning, base)}${edge} L${point(end, base + widths.at(-1)!)}Z`,
    ...loop,
    lost,
    widths,
    losses,
    scale,
  };

  /** What goes round: a ring whose one side lies on the ribbon, in the charge, and whose other side leads back. */
  function loopOf(width: number): Pick<Ribbon, 'round' | 'way'> {
    const [left, right] = [at(4, LOOP_FROM), at(4, LOOP_TO)];
    const ring = (inset: number) => {
      const [a, b] = [left + inset * perAcross, right - inset * perAcross];
      const [top, foot] = [base - 2 * width - HOLE + inset, base - inset];
      const middle = (top + foot) / 2;
      const round = Math.min((foot - middle) * perAcross, (b - a) / 2);
      const quarter = 0.55 * round;
      const rise = 0.55 * (foot - middle);
      return (
        `M${point(a + round, foot)} L${point(b - round, foot)} C${point(b - round + quarter, foot)} ${point(b, middle + rise)} ${point(b, middle)} ` +
        `C${point(b, middle - rise)} ${point(b - round + quarter, top)} ${point(b - round, top)} L${point(a + round, top)} ` +
        `C${point(a + round - quarter, top)} ${point(a, middle - rise)} ${point(a, middle)} C${point(a, middle + rise)} ${point(a + round - quarter, foot)} ${point(a + round, foot)}Z`
      );
    };
    /** An arrow head across a side of the ring: with the ribbon (1), or back (−1). */
    const arrow = (across: number, along: 1 | -1) => {
      const [middle, reach] = [(left + right) / 2, width / 4];
      const behind = middle - along * reach * perAcross;
      return `M${point(behind, across - reach)} L${point(middle + along * reach * perAcross, across)} L${point(behind, across + reach)}`;
    };
    return {
      round: ring(0) + ring(width),
      way: `${arrow(base - width / 2, 1)} ${arrow(base - 1.5 * width - HOLE, -1)}`,
    };
  }
}
