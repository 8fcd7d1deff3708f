// What was read in a talk last, as each part of the page shows it: one part after another, so that the page answers between them.
import { createSignal } from 'solid-js';
import { inTurns } from './in-turns.ts';
import type { TalkRead } from './script-reading.worker.ts';

/** A talk in which there is nothing to read. */
export const NOTHING_READ: TalkRead = {
  text: '',
  corrections: [],
  asksAll: false,
  script: { quantities: [], left: 0 },
  open: [],
  taken: {},
  putRight: [],
  because: {},
  unsure: [],
  twice: [],
  quoted: {},
  answer: undefined,
  verdict: undefined,
};

/** What was read, for each part by its name, and `show`, which hands all of them another reading: the verdict first, then what is done `afterVerdict`. */
export function useReadParts(afterVerdict: (read: TalkRead) => void) {
  const [verdict, setVerdict] = createSignal(NOTHING_READ);
  const [asked, setAsked] = createSignal(NOTHING_READ);
  const [house, setHouse] = createSignal(NOTHING_READ);
  const [marks, setMarks] = createSignal(NOTHING_READ);
  const [follows, setFollows] = createSignal(NOTHING_READ);
  const [card, setCard] = createSignal(NOTHING_READ);
  const [questions, setQuestions] = createSignal(NOTHING_READ);
  const turns = inTurns();
  const show = (read: TalkRead) =>
    turns([
      () => void setVerdict(read),
      () => afterVerdict(read),
      ...[setAsked, setHouse, setMarks, setFollows, setCard, setQuestions].map((set) => () => void set(read)),
    ]);
  return { verdict, asked, house, marks, follows, card, questions, show };
}
