// Options or steps of a question, each behind its letter.
import { For } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { letter } from '../exercises/letters.ts';

export function Lettered(props: { readonly of: readonly string[] }) {
  return (
    <ul class="lettered">
      <For each={props.of}>
        {(text, i) => (
          <li>
            <b>{letter(i())}</b> {keepTogether(text)}
          </li>
        )}
      </For>
    </ul>
  );
}
