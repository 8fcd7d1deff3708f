// The question that is being practised: asked, answered, marked at once and once more after a wrong first answer.
import { createSignal } from 'solid-js';
import { keepAnswer, practiceSeed } from '../browser/progress-store.ts';
import { whenIdle } from '../browser/defer.ts';
import { fetchKinds, ifHere } from '../exercises/kinds/fetched-kinds.ts';
import { nextKindToPractise, nextQuestionToPractise, type PracticeSitting } from '../exercises/practise.ts';
import type { Question, QuestionKind } from '../exercises/question.ts';
import type { Mark } from '../exercises/verdict.ts';
import { fetchMarker } from './fetched-marker.ts';
import { today } from './today.ts';
import { drawnOrLost } from './use-kinds.ts';

/** Asks from a `pool` of kinds, by the reader's progress and the house of the page. `toAnswer` and `toGoOn` move the focus where it is needed next. */
export function usePracticeQuestion(of: {
  readonly pool: () => readonly QuestionKind[];
  readonly reader: () => Pick<PracticeSitting, 'progress' | 'house'>;
  readonly toAnswer: () => void;
  readonly toGoOn: () => void;
}) {
  const [question, setQuestion] = createSignal<Question>();
  const [answer, setAnswer] = createSignal('');
  const [marked, setMarked] = createSignal<Mark>();
  const [isDone, setDone] = createSignal(false);
  const [isComing, setComing] = createSignal(true);
  const isSecondTry = () => marked()?.verdict === 'wrong' && !isDone();

  let asked: readonly Question[] = []; // since the page was opened
  const sitting = () => ({ ...of.reader(), day: today(), seed: practiceSeed(), asked });
  function ask(next: Question | undefined): void {
    if (next) asked = [...asked, next];
    setQuestion(next);
  }
  /** Fetches the kind that will most likely be asked next, while the reader is at this one. */
  function fetchFollowing(): void {
    const following = nextKindToPractise(of.pool(), sitting());
    if (following !== undefined) fetchKinds([following]).catch(() => undefined); // it is told when it is asked for
  }
  let turn = 0;
  /** Asks the next question: at once when its kind is here, and else when that has come. */
  async function next(): Promise<void> {
    const own = ++turn;
    setAnswer('');
    setMarked(undefined);
    setDone(false);
    const atOnce = ifHere(() => nextQuestionToPractise(of.pool(), sitting()));
    setComing(!atOnce);
    ask(atOnce?.done);
    if (!atOnce) {
      const later = await drawnOrLost(() => ({ question: nextQuestionToPractise(of.pool(), sitting()) }));
      if (!later || own !== turn) return; // something else was chosen meanwhile
      ask(later.question);
      setComing(false);
    }
    whenIdle(fetchFollowing);
  }
  /** Shows the answer and its working. */
  function finish(): void {
    setDone(true);
    queueMicrotask(of.toGoOn);
  }
  async function handIn(): Promise<void> {
    const asked = question();
    if (!asked || isDone()) return;
    const given = answer();
    const mark = await fetchMarker();
    if (!mark || question() !== asked || isDone()) return;
    const result = mark(asked, given);
    const isFirst = !isSecondTry();
    setMarked(result);
    if (result.verdict === 'unanswered' || result.verdict === 'unreadable') return;
    if (isFirst) keepAnswer(asked.kind, result.verdict, today()); // the first answer counts
    if (isFirst && result.verdict === 'wrong') return void queueMicrotask(of.toAnswer);
    finish();
  }
  return { question, answer, setAnswer, marked, isDone, isComing, isSecondTry, next, finish, handIn };
}
