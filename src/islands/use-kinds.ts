// The kinds of question in an island, which come after it.
import { createSignal, onMount } from 'solid-js';
import { fetchKinds } from '../exercises/kinds/later.ts';
import type { QuestionKind } from '../exercises/question.ts';
import { whenIdle } from '../house/idle.ts';
import { liveLine } from '../house/store.ts';

/** The kinds of question; when they do not come, nothing, and the page says that a part of it is missing. */
export async function kindsOrLost(): Promise<readonly QuestionKind[] | undefined> {
  try {
    return await fetchKinds();
  } catch {
    document.documentElement.dataset['script'] = 'lost';
    return undefined;
  }
}

/** The kinds of question once they are here, after which `whenHere` is called. */
export function useKinds(whenHere: () => void) {
  const [kinds, setKinds] = createSignal<readonly QuestionKind[]>();
  const fetchAll = async () => {
    const all = await kindsOrLost();
    if (!all) return;
    setKinds(all);
    whenIdle(() => void liveLine(), true); // of which most questions speak
    whenIdle(whenHere, true);
  };
  onMount(() => whenIdle(() => void fetchAll(), true)); // the page comes alive first
  return kinds;
}
