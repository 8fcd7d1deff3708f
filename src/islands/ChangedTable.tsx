// What changed, from what to what: the first rows, and the rest folded.
import { For, Show } from 'solid-js';
import type { ChangedText } from '../house/changes.ts';

const FIRST = 6;
/** Between a unit of several words a line may end: three columns stand on a telephone. */
const narrow = (text: string) => text.replace(/\u00a0(?=[a-z]{4})/g, ' ');

export function ChangedTable(props: { readonly title: string; readonly rows: readonly ChangedText[] }) {
  return (
    <Show when={props.rows.length > 0}>
      <div class="changed">
        <Rows title={props.title} rows={props.rows.slice(0, FIRST)} />
        <Show when={props.rows.length > FIRST}>
          <details>
            <summary>{props.rows.length - FIRST} more</summary>
            <Rows title={`${props.title}, the rest`} rows={props.rows.slice(FIRST)} isRest />
          </details>
        </Show>
      </div>
    </Show>
  );
}

function Rows(props: { readonly title: string; readonly rows: readonly ChangedText[]; readonly isRest?: boolean }) {
  return (
    <table class="series">
      <caption classList={{ 'visually-hidden': props.isRest === true }}>{props.title}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col" class="number">was</th>
          <th scope="col" class="number">is</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {({ what, was, now }) => (
            <tr>
              <th scope="row">{what}</th>
              <td class="number">{narrow(was)}</td>
              <td class="number">{narrow(now)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
} // prettier-ignore
