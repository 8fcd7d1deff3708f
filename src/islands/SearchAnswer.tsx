// An answer on the search page: one breath, the sum below, what it rests on and its place in the book; or that nothing is known.
import { For, Show } from 'solid-js';
import type { Answer, NotKnown } from '../asking/answer-given.ts';
import { headOf } from '../core/figures/index.ts';
import { useHouse } from '../browser/house-store.ts';
import { liveCountedAt, useKnown } from '../browser/known-store.ts';
import { figureAt } from '../house/prose.ts';

export function SearchAnswer(props: {
  readonly found: Answer | NotKnown;
  /** Asks something else in its place. */
  readonly ask: (question: string) => void;
}) {
  const { name } = useHouse();
  const { doubtAt } = useKnown();
  const known = () => (isAnswer(props.found) ? props.found : undefined);
  const entries = () => (isAnswer(props.found) ? (props.found.others ?? []) : props.found.nearest);
  const others = () => (
    <ul>
      <For each={entries()}>
        {(entry) => (
          <li>
            <button type="button" onClick={() => props.ask(asQuestion(entry.asked[0]!))}>
              {asQuestion(entry.asked[0]!)}
            </button>
          </li>
        )}
      </For>
    </ul>
  );
  /** What the house counted of the figures that an answer reckons: its own word beside the sum’s. */
  const counted = (answer: Answer) =>
    answer.paths.flatMap((path) => {
      const text = liveCountedAt(path);
      return text === undefined ? [] : [`${headOf(figureAt(path)!)} ${text}`];
    });
  /** What an answer rests on, where that is less than it seems. */
  const rests = (answer: Answer) => {
    const isEstimate = answer.paths.some((path) => doubtAt(path) !== undefined);
    const told = [
      isEstimate && `An estimate: not all that it hangs on is known of ${name()}`,
      answer.rests === 'common practice' && 'partly common practice, without a source',
      answer.rests === 'memory' && 'partly from memory, without a source',
    ].filter((each) => each !== false);
    const text = told.join('; ');
    return text === '' ? undefined : `${text[0]!.toUpperCase()}${text.slice(1)}.`;
  };
  /** One answer: what is meant, the breath, the sum, what it rests on and its place. */
  const told = (answer: Answer) => (
    <>
      <Show when={answer.meant}>
        {(meant) => <p class="meant">If you mean “{asQuestion(meant().asked[0]!)}”</p>}
      </Show>
      <Show when={answer.isLoose}>
        <p class="meant">I left a number of yours out; if that is what you ask:</p>
      </Show>
      <Show when={answer.isQuoted}>
        <p class="meant">I am not sure of that. The book says:</p>
      </Show>
      <p class="breath">{answer.says}</p>
      <Show when={answer.sum}>
        <p class="reckoned">{answer.sum}</p>
      </Show>
      <Show when={counted(answer).length > 0}>
        <p class="rests">
          As counted at {name()}, which reckons no further with it: {[...new Set(counted(answer))].join('; ')}
          .
        </p>
      </Show>
      <Show when={rests(answer)}>{(text) => <p class="rests">{text()}</p>}</Show>
      <p>
        <a href={`../${answer.at}`}>{answer.place}</a>
      </p>
    </>
  );
  return (
    <div class="answer">
      <Show
        when={known()}
        fallback={
          <>
            <p>
              I do not know that.
              <Show when={entries().length > 0}> The nearest that I could answer:</Show>
            </p>
            {others()}
          </>
        }
      >
        {(answer) => (
          <>
            {told(answer())}
            <For each={answer().also ?? []}>{(each) => told(each)}</For>
            <Show when={entries().length > 0}>
              <p class="meant">Or do you mean one of these?</p>
              {others()}
            </Show>
          </>
        )}
      </Show>
    </div>
  );
}

/** A way of asking as a sentence. */
export const asQuestion = (text: string) =>
  `${text[0]!.toUpperCase()}${text.slice(1)}${text.endsWith('?') ? '' : '?'}`;

/** True for an answer; kept here, so that the page need not carry what answers until a question is typed. */
const isAnswer = (found: Answer | NotKnown): found is Answer => !('nearest' in found);
