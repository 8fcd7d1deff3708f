// Work that may wait until the hand that moves a figure rests, one piece after another: what is in sight first, the rest when the browser has time; and all of it before a page is printed.

const LATEST = 250; // ms after which a piece is done even if the browser never had time
const REST = 60; // ms without another call until it begins: a key that is held repeats every 33 ms

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

let timer: ReturnType<typeof setTimeout> | undefined;

function begin(): void {
  timer = undefined;
  const [work] = inSight;
  if (!work) return void (outOfSight.size > 0 && whenFree(run));
  inSight.delete(work);
  timer = setTimeout(begin);
  work();
}

/** Does a piece of work once the hand rests: at once when it is in sight, and when the browser has time when not. The same function, asked for again before that, is done once. */
export function whenIdle(work: () => void, isInSight = false): void {
  if (isInSight) outOfSight.delete(work);
  if (!inSight.has(work)) (isInSight ? inSight : outOfSight).add(work);
  clearTimeout(timer);
  timer = setTimeout(begin, REST);
}

/** Does a piece of work after the next frame: the page is seen first. */
export const afterFrame = (work: () => void): void => void requestAnimationFrame(() => setTimeout(work));

if (typeof document !== 'undefined') {
  addEventListener('beforeprint', () => {
    clearTimeout(timer);
    for (const waiting of [inSight, outOfSight]) {
      for (const work of waiting) work();
      waiting.clear();
    }
  });
}
