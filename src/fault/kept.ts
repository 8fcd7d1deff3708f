// The cases that were answered, as text: the last answer to each number, and strictly read.
import { isSeed } from '../shift/seed.ts';

export interface Done {
  readonly seed: number;
  readonly total: number;
  readonly day: string;
}
export const MOST_KEPT = 200; // cases; the oldest go first

const isDone = (each: unknown): each is Done => {
  if (typeof each !== 'object' || each === null) return false;
  const { seed, total, day } = each as Record<string, unknown>;
  return isSeed(seed) && Number.isInteger(total) && (total as number) >= 0 && (total as number) <= 100 && typeof day === 'string' && /^\d{4}-\d\d-\d\d$/.test(day);
}; // prettier-ignore

/** Reads kept cases; undefined for a text that cannot be read in full. */
export function readDone(text: string): readonly Done[] | undefined {
  try {
    const all: unknown = JSON.parse(text);
    if (!Array.isArray(all) || all.length > MOST_KEPT || !all.every(isDone)) return undefined;
    return all.map(({ seed, total, day }) => ({ seed, total, day }));
  } catch {
    return undefined;
  }
}

/** The cases with one more: a number that comes again takes the place of its last answer. */
export const withDone = (all: readonly Done[], one: Done): readonly Done[] =>
  [...all.filter(({ seed }) => seed !== one.seed), one].slice(-MOST_KEPT);
