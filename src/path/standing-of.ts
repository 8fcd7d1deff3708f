// How far a reader has come towards a stage's standard, by the answers that were kept.
import { dayNumber, type Practised } from '../exercises/progress.ts';

/** Days that must lie between two right answers before a kind counts as reached. */
export const DAYS_APART = 1;

export interface KindStanding {
  readonly kind: string;
  /** The day of the first right answer since the last miss. */
  readonly once?: string;
  /** The day on which it was right again, far enough after that. */
  readonly reached?: string;
  /** True where the last answer was not right. */
  readonly missed: boolean;
  /** The day from which the next right answer counts. */
  readonly from?: string;
}

const dayOf = (number: number) => new Date(number * 86_400_000).toISOString().slice(0, 10);

/**
 * A kind is reached when it was right on two days, one at least apart, with no miss between; what was reached stays
 * reached, so that a sheet that was signed goes on saying what it said. A right number with the wrong unit or rounding
 * counts neither way.
 */
export function standingOfKind(kind: string, log: readonly Practised[]): KindStanding {
  let once: string | undefined;
  let reached: string | undefined;
  let missed = false;
  for (const entry of log) {
    if (entry.kind !== kind) continue;
    missed = entry.verdict === 'wrong';
    if (entry.verdict === 'wrong' && reached === undefined) once = undefined;
    if (entry.verdict !== 'right') continue;
    if (once === undefined) once = entry.day;
    else if (reached === undefined && dayNumber(entry.day) - dayNumber(once) >= DAYS_APART)
      reached = entry.day;
  }
  return {
    kind,
    missed,
    ...(once === undefined ? {} : { once, from: dayOf(dayNumber(once) + DAYS_APART) }),
    ...(reached === undefined ? {} : { reached }),
  };
}

export interface StageStanding {
  readonly kinds: readonly KindStanding[];
  /** How many kinds are reached, and how many were right once. */
  readonly reached: number;
  readonly once: number;
  /** The day on which the last of them was reached, once all are. */
  readonly day?: string;
}

/** Where a stage stands. */
export function standingOfStage(kinds: readonly string[], log: readonly Practised[]): StageStanding {
  const standings = kinds.map((kind) => standingOfKind(kind, log));
  const days = standings.flatMap(({ reached }) => reached ?? []);
  const isAll = days.length === kinds.length;
  return {
    kinds: standings,
    reached: days.length,
    once: standings.filter(({ once, reached }) => once !== undefined || reached !== undefined).length,
    ...(isAll ? { day: [...days].sort().at(-1)! } : {}),
  };
}

const TOPS = [4, 8, 16, 24]; // at which the picture's scale may end before it ends at all there is

/** Where the scale of the picture ends: a little above what is right, so that the first right answer is seen to rise. */
export const topOfScale = (once: number, all: number): number => Math.min(all, TOPS.find((top) => top > once) ?? all); // prettier-ignore

/** What was mastered by the end of each day on which something was answered: kinds right once, and kinds reached. */
export function masteredByDay(kinds: readonly string[], log: readonly Practised[]) {
  const days = [...new Set(log.map(({ day }) => day))].sort();
  return days.map((day) => {
    const until = log.filter((entry) => entry.day <= day);
    const { once, reached } = standingOfStage(kinds, until);
    return { day, once, reached };
  });
}
