// Work that may wait: done one piece after another when the browser has time, and all of it before a page is printed.

const LATEST = 250; // ms after which a piece is done even if the browser never had time

const waiting = new Set<() => void>();
/** Safari has no idle callbacks; there each piece gets a turn of its own. */
const whenFree: (run: (deadline?: IdleDeadline) => void) => unknown =
  'requestIdleCallback' in globalThis
    ? (run) => requestIdleCallback(run, { timeout: LATEST })
    : (run) => setTimeout(run, 1);

function run(deadline?: IdleDeadline): void {
  for (const work of waiting) {
    waiting.delete(work);
    work();
    if (!deadline || deadline.timeRemaining() <= 1) break;
  }
  if (waiting.size > 0) whenFree(run);
}

/** Does a piece of work when the browser has time. The same function, asked for again before that, is done once. */
export function whenIdle(work: () => void): void {
  if (waiting.size === 0) whenFree(run);
  waiting.add(work);
}

if (typeof document !== 'undefined') {
  addEventListener('beforeprint', () => {
    for (const work of waiting) work();
    waiting.clear();
  });
}
