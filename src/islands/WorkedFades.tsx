// One kind of question worked through, with less help each time: all of the working, all but its end, none.
import { createSignal, For, Match, Show, Switch } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { drawQuestion } from '../exercises/draw.ts';
import { fadings, stepsBefore } from '../exercises/fading.ts';
import { keepAnswer, practiceSeed } from '../browser/progress-store.ts';
import type { Question, QuestionKind } from '../exercises/question.ts';
import type { Mark } from '../exercises/verdict.ts';
import { answerInWords } from '../exercises/wording.ts';
import { asInBook } from '../house/line-of.ts';
import { useHouse } from '../browser/house-store.ts';
import { fetchMarker } from './fetched-marker.ts';
import { MarkView } from './MarkView.tsx';
import { QuestionView } from './QuestionView.tsx';
import { today } from './today.ts';
import { Working } from './Working.tsx';

export default function WorkedFades(props: {
  readonly kind: string;
  /** The kind, once it has come. */
  readonly fetched: QuestionKind;
  readonly onDone: () => void;
}) {
  const { house } = useHouse();
  const [turn, setTurn] = createSignal(0); // how often an example was begun, so that each has other numbers
  const [fade, setFade] = createSignal(0);
  const [answer, setAnswer] = createSignal('');
  const [mark, setMark] = createSignal<Mark>();
  const drawn = (): Question | undefined =>
    drawQuestion(props.fetched, `worked/${practiceSeed()}/${today()}/${turn()}`, asInBook(house()));
  const [question, setQuestion] = createSignal(drawn());
  const isDone = () => mark() !== undefined && !['unanswered', 'unreadable'].includes(mark()!.verdict);

  function go(to: number): void {
    setTurn(turn() + 1);
    setFade(to);
    setAnswer('');
    setMark(undefined);
    setQuestion(drawn());
    queueMicrotask(() => document.getElementById('worked-title')?.focus());
  }
  async function handIn(event: Event): Promise<void> {
    event.preventDefault();
    const asked = question();
    if (!asked || isDone()) return;
    const marks = await fetchMarker();
    if (!marks) return;
    const result = marks(asked, answer());
    setMark(result);
    if (fadings[fade()] !== 'question alone' || !isDone()) return;
    keepAnswer(props.kind, result.verdict, today());
    if (result.verdict === 'right') props.onDone();
  }
  return (
    <Show when={question()} fallback={<p>With this house’s figures there is no such question.</p>}>
      {(asked) => (
        <form autocomplete="off" onSubmit={(event) => void handIn(event)}>
          <h3 id="worked-title" tabindex="-1">
            {fade() + 1} of {fadings.length}:{' '}
            {['with all of the working', 'the last step is yours', 'on your own'][fade()]}
          </h3>
          <Switch>
            <Match when={fadings[fade()] === 'whole'}>
              <p class="prompt">{keepTogether(asked().prompt)}</p>
              <Working question={asked()} />
              <p>
                The answer: <b>{answerInWords(asked())}</b>
              </p>
              <p class="actions">
                <button type="button" onClick={() => go(1)}>
                  Next: the last step is yours
                </button>
              </p>
            </Match>
            <Match when={true}>
              <Show when={asked()} keyed>
                {(each) => (
                  <QuestionView
                    question={each}
                    id="worked-answer"
                    answer={answer()}
                    onAnswer={setAnswer}
                    done={isDone()}
                    problem={mark() && !isDone() ? 'worked-mark' : undefined}
                  />
                )}
              </Show>
              <Show when={fadings[fade()] === 'last step missing' && !isDone()}>
                <ol class="steps">
                  <For each={stepsBefore(asked())}>{(step) => <li>{keepTogether(step)}</li>}</For>
                  <li>…</li>
                </ol>
              </Show>
              <div id="worked-mark" aria-live="polite">
                <Show when={mark()}>
                  {(result) => <MarkView question={asked()} mark={result()} done={isDone()} />}
                </Show>
              </div>
              <p class="actions">
                <Show when={isDone()} fallback={<button type="submit">Mark my answer</button>}>
                  <Show
                    when={mark()!.verdict === 'right'}
                    fallback={
                      <button type="button" onClick={() => go(Math.max(0, fade() - 1))}>
                        Again, with more of the working
                      </button>
                    }
                  >
                    <Show
                      when={fade() < fadings.length - 1}
                      fallback={
                        <button type="button" onClick={() => go(2)}>
                          Another
                        </button>
                      }
                    >
                      <button type="button" onClick={() => go(fade() + 1)}>
                        Next: on your own
                      </button>
                    </Show>
                  </Show>
                </Show>
              </p>
            </Match>
          </Switch>
        </form>
      )}
    </Show>
  );
}
