// The house for an island that shows much of it: at once where the reader's hands are, once they rest elsewhere.
import { createEffect, createMemo, createSignal, on, onMount, untrack } from 'solid-js';
import { whenIdle } from '../browser/defer.ts';
import { lineOf } from '../house/line-of.ts';
import { lastTrial, useHouse } from '../browser/house-store.ts';
import type { House } from '../core/line/house.ts';

/** As `useHouse`, but an island without the focus waits until what has it has been drawn. */
export function useHouseWhenIdle(island: () => Element | undefined) {
  const whole = useHouse();
  const [house, setHouse] = createSignal(untrack(whole.house));
  const catchUp = () => void setHouse(untrack(whole.house));
  createEffect(
    on(whole.house, () => (island()?.contains(document.activeElement) ? catchUp() : whenIdle(catchUp)), {
      defer: true,
    }),
  );
  onMount(catchUp);
  /** The house as it was opened: another one when another is opened, the same while a figure of it is moved. */
  const opened = createMemo<House>(
    (before) => (untrack(lastTrial)?.after === house() ? before : house()),
    untrack(house),
  );
  return { ...whole, house, opened, line: () => lineOf(house()) };
}
