// The cases that were answered, as text: the first answer to each, as a later go has seen what was right; strictly read.
import { isSeed } from '../shift/seed.ts';

export interface Done {
  readonly seed: number;
  readonly total: number;
  readonly day: string;
  /** The code of the house that it was drawn in; none where it was kept before codes were. */
  readonly house?: string;
}
export const MOST_KEPT = 200; // cases; the oldest go first

const isDone = (each: unknown): each is Done => {
  if (typeof each !== 'object' || each === null) return false;
  const { seed, total, day, house } = each as Record<string, unknown>;
  return (house === undefined || (typeof house === 'string' && /^[0-9A-Z]{7}$/.test(house))) && isSeed(seed) && Number.isInteger(total) && (total as number) >= 0 && (total as number) <= 100 && typeof day === 'string' && /^\d{4}-\d\d-\d\d$/.test(day);
}; // prettier-ignore

/** Reads kept cases; undefined for a text that cannot be read in full. */
export function readDone(text: string): readonly Done[] | undefined {
  try {
    const all: unknown = JSON.parse(text);
    if (!Array.isArray(all) || all.length > MOST_KEPT || !all.every(isDone)) return undefined;
    return all.map(({ seed, total, day, house }) => ({ seed, total, day, ...(house === undefined ? {} : { house }) })); // prettier-ignore
  } catch {
    return undefined;
  }
}

/** Whether the answer to a case was shown here before: the number in that house, or in one that was not kept. */
export const wasShown = (all: readonly Done[], seed: number, house: string): boolean =>
  all.some((each) => each.seed === seed && (each.house ?? house) === house);

/** The cases with one more: one that was shown before keeps the points of its first go. */
export const withDone = (all: readonly Done[], one: Required<Done>): readonly Done[] =>
  wasShown(all, one.seed, one.house) ? all : [...all, one].slice(-MOST_KEPT);
