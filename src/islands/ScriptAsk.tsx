// What is not sure in a talk, asked one at a time: until it is answered it is not used.
import { createEffect, createSignal, For, on, Show } from 'solid-js';
import { labelOf } from '../talk/labels.ts';
import { NOT_OURS } from '../talk/settled.ts';
import { focusAfter } from './focus-after.ts';
import type { PutRight } from './script-corrections.ts';
import type { UnsureMark } from './script-taken.ts';

const AROUND = 70; // characters of the talk that are shown on either side

export const withSmallInitial = (label: string) => label[0]!.toLowerCase() + label.slice(1);

/** The words on one side of a quantity, cut at a space. */
function wordsBefore(text: string, at: number): string {
  const from = Math.max(0, at - AROUND);
  const words = text.slice(from, at).replace(/\s+/g, ' ');
  return from === 0 ? words : `…${words.slice(words.indexOf(' '))}`;
}
function wordsBehind(text: string, at: number): string {
  const words = text.slice(at, at + AROUND).replace(/\s+/g, ' ');
  return at + AROUND >= text.length ? words : `${words.slice(0, words.lastIndexOf(' '))} …`;
}

export function ScriptAsk(props: {
  readonly text: string;
  readonly unsure: readonly UnsureMark[];
  readonly settle: (place: UnsureMark, figure: PutRight) => void;
  /** Where the focus goes when there is nothing more to ask. */
  readonly after: () => HTMLElement | null | undefined;
}) {
  const [passed, setPassed] = createSignal(0);
  const count = () => props.unsure.length;
  const now = () => props.unsure[passed() % Math.max(1, count())];
  let part: HTMLDivElement | undefined;
  let answered: Event | undefined;
  const answer = (event: Event, figure: PutRight) => {
    answered = event;
    props.settle(now()!, figure);
  };
  createEffect(
    on(
      now,
      (next) => {
        if (answered) focusAfter(answered, () => (next ? part : props.after()));
        answered = undefined;
      },
      { defer: true },
    ),
  );
  const labels = () => now()!.choices.map((figure) => withSmallInitial(labelOf(figure)));
  const question = () => {
    const list = labels();
    const ends = list.length < 2 ? list.join('') : `${list.slice(0, -1).join(', ')}, or ${list.at(-1)}`;
    return `“${props.text.slice(now()!.start, now()!.end)}” – ${ends}?`;
  };
  return (
    <Show when={now()}>
      {(asked) => (
        <div class="script-ask" role="group" aria-labelledby="script-ask-title" tabindex="-1" ref={part}>
          <h3 id="script-ask-title">{question()}</h3>
          <p class="said">
            {wordsBefore(props.text, asked().start)}
            <b>{props.text.slice(asked().start, asked().end)}</b>
            {wordsBehind(props.text, asked().end)}
          </p>
          <p class="answers">
            <For each={asked().choices}>
              {(figure) => (
                <button type="button" onClick={(event) => answer(event, figure)}>
                  {labelOf(figure)}
                </button>
              )}
            </For>
            <button type="button" onClick={(event) => answer(event, NOT_OURS)}>
              {['No', 'Neither'][asked().choices.length - 1] ?? 'None of these'}
            </button>
            <Show when={count() > 1}>
              <button type="button" class="quiet" onClick={() => setPassed(passed() + 1)}>
                Later ({count() - 1} more)
              </button>
            </Show>
          </p>
        </div>
      )}
    </Show>
  );
}
