// What an answer at the fault desk is worth, and what each reading said for and against the causes.
import { leftOpen } from '../core/fault/decide.ts';
import { foundIn, type FaultCase, type Shown } from './draw.ts';

/** Points for the cause, for the first thing done, and for the cost; what harm takes off. A trainer's rule, without a source. */
export const POINTS = { cause: 50, first: 30, cost: 20, harm: 30 } as const;

export interface Answer {
  readonly asked: readonly string[];
  readonly cause: string;
  readonly first: string;
}
export interface FaultMark {
  readonly isCause: boolean;
  readonly isFirst: boolean;
  /** The harm that the first thing does, or undefined. */
  readonly harm: string | undefined;
  /** Minutes spent, and the least that would have decided it. */
  readonly spent: number;
  readonly least: number;
  /** Causes that what was asked leaves open. */
  readonly open: readonly string[];
  readonly total: number;
}

const costOf = (readings: readonly Shown[]) => readings.reduce((sum, { minutes }) => sum + minutes, 0);

/** Readings that the trainee has: those that everybody sees, and those asked for. */
export const hadOf = ({ readings }: FaultCase, asked: readonly string[]): readonly Shown[] =>
  readings.filter(({ id, minutes }) => minutes === 0 || asked.includes(id));

/** Marks an answer, 0–100. The cost counts only where the cause is right and was decided: a lucky guess earns nothing for being cheap. */
export function markFault(of: FaultCase, { asked, cause, first }: Answer): FaultMark {
  const had = hadOf(of, asked);
  const open = leftOpen(had, foundIn(of.readings), of.supposed);
  const isCause = cause === of.cause.id;
  const isFirst = first === of.cause.first;
  const harm = of.bench.firsts.find(({ id }) => id === first)?.harms;
  const [spent, least] = [costOf(had), costOf(of.least)];
  const isDecided = isCause && open.length === 1;
  const cost = isDecided ? POINTS.cost * (spent <= least ? 1 : least / spent) : 0;
  const points =
    (isCause ? POINTS.cause : 0) + (isFirst ? POINTS.first : 0) + cost - (harm ? POINTS.harm : 0);
  return { isCause, isFirst, harm, spent, least, open, total: Math.max(0, Math.round(points)) };
}

/** Causes that a reading by itself rules out, by their ids. */
export function rulesOut({ bench, readings, supposed }: FaultCase, reading: Shown): readonly string[] {
  const left = leftOpen([reading], foundIn(readings), supposed);
  return bench.causes.map(({ id }) => id).filter((id) => !left.includes(id));
}
