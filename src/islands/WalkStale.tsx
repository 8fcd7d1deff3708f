// Sentences of a walk that no longer hold since the house changed: what judges and lists them comes once a walk has figures.
import { createComponent, createEffect, createSignal, Show, type Component } from 'solid-js';
import type { At } from '../walk/change.ts';
import type { Piece, Walk } from '../walk/walk.ts';

export interface StaleProps {
  readonly walk: Walk;
  /** Puts a piece as it has become in the place of one. */
  readonly put: (at: At, piece: Partial<Piece>) => void;
  /** Takes the walk with a sentence left as it is, or to be asked again. */
  readonly leave: (walk: Walk, says: string) => void;
}

export function WalkStale(props: StaleProps & { readonly isReady: boolean }) {
  const [Part, setPart] = createSignal<Component<StaleProps>>();
  const hasFigures = () =>
    props.walk.rooms.some(({ pieces }) => pieces.some(({ figures }) => figures.length > 0));
  createEffect(() => {
    if (!props.isReady || !hasFigures() || Part()) return;
    import('./WalkStaleOpen.tsx').then(
      (come) => setPart(() => come.WalkStaleOpen),
      () => undefined, // without it a walk is as good, and its sentences stay
    );
  });
  return <Show when={props.isReady && Part()}>{(part) => createComponent(part(), props)}</Show>;
}
