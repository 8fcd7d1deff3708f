// What an answer at the fault desk is worth, and what each reading said for and against the causes.
import { leftOpen } from '../core/fault/decide.ts';
import { truthOf, type FaultCase, type ShownReading } from './draw.ts';

/** Points for the cause, for the first thing done and for the cost; and, where the cause is another, at most so many for what was ruled out. A trainer's rule, without a source. */
export const FAULT_POINTS = { cause: 50, first: 30, cost: 20, ruledOut: 20 } as const;

export interface FaultAnswer {
  readonly asked: readonly string[];
  readonly cause: string;
  readonly first: string;
}
export interface FaultMark {
  readonly isCause: boolean;
  readonly isFirst: boolean;
  /** The harm that the first thing does, or undefined. */
  readonly harm: string | undefined;
  /** True where a reading was asked for that bears on it: it ruled out a cause that what everybody sees had left. */
  readonly bears: boolean;
  /** True where a reading that was asked for rules out the cause that was named. */
  readonly isAgainst: boolean;
  /** Minutes spent, and those that were needed. */
  readonly spent: number;
  readonly least: number;
  /** Causes that what was asked leaves open. */
  readonly open: readonly string[];
  /** Other causes that what everybody sees had left, and how many of them the readings ruled out. */
  readonly others: number;
  readonly gone: number;
  /** Points for asking no more than needed. */
  readonly cost: number;
  /** Points for what was ruled out: only where the cause named is another, and one that the readings had left open. */
  readonly ruledOut: number;
  readonly total: number;
}

const costOf = (readings: readonly ShownReading[]) => readings.reduce((sum, { minutes }) => sum + minutes, 0);

/** Readings that the trainee has: those that everybody sees, and those asked for. */
export const readingsHad = ({ readings }: FaultCase, asked: readonly string[]): readonly ShownReading[] =>
  readings.filter(({ id, minutes }) => minutes === 0 || asked.includes(id));

/** Readings that were needed: the cheapest that decide it and, of those asked for, each that confirms the fault or looks for a danger. */
export const readingsNeeded = (
  { readings, least, cause }: FaultCase,
  asked: readonly string[],
): readonly ShownReading[] =>
  readings.filter(
    ({ id, isDanger }) =>
      least.some((each) => each.id === id) ||
      (asked.includes(id) && (isDanger || cause.confirms.includes(id))),
  );

/**
 * Marks an answer, 0–100. A harmful act first scores nothing, and so does a guess without a reading that bears on it.
 * The cost counts only where the cause is right and was decided. A wrong cause that the readings left open earns the part of
 * `POINTS.ruledOut` that they had ruled out of the other causes left by what everybody sees.
 */
export function markFault(of: FaultCase, { asked, cause, first }: FaultAnswer): FaultMark {
  const had = readingsHad(of, asked);
  const found = truthOf(of.readings);
  const open = leftOpen(had, found, of.supposed);
  const before = leftOpen(readingsHad(of, []), found, of.supposed);
  const bears = open.length < before.length;
  const [others, gone] = [before.length - 1, before.length - open.length]; // the true cause is open always
  const isCause = cause === of.cause.id;
  const isAgainst = had.some((each) => each.minutes > 0 && rulesOut(of, each).includes(cause));
  const isFirst = first === of.cause.first;
  const harm = of.bench.firsts.find(({ id }) => id === first)?.harms;
  const [spent, least] = [costOf(had), costOf(readingsNeeded(of, asked))];
  const isDecided = isCause && open.length === 1;
  const cost = isDecided ? FAULT_POINTS.cost * (spent <= least ? 1 : least / spent) : 0;
  const ruledOut = !isCause && open.includes(cause) ? Math.round((FAULT_POINTS.ruledOut * gone) / others) : 0;
  const points = (isCause ? FAULT_POINTS.cause : 0) + (isFirst ? FAULT_POINTS.first : 0) + cost + ruledOut;
  return {
    isCause,
    isFirst,
    harm,
    bears,
    isAgainst,
    spent,
    least,
    open,
    others,
    gone,
    cost,
    ruledOut,
    total: harm || !bears ? 0 : Math.round(points),
  };
}

/** Causes that a reading by itself rules out, by their ids. */
export function rulesOut({ bench, readings, supposed }: FaultCase, reading: ShownReading): readonly string[] {
  const left = leftOpen([reading], truthOf(readings), supposed);
  return bench.causes.map(({ id }) => id).filter((id) => !left.includes(id));
}
