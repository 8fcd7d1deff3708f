// A question between two passages: answered, marked and worked in place, and kept with the answers of practice.
import { createSignal, Show } from 'solid-js';
import { drawQuestion } from '../exercises/draw.ts';
import { keepAnswer, practiceSeed } from '../browser/progress-store.ts';
import type { QuestionKind } from '../exercises/question.ts';
import type { Mark } from '../exercises/verdict.ts';
import { asInBook } from '../house/line-of.ts';
import { useHouse } from '../browser/house-store.ts';
import { fetchMarker } from './fetched-marker.ts';
import { MarkView } from './MarkView.tsx';
import { SecondTry } from './SecondTry.tsx';
import { QuestionView } from './QuestionView.tsx';
import { today } from './today.ts';

export function AskedView(props: { readonly kind: QuestionKind }) {
  const { kind } = props; // what was opened does not change
  const id = `ask-${kind.id}`;
  const { house } = useHouse();
  const [turn, setTurn] = createSignal(0); // how often it was asked, so that each time has other numbers
  const drawn = () =>
    drawQuestion(kind, `in the text/${practiceSeed()}/${today()}/${turn()}`, asInBook(house()));
  const [question, setQuestion] = createSignal(drawn());
  const [answer, setAnswer] = createSignal('');
  const [mark, setMark] = createSignal<Mark>();
  const [isFinal, setFinal] = createSignal(false);
  let again: HTMLButtonElement | undefined;
  const field = () => document.getElementById(`${id}-answer`);
  const isSecondTry = () => mark()?.verdict === 'wrong' && !isFinal();

  function finish(): void {
    setFinal(true);
    queueMicrotask(() => again?.focus());
  }
  async function handIn(event: Event): Promise<void> {
    event.preventDefault();
    const asked = question();
    if (!asked || isFinal()) return;
    const marks = await fetchMarker();
    if (!marks || question() !== asked) return;
    const isFirst = !isSecondTry();
    const result = marks(asked, answer());
    setMark(result);
    if (result.verdict === 'unanswered' || result.verdict === 'unreadable') return;
    if (isFirst) keepAnswer(kind.id, result.verdict, today()); // the first answer counts, as in practice
    if (isFirst && result.verdict === 'wrong') return void queueMicrotask(() => field()?.focus());
    finish();
  }
  function askAgain(): void {
    setTurn(turn() + 1);
    setAnswer('');
    setMark(undefined);
    setFinal(false);
    setQuestion(drawn());
    queueMicrotask(() => field()?.focus());
  }
  return (
    <Show when={question()} fallback={<p>With this house’s figures there is no such question.</p>}>
      {(asked) => (
        <form class="predict-in asking" autocomplete="off" onSubmit={(event) => void handIn(event)}>
          <Show when={asked()} keyed>
            {(each) => (
              <QuestionView
                question={each}
                id={`${id}-answer`}
                answer={answer()}
                onAnswer={setAnswer}
                done={isFinal()}
                problem={mark() && !isFinal() ? `${id}-mark` : undefined}
              />
            )}
          </Show>
          <div id={`${id}-mark`} aria-live="polite">
            <Show when={mark()}>
              {(result) => <MarkView question={asked()} mark={result()} done={isFinal()} />}
            </Show>
            <Show when={isSecondTry()}>
              <SecondTry question={asked()} />
            </Show>
          </div>
          <p class="actions">
            <Show
              when={isFinal()}
              fallback={
                <>
                  <button type="submit">{isSecondTry() ? 'Mark my second answer' : 'Mark my answer'}</button>{' '}
                  <Show when={isSecondTry()}>
                    <button type="button" onClick={finish}>
                      Show the answer
                    </button>
                  </Show>
                </>
              }
            >
              <button type="button" ref={again} onClick={askAgain}>
                Another, with other numbers
              </button>
            </Show>
          </p>
        </form>
      )}
    </Show>
  );
}
