// What a talk comes to, in one sentence, and all else that was found behind a fold.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import type { TalkVerdict } from './script-verdict.ts';

export function ScriptVerdict(props: {
  readonly of: TalkVerdict;
  /** How the talk goes with the reader’s own house, where it is held against it. */
  readonly held: string;
}) {
  return (
    <div class="script-verdict">
      <p>
        {keepTogether(props.of.first)}
        <Show when={props.held !== ''}> {keepTogether(props.held)}</Show>
      </p>
      <Show when={props.of.more.length > 0}>
        <details>
          <summary>
            {props.of.more.length === 1
              ? 'One more finding'
              : `${props.of.more.length} more findings, with their sums`}
          </summary>
          <ul class="sentences">
            <For each={props.of.more}>{(sentence) => <li>{keepTogether(sentence)}</li>}</For>
          </ul>
        </details>
      </Show>
    </div>
  );
}
