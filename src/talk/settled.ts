// What a reader settled a quantity of a script to be, by its place in the text, and how that survives an edit elsewhere.
import type { TalkFigureId } from './figures.ts';

export const NOT_OURS = 'not ours';
/** Where nothing was settled, the proposal stands. */
export type SettledMarks = Readonly<Record<number, TalkFigureId | typeof NOT_OURS>>;

/** How many characters two texts share at their beginning. */
function shared(a: string, b: string, most: number, at: (text: string, i: number) => string): number {
  let n = 0;
  while (n < most && at(a, n) === at(b, n)) n++;
  return n;
}

/** What was settled in a text, moved to where it stands in a later one; what was settled where the text itself changed is given up. */
export function moveSettled(settled: SettledMarks, before: string, after: string): SettledMarks {
  const most = Math.min(before.length, after.length);
  const head = shared(before, after, most, (text, i) => text[i]!);
  const tail = shared(before, after, most - head, (text, i) => text[text.length - 1 - i]!);
  return Object.fromEntries(
    Object.entries(settled).flatMap(([place, figure]) => {
      const start = Number(place);
      if (start < head) return [[start, figure]];
      return start >= before.length - tail ? [[start + after.length - before.length, figure]] : [];
    }),
  );
}
