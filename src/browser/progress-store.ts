// The reader's practice, kept in this browser and nowhere else.
import { createSignal, onMount } from 'solid-js';
import { isServer } from 'solid-js/web';
import { keepAside, keepText, textsKeptAside, keptText, storageKey } from './browser-store.ts';
import {
  decodeProgress,
  encodeProgress,
  newsIn,
  noProgress,
  practised,
  type News,
  type Progress,
} from '../exercises/progress.ts';
import type { MarkVerdict } from '../exercises/verdict.ts';

const KEY = storageKey('practice');
const NEWS = storageKey('practice-news'); // what happened last in this browser, for its other tabs
const KEPT_ASIDE = storageKey('practice-kept-aside');
const NAME = storageKey('practice-name');
const SEED = storageKey('practice-seed');
const NOT_KEPT =
  'This browser does not let the handbook keep your practice; save it to a file before you close the page.';

const NOT_ASIDE =
  'There is no room to keep what is there aside, so it stays as it is and nothing is written over it.';
const NEWS_UNREAD =
  'Another tab told of practice in a way that cannot be read here; nothing was changed. If another build of the handbook is open, reload this page.';
const LONGEST_NAME = 60; // as the field has it

const [progress, setProgress] = createSignal<Progress>(noProgress);
const [troubles, setTroubles] = createSignal<readonly string[]>([]);
const [name, setName] = createSignal('');

let isHeld = false; // true while what is kept could neither be read in full nor kept aside: nothing is written over it

/** Reads what is kept; what it could not use is kept aside, word for word. What is no practice leaves that of this tab as it is. */
function readKept(text: string): Progress {
  const { progress: read, problems } = decodeProgress(text);
  isHeld = problems.length > 0 && !keepAside(KEPT_ASIDE, text);
  if (problems.length > 0) setTroubles(isHeld ? [...problems, NOT_ASIDE] : problems);
  return problems.length > 0 && read === noProgress ? progress() : read;
}

function put(next: Progress): void {
  setProgress(next);
  if (isHeld || !keepText(KEY, encodeProgress(next))) setTroubles([NOT_KEPT]);
}

/** Browsers tell other tabs only of a text that is new. */
const tellOtherTabs = (news: News) => keepText(NEWS, JSON.stringify({ ...news, new: Math.random() }));

/** Takes what happened in another tab. Both may have written at once, so an answer from there is written with those from here. */
function hear(news: News, theirs: string | null): void {
  if ('file' in news) return void (theirs !== null && setProgress(readKept(theirs)));
  setProgress(practised(progress(), ...news.answer));
  const kept = keptText(KEY);
  const text = encodeProgress(progress());
  if (
    kept !== text &&
    !isHeld &&
    (kept === null || decodeProgress(kept).progress.answers <= progress().answers)
  )
    keepText(KEY, text);
}

/** Adds an answer to what is kept, here and in the browser's other tabs. */
export function keepAnswer(kind: string, verdict: MarkVerdict, day: string): void {
  const next = practised(progress(), kind, verdict, day);
  if (next === progress()) return;
  put(next);
  tellOtherTabs({ answer: [kind, verdict, day] });
}

/** Opens practice from a file's text. A text that is none changes nothing. Returns what was wrong. */
export function loadProgress(text: string): readonly string[] {
  const reading = decodeProgress(text);
  if (reading.problems.length > 0 && reading.progress === noProgress) return reading.problems;
  const before = keptText(KEY);
  if (before !== null && !keepAside(KEPT_ASIDE, before)) return [NOT_ASIDE];
  isHeld = false;
  put(reading.progress);
  tellOtherTabs({ file: true });
  return reading.problems;
}

/** Keeps the name for the record sheet. */
export function changeName(next: string): void {
  setName(next);
  keepText(NAME, next);
}

let drawnBy: string | undefined;

/** What this browser draws its questions by: made once, by chance, so that two browsers ask with other numbers. */
export function practiceSeed(): string {
  const kept = drawnBy ?? keptText(SEED);
  if (kept !== null && /^[a-z0-9]{1,20}$/.test(kept)) return (drawnBy = kept);
  drawnBy = crypto.getRandomValues(new Uint32Array(1))[0]!.toString(36);
  keepText(SEED, drawnBy); // where that is forbidden, it lasts for this page
  return drawnBy;
}

/** What was kept aside: practice that could not be read whole, or that a file took the place of. */
export const practiceKeptAside = (): readonly string[] =>
  isServer ? [] : (progress(), textsKeptAside(KEPT_ASIDE)); // asked again whenever practice changes

if (!isServer) {
  const takeKept = () => {
    const kept = keptText(KEY);
    if (kept !== null) setProgress(readKept(kept));
  };
  takeKept();
  setName((keptText(NAME) ?? '').slice(0, LONGEST_NAME));
  let theirs: string | null = null; // practice as another tab last wrote it
  addEventListener('storage', ({ key, newValue }) => {
    if (newValue === null) return;
    if (key === KEY) {
      theirs = newValue;
      readKept(theirs); // what cannot be read in full is kept aside before anything is written over it
    }
    if (key !== NEWS) return;
    const news = newsIn(newValue);
    if (news) hear(news, theirs);
    else setTroubles([NEWS_UNREAD]);
  });
  addEventListener('pageshow', ({ persisted }) => persisted && takeKept());
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
