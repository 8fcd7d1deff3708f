// The working of a question, its steps numbered once: those of an order carry their own numbers, and the reason has none.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { isOrderQuestion, type Question } from '../exercises/question.ts';

export function Working(props: { readonly question: Question }) {
  const lines = () => <For each={props.question.working}>{(step) => <li>{keepTogether(step)}</li>}</For>;
  return (
    <Show when={isOrderQuestion(props.question)} fallback={<ol class="steps">{lines()}</ol>}>
      <ul class="steps lettered">{lines()}</ul>
    </Show>
  );
}
