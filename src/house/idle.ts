// Work that may wait: done one piece after another when the browser has time, and all of it before a page is printed.

const LATEST = 250; // ms after which a piece is done even if the browser never had time

const [inSight, outOfSight] = [new Set<() => void>(), new Set<() => void>()];
/** Safari has no idle callbacks; there each piece gets a turn of its own. */
const whenFree: (run: (deadline?: IdleDeadline) => void) => unknown =
  'requestIdleCallback' in globalThis
    ? (run) => requestIdleCallback(run, { timeout: LATEST })
    : (run) => setTimeout(run, 1);

function run(deadline?: IdleDeadline): void {
  for (const waiting of [inSight, outOfSight])
    for (const work of waiting) {
      waiting.delete(work);
      work();
      if (!deadline || deadline.timeRemaining() <= 1) {
        if (inSight.size + outOfSight.size > 0) whenFree(run);
        return;
      }
    }
}

/** Does a piece of work when the browser has time, what is in sight first. The same function, asked for again before that, is done once. */
export function whenIdle(work: () => void, isInSight = false): void {
  if (inSight.size + outOfSight.size === 0) whenFree(run);
  outOfSight.delete(work);
  if (isInSight) inSight.add(work);
  else if (!inSight.has(work)) outOfSight.add(work);
}

if (typeof document !== 'undefined') {
  addEventListener('beforeprint', () => {
    for (const waiting of [inSight, outOfSight]) {
      for (const work of waiting) work();
      waiting.clear();
    }
  });
}
