// The house for an island that takes part of the page's work: in sight it follows at once, out of sight when the browser has time.
import { batch, createEffect, createSignal, on, onCleanup, onMount, untrack } from 'solid-js';
import { whenIdle } from '../house/idle.ts';
import { lineOf, useHouse } from '../house/store.ts';

const NEAR = '100px'; // before it comes into sight

/** What `source` gives: as it is now while the island is in sight, and a moment later while it is not. */
function atHand<T>(island: () => Element | undefined, source: () => T): () => T {
  const [inSight, setInSight] = createSignal(true);
  const [rested, setRested] = createSignal(source());
  const catchUp = () => setRested(() => untrack(source));
  createEffect(on(source, () => whenIdle(catchUp), { defer: true }));
  onMount(() => {
    const watcher = new IntersectionObserver(
      (entries) =>
        batch(() => {
          catchUp();
          setInSight(entries.at(-1)!.isIntersecting);
        }),
      { rootMargin: NEAR },
    );
    watcher.observe(island()!);
    onCleanup(() => watcher.disconnect());
  });
  return () => (inSight() ? source() : rested());
}

/** As `useHouse`, for an island with sums or drawings of its own. */
export function useHouseAtHand(island: () => Element | undefined) {
  const whole = useHouse();
  const house = atHand(island, whole.house);
  return { ...whole, house, line: () => lineOf(house()) };
}
