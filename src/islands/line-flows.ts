// The alcohol of one mash along the line: what each station holds, what is lost between, and what goes round.
import { ledger } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { roundUp } from './plot.ts';

/** Where a part of the alcohol leaves the line for good. */
export type LossName = 'left' | 'potAle' | 'lees' | 'wood' | 'air' | 'inCasks' | 'filters';

/** Litres of pure alcohol of one mash. */
export interface LineFlows {
  /** What the malt could give; it is sugar until the yeast has worked. */
  readonly promise: number;
  readonly wash: number;
  readonly lowWines: number;
  readonly heart: number;
  readonly matured: number;
  readonly bottles: number;
  /** Foreshots and feints, which leave the spirit still and return to it. */
  readonly round: number;
  readonly lost: Readonly<Record<LossName, number>>;
}

/** The flows of a line. Each is the line’s own figure; only what mash and yeast leave is a difference, and never below nothing. */
export function flowsOfLine(line: Line): LineFlows {
  const { malt, wash, lowWines, heart, bottles } = ledger(line, 'mash');
  const { matured, bottling } = line;
  return {
    promise: malt,
    wash,
    lowWines,
    heart,
    matured: matured.alcohol,
    bottles,
    round: line.foreshots.alcohol + line.feints.alcohol,
    lost: {
      left: Math.max(0, malt - wash),
      potAle: line.potAle.alcohol,
      lees: line.spentLees.alcohol,
      wood: matured.toWood,
      air: matured.alcoholLost,
      inCasks: matured.inCasks,
      filters: bottling.inFilters,
    },
  };
}

/** Litres that the drawing has room for: in the ribbon, and in what goes round. */
export interface RibbonRoom {
  readonly ribbon: number;
  readonly round: number;
}

const MARKS = 8; // round numbers up to the end, about
const [SPARE, SPARE_ROUND] = [1.25, 1.5]; // times what was: room to grow under the hand; what goes round grows fastest

/** A round number with room to spare above what was, and in any case for what is: it stands still while a figure is moved. */
export const roomFor = (was: number, is: number, spare = SPARE): number =>
  roundUp(Math.max(spare * was, is), MARKS);

/** Room for a line before a move and after it. */
export function roomOf(before: LineFlows, after: LineFlows): RibbonRoom {
  const widest = ({ promise, wash }: LineFlows) => Math.max(promise, wash);
  return {
    ribbon: roomFor(widest(before), widest(after)),
    round: roomFor(before.round, after.round, SPARE_ROUND),
  };
}
