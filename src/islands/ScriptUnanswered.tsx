// Questions that visitors will ask and a talk does not answer, behind a fold.
import { For, Show } from 'solid-js';
import type { UnansweredQuestion } from '../talk/unanswered.ts';

export function ScriptUnanswered(props: { readonly questions: readonly UnansweredQuestion[] }) {
  return (
    <Show when={props.questions.length > 0}>
      <details class="working">
        <summary>
          Questions that visitors will ask and the talk does not answer ({props.questions.length})
        </summary>
        <ul>
          <For each={props.questions}>
            {({ question, chapter, title }) => (
              <li>
                {question}{' '}
                <span class="on-screen">
                  (see <a href={`../${chapter}/`}>{title}</a>)
                </span>
              </li>
            )}
          </For>
        </ul>
      </details>
    </Show>
  );
}
