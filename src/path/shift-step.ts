// The shifts of the path: which step each is, and how an end of one is taken.
import { path } from './stages.ts';
import { idOfStep } from './steps.ts';

const POOR = 60; // points of a hundred below which a shift is worth another try; a trainer's rule, without a source

/** What the end of a shift tells: its points of a hundred, and each part of them. */
export interface ShiftOver {
  readonly total: number;
  readonly rows: readonly { readonly name: string; readonly points: number; readonly of: number; readonly why: string }[]; // prettier-ignore
}

/** The id of the step that a shift's page is, by its address from the book's root; undefined where it is none. */
export function shiftStep(at: string): string | undefined {
  const steps = path.flatMap(({ lessons }) => lessons.flatMap((lesson) => lesson.steps));
  const found = steps.find((step) => step.do === 'task' && step.at === at && at.startsWith('shift/'));
  return found && idOfStep(found);
}

/** What to try again after a poor shift: the part that lost most of its points. Undefined after a fair one. */
export function tryAgain({ total, rows }: ShiftOver): string | undefined {
  if (total >= POOR) return undefined;
  const lost = [...rows].sort((a, b) => b.of - b.points - (a.of - a.points))[0];
  if (!lost) return undefined;
  return `${total} of 100 is worth another try. Most was lost here: ${lost.name}. ${lost.why}`;
}
