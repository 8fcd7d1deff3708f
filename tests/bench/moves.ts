// Notes in a page what each move of a control costs until it is seen.
import type { Page } from '@playwright/test';

/**
 * What a move costs, ms: to take it in, from its first event to the end of its last handler; and the frame that shows it,
 * from its beginning to after its paint. A pointer's move is taken in by the frame itself, so all that lies between counts.
 */
export type Cost = readonly [taken: number, frame: number];

/** What TypeScript’s own library does not know yet: tasks with a priority (WICG, Prioritized Task Scheduling). */
interface Scheduling {
  readonly scheduler: {
    postTask(task: () => unknown, options: { readonly priority: 'user-blocking' }): Promise<unknown>;
  };
}
interface Noted {
  readonly moves: Cost[];
}

function noteMoves(): void {
  const moves: Cost[] = [];
  Object.assign(globalThis, { moves });
  let begun: number | undefined; // of the move that no frame has shown yet
  let handled = 0;
  const begin = ({ type }: Event) => {
    if (begun !== undefined) return;
    const first = (begun = performance.now());
    requestAnimationFrame(() => {
      const frame = performance.now();
      const taken = (type === 'pointermove' ? frame : handled) - first;
      begun = undefined;
      // Right after the paint, before anything else that waits.
      const note = () => moves.push([taken, performance.now() - frame]);
      void (globalThis as unknown as Scheduling).scheduler.postTask(note, { priority: 'user-blocking' });
    });
  };
  for (const event of ['keydown', 'pointermove']) addEventListener(event, begin, true);
  // A slider moves after its key or its pointer, by an event of its own.
  for (const event of ['keydown', 'pointermove', 'input'])
    addEventListener(event, () => (handled = performance.now()));
}

/** Notes the moves of a page from its next opening on. */
export async function watchMoves(page: Page): Promise<void> {
  await page.addInitScript(noteMoves);
}

/** What the moves since the last time cost. */
export function costs(page: Page): Promise<readonly Cost[]> {
  return page.evaluate(() => (globalThis as unknown as Noted).moves.splice(0));
}
