// What was read, done and signed on the path, in this browser.
import { createSignal } from 'solid-js';
import { isServer } from 'solid-js/web';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { decodeTicks, encodeTicks, type Ticks } from '../path/text.ts';

const KEY = storageKey('first-weeks');
const ASIDE = storageKey('first-weeks-kept-aside');

function kept(): Ticks {
  const text = isServer ? null : keptText(KEY);
  if (text === null) return {};
  const read = decodeTicks(text);
  isHeld = !read && !keepAside(ASIDE, text);
  return read ?? {};
}
let isHeld = false; // what stands there could neither be read nor set aside
const [ticks, setTicks] = createSignal<Ticks>(kept());
const [isKept, setKept] = createSignal(true);
const [times, setTimes] = createSignal(0);
/** Changes whenever what is kept may have been changed elsewhere: in another tab, or before this page came back out of memory. */
export const readAgain = times;
if (!isServer) {
  const again = () => {
    setTicks(kept());
    setTimes(times() + 1);
  };
  addEventListener('storage', again);
  addEventListener('pageshow', ({ persisted }) => persisted && again());
}

export { ticks, isKept };

/** Marks a step as done on a day, or takes the mark away. */
export function markStep(id: string, day: string | undefined): void {
  const { [id]: _, ...others } = ticks();
  const next = day === undefined ? others : { ...others, [id]: day };
  setTicks(next);
  setKept(!isHeld && keepText(KEY, encodeTicks(next)));
}
