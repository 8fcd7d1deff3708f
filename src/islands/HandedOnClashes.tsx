// What the reader and the release both changed, each otherwise: he chooses, one by one.
import { For, Show } from 'solid-js';
import { labelOf, type Clash } from '../handing/merge.ts';

export function HandedOnClashes(props: {
  readonly clashes: readonly Clash[];
  readonly release: number;
  /** What the reader keeps as he has it; the rest is the release's. */
  readonly keeps: readonly string[];
  readonly choose: (keeps: readonly string[]) => void;
}) {
  const without = (what: string) => props.keeps.filter((each) => each !== what);
  return (
    <Show when={props.clashes.length > 0}>
      <p>You and the release have both changed these. Choose which holds:</p>
      <For each={props.clashes}>
        {({ what, was, yours, theirs }) => (
          <fieldset>
            <legend>
              {labelOf(what)}
              {was && `, was ${was}`}
            </legend>
            <label class="tick">
              <input
                type="radio"
                name={`clash-${what}`}
                checked={!props.keeps.includes(what)}
                onChange={() => props.choose(without(what))}
              />
              <span>
                Release {props.release}: {theirs}
              </span>
            </label>
            <label class="tick">
              <input
                type="radio"
                name={`clash-${what}`}
                checked={props.keeps.includes(what)}
                onChange={() => props.choose([...without(what), what])}
              />
              <span>Yours: {yours}</span>
            </label>
          </fieldset>
        )}
      </For>
    </Show>
  );
}
