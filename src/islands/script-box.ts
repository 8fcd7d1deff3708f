// The talk in its box: kept as it is typed, read once the typing rests, folded away once what was pasted is read.
import { createSignal, onMount } from 'solid-js';
import type { TalkRead } from './script-reading.worker.ts';
import { FIRST_TALK_NAME, keepTalk, keptTalk, LONGEST_TALK, type Talk } from './script-kept.ts';
import { keepQuoted, keptQuoted } from './script-quoted.ts';

const QUIET = 500; // ms without typing before the talk is read anew
const QUIET_SHORT = 250; // and before a few figures are
const AFTER_PASTE = 30; // ms, so that what was pasted is shown first
const PASTED = 60; // characters more at once than anybody types

/** The talk, its box and its fold. `read` is called when there is another text to read, `readNothing` when there is none. */
export function useTalkBox(does: {
  /** A whole talk, or a few figures, which have no name and are never folded away. */
  readonly isTalk: () => boolean;
  readonly read: () => void;
  readonly readNothing: () => void;
  /** What is brought into sight when the box is folded away. */
  readonly section: () => HTMLElement;
}) {
  const { isTalk } = does;
  const [talk, setTalk] = createSignal<Talk>({ name: FIRST_TALK_NAME, text: '', corrections: [] });
  const [length, setLength] = createSignal(0);
  const [isKept, setKept] = createSignal(true);
  const [isFolded, setFolded] = createSignal(false);
  let box: HTMLTextAreaElement | undefined;
  let fold: HTMLElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let folds = false; // once what was pasted is read

  /** Folds the box away and brings the verdict into sight. */
  const foldAway = () => {
    const hadFocus = document.activeElement === box;
    setFolded(true);
    if (hadFocus) fold?.focus({ preventScroll: true });
    if (does.section().getBoundingClientRect().top < 0) does.section().scrollIntoView();
  };
  /** Keeps the talk, and has it read; false when the browser does not keep it. */
  const take = (next: Talk): boolean => {
    const { text, corrections } = next;
    const isOther = text !== talk().text || corrections !== talk().corrections;
    setTalk(next);
    setKept(isTalk() ? keepTalk(next) : keepQuoted(next));
    if (text.trim() === '') does.readNothing();
    else if (isOther) does.read();
    return isKept();
  };
  /** Takes a talk that did not come through the box. */
  const open = (next: Talk): boolean => {
    if (next.text !== talk().text) {
      clearTimeout(timer);
      timer = undefined;
      box!.value = next.text;
      setLength(next.text.length);
      folds = isTalk();
      if (next.text.trim() === '') setFolded(false);
    }
    return take(next);
  };
  const readNow = () => {
    clearTimeout(timer);
    timer = undefined;
    setLength(box!.value.length);
    const text = box!.value.slice(0, LONGEST_TALK);
    if (text !== talk().text) take({ ...talk(), text });
  };
  const readSoon = () => {
    clearTimeout(timer);
    if (box!.value.length - talk().text.length > PASTED) {
      folds = isTalk();
      timer = setTimeout(readNow, AFTER_PASTE);
    } else timer = setTimeout(readNow, isTalk() ? QUIET : QUIET_SHORT);
  };
  /** The talk with what was typed last. */
  const now = () => {
    if (timer !== undefined) readNow();
    return talk();
  };
  onMount(() => {
    addEventListener('pagehide', now); // what was typed last is kept, too
    const before = isTalk() ? keptTalk() : keptQuoted();
    const early = box!.value; // typed before the script came
    if (before && before.text !== '') {
      box!.value = early === '' ? before.text : `${before.text}\n\n${early}`;
      setFolded(isTalk() && early === '');
    }
    if (before) setTalk({ ...before, text: '' });
    if (box!.value !== '') readNow();
  });

  return {
    talk,
    take,
    open,
    now,
    readSoon,
    /** Folds the box away where what was pasted has something in it. */
    foldPasted({ script }: TalkRead) {
      if (folds && script.quantities.length > 0) foldAway();
      folds = false;
    },
    /** Characters in the box, of which no more than `LONGEST_TALK` are read. */
    length,
    isKept,
    isFolded,
    setFolded,
    box: () => box,
    setBox: (element: HTMLTextAreaElement) => (box = element),
    setFold: (element: HTMLElement) => (fold = element),
  };
}
export type TalkBox = ReturnType<typeof useTalkBox>;
