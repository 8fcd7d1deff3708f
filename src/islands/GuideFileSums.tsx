// The ten sums that a guide should be able to redo, one at a time: the question, a place to try, the working, and the calculator of each.
import { createMemo, createSignal, Show } from 'solid-js';
import { guideQuestions } from '../exercises/guide-sums.ts';
import type { Mark } from '../exercises/verdict.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { WorkedPart } from './GuideFileWorked.tsx';
import { useOnPaper } from './guide-file-walk.ts';
import { fetchMarker } from './fetched-marker.ts';
import { MarkView } from './MarkView.tsx';
import { QuestionView } from './QuestionView.tsx';
import { Working } from './Working.tsx';

const LOST = 'A part of this page’s script did not come. Load the page again.';

export default function GuideFileSums(props: { readonly titles: Readonly<Record<string, string>> }) {
  let part: HTMLDivElement | undefined;
  const { line, name } = useHouse();
  const isOnPaper = useOnPaper();
  const sums = createMemo(() => guideQuestions(line()));
  const [place, setPlace] = createSignal(0);
  const [answer, setAnswer] = createSignal('');
  const [mark, setMark] = createSignal<Mark>();
  const [problem, setProblem] = createSignal('');
  const [isShown, setShown] = createSignal(false);
  const at = () => Math.min(place(), sums().length - 1);
  const sum = () => sums()[at()];

  const check = async (event: Event) => {
    event.preventDefault();
    const now = sum();
    if (!now || mark() || isShown()) return;
    const marker = await fetchMarker();
    const found = marker?.(now.question, answer());
    if (!found) return void setProblem(LOST);
    if (found.verdict === 'unanswered' || found.verdict === 'unreadable') {
      setProblem(found.say);
      document.getElementById('guide-sum')?.focus();
      return;
    }
    setProblem('');
    setMark(found);
    focusAfter(event, () => document.querySelector<HTMLElement>('.redoing .next:not([disabled])'));
  };
  const go = (event: Event, by: number) => {
    setPlace(at() + by);
    setAnswer('');
    setMark(undefined);
    setProblem('');
    setShown(false);
    focusAfter(event, () => document.getElementById('guide-sum'));
  };
  useAnnouncement(
    'guide-sums',
    () => [mark(), problem(), isShown()],
    () => mark()?.say ?? (isShown() ? 'The working is shown.' : problem()),
    () => part,
  );

  return (
    <div class="guide-file" ref={part}>
      <Show when={sum()} fallback={<p>The figures of this house make none of the sums.</p>}>
        {(now) => (
          <section class="calculator redoing" aria-labelledby="redoing-title">
            <h2 id="redoing-title">{now().question.title}</h2>
            <p class="when">
              Sum {at() + 1} of {sums().length}
            </p>
            <form onSubmit={(event) => void check(event)}>
              <QuestionView
                question={now().question}
                id="guide-sum"
                answer={answer()}
                onAnswer={(text) => {
                  setProblem('');
                  setAnswer(text);
                }}
                done={mark() !== undefined || isShown()}
                problem={problem() ? 'guide-sum-problem' : undefined}
              />
              <p class="problem" id="guide-sum-problem" hidden={problem() === ''}>
                {problem()}
              </p>
              <Show when={!mark() && !isShown()}>
                <p class="actions">
                  <button type="submit">Check</button>
                  <button
                    type="button"
                    onClick={(event) => {
                      setProblem('');
                      setShown(true);
                      focusAfter(event, () => document.querySelector<HTMLElement>('.redoing .next:not([disabled])')); // prettier-ignore
                    }}
                  >
                    Show the working
                  </button>
                </p>
              </Show>
            </form>
            <Show when={mark()}>{(found) => <MarkView question={now().question} mark={found()} done />}</Show>
            <Show when={isShown()}>
              <Working question={now().question} />
            </Show>
            <p>
              Its calculator: <a href={`../../sums/${now().calculator}/`}>{props.titles[now().calculator]}</a>
            </p>
            <p class="actions">
              <button type="button" disabled={at() === 0} onClick={(event) => go(event, -1)}>
                Sum before
              </button>
              <button
                type="button"
                class="next"
                disabled={at() === sums().length - 1}
                onClick={(event) => go(event, 1)}
              >
                Next sum
              </button>
            </p>
          </section>
        )}
      </Show>
      <p class="meaning">
        Right is an answer within 1 %, or as near as its decimals say. The numbers are rounded as they stand.
      </p>
      <Show when={isOnPaper()}>
        <div class="guide-paper">
          <section>
            <h2>Ten sums: {name()}</h2>
            <WorkedPart />
          </section>
        </div>
      </Show>
    </div>
  );
}
