// Who is coming, and in whose units the walk is said: told in a line, and chosen in a part that is fetched when it is opened.
import { createSignal, Show, type Component } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { comers, leftOutFor, sayings } from '../walk/audience-kinds.ts';
import type { Piece, Walk } from '../walk/walk.ts';

export interface AudienceProps {
  readonly walk: Walk;
  /** Takes the walk for others, or said otherwise; `says` what was done. */
  readonly choose: (walk: Walk, says: string) => void;
  /** Puts a piece at the end of a room. */
  readonly add: (room: number, piece: Piece) => void;
  /** Keeps the walk as it is and opens this copy of it; what is wrong where there is no room for both. */
  readonly copy: (walk: Walk, says: string) => string | undefined;
}

export function WalkAudience(props: AudienceProps) {
  const [Open, setOpen] = createSignal<Component<AudienceProps>>();
  const [isOpen, setIsOpen] = createSignal(false);
  const [hasFailed, setFailed] = createSignal(false);
  const toggle = () => {
    setIsOpen(!isOpen());
    if (Open()) return;
    import('./WalkAudienceOpen.tsx')
      .then(({ WalkAudienceOpen }) => {
        setFailed(false);
        setOpen(() => WalkAudienceOpen);
      })
      .catch(() => setFailed(true));
  };
  const whom = () => (props.walk.coming ? comers[props.walk.coming] : 'Anybody');
  const how = () => (props.walk.saidIn ? sayings[props.walk.saidIn] : 'as you say them');
  return (
    <section class="calculator walk-audience" aria-labelledby="walk-audience-title">
      <h2 id="walk-audience-title">Who is coming</h2>
      <p>
        {whom()}. Figures: {how()}.{' '}
        {leftOutFor(
          props.walk.rooms.flatMap(({ pieces }) => pieces),
          props.walk.coming,
        )}
      </p>
      <p class="actions">
        <button type="button" aria-expanded={isOpen()} onClick={toggle}>
          {isOpen() ? 'Close' : 'Children, a chemist, US visitors …'}
        </button>
      </p>
      <div role="status">
        <Show when={hasFailed() && isOpen()}>
          <p class="problem">
            This part could not be fetched. The walk is as good without it; try again with a network.
          </p>
        </Show>
      </div>
      <Show when={isOpen() && Open()}>{(part) => <Dynamic component={part()} {...props} />}</Show>
    </section>
  );
}
