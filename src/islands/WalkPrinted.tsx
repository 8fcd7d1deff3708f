// Printed cards that the house has made stale: what holds them against it comes once a card has been printed.
import { createComponent, createSignal, onMount, Show, type Component } from 'solid-js';
import type { Walk } from '../walk/walk.ts';
import type { WalkQuestion } from './WalkDesk.tsx';

export interface PrintedProps {
  readonly walk: Walk;
  readonly questions: readonly WalkQuestion[];
  /** Prints the cards of rooms, by their numbers. */
  readonly print: (rooms: readonly number[]) => void;
  /** Takes the walk without a printed card; `says` what was done. */
  readonly drop: (walk: Walk, says: string) => void;
}

export function WalkPrinted(props: PrintedProps) {
  const [Part, setPart] = createSignal<Component<PrintedProps>>();
  const [hasFailed, setFailed] = createSignal(false);
  onMount(() =>
    import('./WalkPrintedOpen.tsx').then(
      (come) => setPart(() => come.WalkPrintedOpen),
      () => setFailed(true),
    ),
  );
  return (
    <>
      <Show when={hasFailed()}>
        <p class="problem">The printed cards could not be held against the house: reload the page.</p>
      </Show>
      <Show when={Part()}>{(part) => createComponent(part(), props)}</Show>
    </>
  );
}
