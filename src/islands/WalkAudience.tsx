// Who is coming, and in whose units the walk is said: chosen in a part that is fetched when it is opened, or when somebody is chosen.
import { createComponent, createEffect, createMemo, createSignal, Show, type Component } from 'solid-js';
import type { Piece, Walk } from '../walk/walk.ts';
import type { useCardWords } from './walk-card-words.ts';

export interface AudienceProps {
  readonly walk: Walk;
  /** What a card says of a figure. */
  readonly said: typeof useCardWords;
  /** Takes the walk for others, or said otherwise; `says` what was done. */
  readonly choose: (walk: Walk, says: string) => void;
  /** Puts a piece at the end of a room. */
  readonly add: (room: number, piece: Piece) => void;
  /** Keeps the walk as it is and opens this copy of it; what is wrong where there is no room for both. */
  readonly copy: (walk: Walk, says: string) => string | undefined;
}

export function WalkAudience(props: AudienceProps) {
  const [Part, setPart] = createSignal<Component<AudienceProps>>();
  const [isOpen, setOpen] = createSignal(false);
  const [hasFailed, setFailed] = createSignal(false);
  const open = () => {
    setOpen(true);
    setFailed(false);
    import('./WalkAudienceOpen.tsx').then(
      (come) => setPart(() => come.WalkAudienceOpen),
      () => setFailed(true),
    );
  };
  const isChosen = createMemo(() => (props.walk.coming ?? props.walk.saidIn) !== undefined);
  createEffect(() => isChosen() && open());
  return (
    <section class="calculator walk-audience" aria-labelledby="walk-audience-title">
      <h2 id="walk-audience-title" tabindex="-1">
        Who is coming
      </h2>
      <p class="actions">
        <button type="button" aria-expanded={isOpen()} onClick={() => (isOpen() ? setOpen(false) : open())}>
          {isOpen() ? 'Close' : 'Children, a chemist, US visitors …'}
        </button>
      </p>
      <div role="status">
        <Show when={hasFailed()}>
          <p class="problem">This part could not be fetched; the walk is as good without it.</p>
        </Show>
      </div>
      <Show when={isOpen() && Part()}>{(part) => createComponent(part(), props)}</Show>
    </section>
  );
}
