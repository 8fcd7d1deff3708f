// The choice to hold what is said against the reader's own house, and where the two part.
import { For, Show } from 'solid-js';
import { useHouse } from '../browser/house-store.ts';
import { disagreement, type HeldFigure } from '../talk/own-house.ts';
import { useAnnouncement } from './announce.ts';

/** How many figures are as a house has them, in a sentence. */
export function asAtHouse(found: readonly HeldFigure[], name: string): string {
  if (found.length === 0) return `Nothing said so far is a figure that ${name} has given.`;
  const asFar = found.some(({ isEstimate }) => isEstimate) ? ', as far as is known' : '';
  const alike = found.filter(({ agrees }) => agrees).length;
  const all = alike === found.length;
  return `${all ? `All ${alike}` : `${alike} of ${found.length}`} figures are as at ${name}${asFar}.`;
}

export function AgainstHouse(props: {
  readonly id: string;
  /** What was said, held against the house. */
  readonly found: readonly HeldFigure[];
  readonly held: boolean;
  readonly hold: (held: boolean) => void;
}) {
  const { name } = useHouse();
  const apart = () => props.found.filter(({ agrees }) => !agrees);
  let part: HTMLDivElement | undefined;
  useAnnouncement(
    'against-house',
    () => props.held,
    () => (props.held ? asAtHouse(props.found, name()) : ''),
    () => part,
  );
  return (
    <div class="against-house" ref={part}>
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
      <Show when={props.held}>
        <p>{asAtHouse(props.found, name())}</p>
        <Show when={apart().length > 0}>
          <h3>Not as at {name()}</h3>
          <ul class="sentences">
            <For each={apart()}>{(each) => <li>{disagreement(each, name())}</li>}</For>
          </ul>
        </Show>
      </Show>
    </div>
  );
}
