// Figures that are told twice and not alike, behind a fold, with the way to each place.
import { For, Show } from 'solid-js';
import { labelOf } from '../talk/labels.ts';
import { openMark } from './ScriptMarked.tsx';
import type { TalkRead } from './script-reading.worker.ts';

export function ScriptTwice(props: { readonly read: TalkRead }) {
  const words = (place: number) =>
    props.read.script.quantities.find(({ start }) => start === place)?.text ?? '';
  const summary = () => {
    const [first, ...rest] = props.read.twice;
    return rest.length === 0
      ? `${labelOf(first!.figure)} is told twice, and not alike`
      : `${rest.length + 1} figures are told twice, and not alike`;
  };
  return (
    <Show when={props.read.twice.length > 0}>
      <details class="script-twice">
        <summary>{summary()}</summary>
        <ul>
          <For each={props.read.twice}>
            {({ figure, places }) => (
              <li>
                <span>{labelOf(figure)}</span>
                <For each={places}>
                  {(place) => (
                    <button type="button" onClick={() => openMark(place)}>
                      {words(place)}
                    </button>
                  )}
                </For>
              </li>
            )}
          </For>
        </ul>
      </details>
    </Show>
  );
}
