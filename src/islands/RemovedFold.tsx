// What was removed and can be had back, behind a fold: one button each.
import { For, Show } from 'solid-js';
import { visibleName } from '../house/name.ts';
import { focusAfter } from './focus-after.ts';

export function RemovedFold(props: {
  /** “houses”, as the fold is headed. */
  readonly what: string;
  readonly names: readonly string[];
  readonly putBack: (name: string) => void;
  /** Where it is said what came of it. */
  readonly saying: () => HTMLElement | undefined;
}) {
  return (
    <Show when={props.names.length > 0}>
      <details class="removed">
        <summary>
          Removed {props.what} ({props.names.length})
        </summary>
        <ul class="shelf">
          <For each={props.names}>
            {(name) => (
              <li>
                <button
                  type="button"
                  onClick={(event) => {
                    props.putBack(name);
                    focusAfter(event, props.saying);
                  }}
                >
                  Put {visibleName(name)} back
                </button>
              </li>
            )}
          </For>
        </ul>
      </details>
    </Show>
  );
}
