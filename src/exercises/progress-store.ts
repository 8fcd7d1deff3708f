// The reader's practice, kept in this browser and nowhere else.
import { createSignal, onMount } from 'solid-js';
import { isServer } from 'solid-js/web';
import { keepText, keptText } from '../house/browser-store.ts';
import { decodeProgress, encodeProgress, noProgress, practised, type Progress } from './progress.ts';
import type { Verdict } from './mark.ts';

const KEY = 'malt-spirit-handbook/practice';
const KEPT_ASIDE = 'malt-spirit-handbook/practice-kept-aside';
const NAME = 'malt-spirit-handbook/practice-name';
const NOT_KEPT =
  'This browser does not let the handbook keep your practice; save it to a file before you close the page.';

const [progress, setProgress] = createSignal<Progress>(noProgress);
const [troubles, setTroubles] = createSignal<readonly string[]>([]);
const [name, setName] = createSignal('');

/** Takes a text as the practice; what it could not use is kept aside, word for word. */
function take(text: string): readonly string[] {
  const reading = decodeProgress(text);
  setProgress(reading.progress);
  if (reading.problems.length > 0) keepText(KEPT_ASIDE, text);
  setTroubles(reading.problems);
  return reading.problems;
}

function put(next: Progress): void {
  setProgress(next);
  if (!keepText(KEY, encodeProgress(next))) setTroubles([NOT_KEPT]);
}

/** Adds an answer to what is kept now, which another tab may have changed. */
export function answered(kind: string, verdict: Verdict, day: string): void {
  const kept = keptText(KEY);
  const now = kept === null ? progress() : decodeProgress(kept).progress;
  put(practised(now.log.length >= progress().log.length ? now : progress(), kind, verdict, day));
}

/** Opens practice from a file's text. A text that is none changes nothing. Returns what was wrong. */
export function loadProgress(text: string): readonly string[] {
  const reading = decodeProgress(text);
  if (reading.problems.length > 0 && reading.progress === noProgress) return reading.problems;
  const before = keptText(KEY);
  if (before !== null) keepText(KEPT_ASIDE, before);
  put(reading.progress);
  return reading.problems;
}

/** Keeps the name for the record sheet. */
export function changeName(next: string): void {
  setName(next);
  keepText(NAME, next);
}

/** What was kept aside: practice that could not be read whole, or that a file took the place of. */
export const practiceKeptAside = (): string | null => (isServer ? null : keptText(KEPT_ASIDE));

if (!isServer) {
  const kept = keptText(KEY);
  if (kept !== null) take(kept);
  setName(keptText(NAME) ?? '');
  addEventListener('storage', ({ key, newValue }) => {
    if (key === KEY && newValue !== null) take(newValue);
  });
}

/** Practice inside an island; empty until the island is mounted, as the page was built. */
export function useProgress() {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  return {
    mounted,
    progress: () => (mounted() ? progress() : noProgress),
    troubles: () => (mounted() ? troubles() : []),
    name: () => (mounted() ? name() : ''),
    text: () => encodeProgress(progress()),
  };
}
