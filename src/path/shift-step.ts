// The shifts of the path: which step each is, and how an end of one is taken.
import { pathStages } from './stages.ts';
import { idOfStep } from './steps.ts';

const POOR = 60; // points of a hundred below which a shift is worth another try; a trainer's rule, without a source

/** What the end of a shift tells: its points of a hundred, and each part of them. */
export interface ShiftOver {
  readonly total: number;
  readonly rows: readonly { readonly name: string; readonly points: number; readonly of: number; readonly why: string }[]; // prettier-ignore
}

/** The id of the step that a shift's page is, by its address from the book's root; undefined where it is none. */
export function shiftStep(at: string): string | undefined {
  const steps = pathStages.flatMap(({ lessons }) => lessons.flatMap((lesson) => lesson.steps));
  const found = steps.find((step) => step.do === 'task' && step.at === at && at.startsWith('shift/'));
  return found && idOfStep(found);
}

/** The danger that happened in a shift, as it was told; a shift with one does not count. */
const dangerIn = ({ rows }: ShiftOver) => rows.find(({ points }) => points < 0);

/** Whether a shift counts as done: it was run to its end, and nothing happened that could have hurt somebody. */
export const shiftCounts = (over: ShiftOver): boolean => dangerIn(over) === undefined;

/** What to try again after a poor shift or a dangerous one: the part that lost most of its points. Undefined after a fair one. */
export function tryAgain(over: ShiftOver): string | undefined {
  const { total, rows } = over;
  const danger = dangerIn(over);
  if (danger) return `This run does not count, for it could have hurt somebody. ${danger.why} Run it again.`;
  if (total >= POOR) return undefined;
  const lost = [...rows].sort((a, b) => b.of - b.points - (a.of - a.points))[0];
  if (!lost) return undefined;
  return `${total} of 100 is worth another try. Most was lost here: ${lost.name}. ${lost.why}`;
}
