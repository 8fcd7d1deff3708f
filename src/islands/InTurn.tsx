// A part of an island that is drawn in a task of its own, after what stands before it: a slow phone answers in between.
import { createSignal, onMount, Show, type JSX } from 'solid-js';
import { nextTask } from '../house/next-task.ts';

/** For what is drawn only in the browser; until then a hidden mark stands in its place. */
export function InTurn(props: { readonly children: JSX.Element }) {
  const [isDue, setDue] = createSignal(false);
  onMount(() => void nextTask().then(() => setDue(true)));
  return (
    <Show when={isDue()} fallback={<span hidden aria-busy="true" />}>
      {props.children}
    </Show>
  );
}
