// The choice to hold what is said against the reader's own house, and where the two part.
import { createMemo, For, Show } from 'solid-js';
import { useKnown } from '../house/known-store.ts';
import { useHouse } from '../house/store.ts';
import { disagreement, heldAgainst, type SaidFigure } from '../talk/own-house.ts';

export function AgainstHouse(props: {
  readonly id: string;
  readonly said: readonly SaidFigure[];
  readonly held: boolean;
  readonly hold: (held: boolean) => void;
}) {
  const { line, name } = useHouse();
  const known = useKnown();
  const found = createMemo(() =>
    props.held ? props.said.flatMap((each) => heldAgainst(each, line(), known) ?? []) : [],
  );
  const apart = () => found().filter(({ agrees }) => !agrees);
  const asFar = () => (found().some(({ isEstimate }) => isEstimate) ? ', as far as is known' : '');
  const alike = () => found().length - apart().length;
  return (
    <div class="against-house">
      <label class="tick" for={props.id}>
        <input
          id={props.id}
          type="checkbox"
          autocomplete="off"
          checked={props.held}
          onChange={(event) => props.hold(event.currentTarget.checked)}
        />
        <span>Compare with {name()}</span>
      </label>
      <div aria-live="polite">
        <Show when={props.held}>
          <Show
            when={found().length > 0}
            fallback={<p>Nothing said so far is a figure that {name()} has given.</p>}
          >
            <Show when={apart().length > 0}>
              <h3>Not as at {name()}</h3>
              <ul class="sentences">
                <For each={apart()}>{(each) => <li>{disagreement(each, name())}</li>}</For>
              </ul>
            </Show>
            <p>
              {apart().length === 0
                ? `All ${found().length} figures are as at ${name()}${asFar()}.`
                : `${alike()} of ${found().length} figures are as at ${name()}${asFar()}.`}
            </p>
          </Show>
        </Show>
      </div>
    </div>
  );
}
