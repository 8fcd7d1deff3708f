// What a talk comes to: one sentence with the sum that decides, and all else that was found behind a fold.
import { createMemo, For, Show } from 'solid-js';
import type { Reconciliation } from '../core/line/reconcile.ts';
import { sentences } from '../core/line/verdict.ts';

/** The sentence that comes first, with the sum where it does not hold one, and the sentences that follow. */
export function verdictOf(found: Reconciliation): {
  readonly first: string;
  readonly more: readonly string[];
} {
  const [first = '', ...rest] = sentences(found);
  const sum = found.impossible.length > 0 ? undefined : rest.find((each) => isSum(each, found));
  return {
    first: sum === undefined ? first : `${first} ${sum}`,
    more: rest.filter((each) => each !== sum),
  };
}
const isSum = (sentence: string, { decides }: Reconciliation) =>
  sentence.startsWith('The sum:') || (decides !== undefined && sentence.startsWith(decides.says));

export function ScriptVerdict(props: {
  readonly of: Reconciliation;
  /** How the talk goes with the reader’s own house, where it is held against it. */
  readonly held: string;
}) {
  const verdict = createMemo(() => verdictOf(props.of));
  return (
    <div class="script-verdict">
      <p>
        {verdict().first}
        <Show when={props.held !== ''}> {props.held}</Show>
      </p>
      <Show when={verdict().more.length > 0}>
        <details>
          <summary>
            {verdict().more.length === 1
              ? 'One more finding'
              : `${verdict().more.length} more findings, with their sums`}
          </summary>
          <ul class="sentences">
            <For each={verdict().more}>{(sentence) => <li>{sentence}</li>}</For>
          </ul>
        </details>
      </Show>
    </div>
  );
}
