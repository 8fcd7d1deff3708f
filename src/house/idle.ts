// Work that may wait, one piece after another: what is in sight until the next frame is drawn, the rest until the browser has time; and all of it before a page is printed.

const LATEST = 250; // ms after which a piece is done even if the browser never had time

const [inSight, outOfSight] = [new Set<() => void>(), new Set<() => void>()];
/** Safari has no idle callbacks; there each piece gets a turn of its own. */
const whenFree: (run: (deadline?: IdleDeadline) => void) => unknown =
  'requestIdleCallback' in globalThis
    ? (run) => requestIdleCallback(run, { timeout: LATEST })
    : (run) => setTimeout(run, 1);

function run(deadline?: IdleDeadline): void {
  for (const work of outOfSight) {
    outOfSight.delete(work);
    work();
    if (!deadline || deadline.timeRemaining() <= 1) break;
  }
  if (outOfSight.size > 0) whenFree(run);
}

function runInSight(): void {
  const [work] = inSight;
  if (!work) return;
  inSight.delete(work);
  if (inSight.size > 0) setTimeout(runInSight);
  work();
}

/** Does a piece of work after the next frame when it is in sight, and when the browser has time when not. The same function, asked for again before that, is done once. */
export function whenIdle(work: () => void, isInSight = false): void {
  if (inSight.has(work)) return;
  if (isInSight) {
    outOfSight.delete(work);
    if (inSight.size === 0) requestAnimationFrame(() => setTimeout(runInSight));
    inSight.add(work);
  } else {
    if (outOfSight.size === 0) whenFree(run);
    outOfSight.add(work);
  }
}

if (typeof document !== 'undefined') {
  addEventListener('beforeprint', () => {
    for (const waiting of [inSight, outOfSight]) {
      for (const work of waiting) work();
      waiting.clear();
    }
  });
}
