// Says what changed to those who hear the page: gathered until the reader rests, then said once, politely.
import { createEffect, on } from 'solid-js';

const REST = 700; // ms without a change: a drag or a number half typed says nothing yet

const waiting = new Map<string, () => string>();
let timer: ReturnType<typeof setTimeout> | undefined;

/** Says a sentence once nothing has changed for a moment; of several under one name only the last. */
export function announce(name: string, sentence: () => string): void {
  waiting.set(name, sentence);
  clearTimeout(timer);
  timer = setTimeout(() => {
    document.getElementById('announcer')!.textContent = [...waiting.values()]
      .map((say) => say())
      .filter(Boolean)
      .join(' ');
    waiting.clear();
  }, REST);
}

/** Says a sentence whenever it changes under the reader's hands: while the focus is on the page, or inside one part of it. */
export function useAnnouncement(
  name: string,
  changes: () => unknown,
  sentence: () => string,
  part: () => Element | undefined = () => undefined,
): void {
  createEffect(
    on(
      changes,
      () => {
        const at = document.activeElement;
        const isInUse = at !== null && at !== document.body && (part()?.contains(at) ?? true);
        if (isInUse) announce(name, sentence);
      },
      { defer: true },
    ),
  );
}
