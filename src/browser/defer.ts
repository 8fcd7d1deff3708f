// Work that may wait until the hand that moves a figure rests, one piece after another, each in a task of its own; and all of it before a page is printed.

const REST = 60; // ms without another call until it begins: a key that is held repeats every 33 ms

const waiting = new Set<() => void>();
let timer: ReturnType<typeof setTimeout> | undefined;

function begin(): void {
  const [work] = waiting;
  if (!work) return;
  waiting.delete(work);
  timer = setTimeout(begin);
  work();
}

/** Does a piece of work once the hand rests. The same function, asked for again before that, is done once. */
export function whenIdle(work: () => void): void {
  waiting.add(work);
  clearTimeout(timer);
  timer = setTimeout(begin, REST);
}

/** Does a piece of work after the next frame: the page is seen first. */
export const afterFrame = (work: () => void): void => void requestAnimationFrame(() => setTimeout(work));

if (typeof document !== 'undefined') {
  addEventListener('beforeprint', () => {
    clearTimeout(timer);
    for (const work of waiting) work();
    waiting.clear();
  });
}
