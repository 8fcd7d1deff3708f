// What else is kept, by name, each to open or to remove; what is said of it then has the focus.
import { For, Show } from 'solid-js';
import { visibleName } from '../house/name.ts';
import { focusAfter } from './focus-after.ts';

export function Shelf(props: {
  readonly names: readonly string[];
  readonly open: (name: string) => void;
  readonly remove: (name: string) => void;
  /** Where it is said what came of it. */
  readonly saying: () => HTMLElement | undefined;
}) {
  return (
    <Show when={props.names.length > 0}>
      <ul class="shelf">
        <For each={props.names}>
          {(name) => (
            <li>
              <button
                type="button"
                onClick={(event) => {
                  props.open(name);
                  focusAfter(event, props.saying);
                }}
              >
                Open {visibleName(name)}
              </button>{' '}
              <button
                type="button"
                onClick={(event) => {
                  props.remove(name);
                  focusAfter(event, props.saying);
                }}
              >
                Remove {visibleName(name)}
              </button>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
