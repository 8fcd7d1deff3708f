// The working of a question, beside its answer, its steps numbered once: those of an order carry their own numbers, and the reason has none.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { isOrderQuestion, type Question } from '../exercises/question.ts';
import { workingBeside } from '../exercises/wording.ts';

export function Working(props: { readonly question: Question }) {
  const lines = () => (
    <For each={workingBeside(props.question)}>{(step) => <li>{keepTogether(step)}</li>}</For>
  );
  return (
    <Show when={isOrderQuestion(props.question)} fallback={<ol class="steps">{lines()}</ol>}>
      <ul class="steps lettered">{lines()}</ul>
    </Show>
  );
}
