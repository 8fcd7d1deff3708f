// What stands under a first answer that was not right: a hint, and that there is one more try.
import { Show } from 'solid-js';
import { hintOf } from '../exercises/hint.ts';
import type { Question } from '../exercises/question.ts';

export function SecondTry(props: { readonly question: Question }) {
  return (
    <p class="hint">
      <Show when={hintOf(props.question)}>{(hint) => <>Hint: {hint()}. </>}</Show>
      Try once more; the first answer is the one that is kept.
    </p>
  );
}
