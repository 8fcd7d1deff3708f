// The name of a room as a heading, one level below what stands above it.
import { Show } from 'solid-js';

export function RoomName(props: { readonly under: 'h2' | 'h3'; readonly name: string }) {
  return (
    <Show when={props.under === 'h2'} fallback={<h3>{props.name}</h3>}>
      <h2>{props.name}</h2>
    </Show>
  );
}
