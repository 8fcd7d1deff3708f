// The houses of the reader: copies, and those on the shelf.
import { createSignal, For, Show } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { visibleName } from '../house/name.ts';
import { resetHouse } from '../browser/change-figure.ts';
import { copyHouse, dropHouse, openHouse } from '../browser/shelf-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { focusAfter } from './focus-after.ts';

export default function HouseDesk() {
  const { name, shelf } = useHouse();
  const [said, setSaid] = createSignal<string>();
  let saying: HTMLParagraphElement | undefined;
  const others = () => Object.keys(shelf()).filter((other) => other !== name());

  return (
    <section class="calculator house-desk" aria-labelledby="house-desk-title">
      <h2 id="house-desk-title">Copies and other houses</h2>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            copyHouse();
            setSaid(`${name()} is open: work on this copy; the first stays as it is.`);
          }}
        >
          Work on a copy
        </button>{' '}
        <button
          type="button"
          onClick={() => {
            resetHouse();
            setSaid(`Every figure is ${builtInName}’s again.`);
          }}
        >
          Put all figures back to {builtInName}’s
        </button>
      </p>
      <p>
        To send it, save it to a file or open one: <a href="hand-on/">Hand your house on</a>.
      </p>
      <p role="status" tabindex="-1" ref={saying}>
        {said()}
      </p>
      <Show when={others().length > 0}>
        <h3>Your other houses</h3>
        <ul class="shelf">
          <For each={others()}>
            {(other) => (
              <li>
                {visibleName(other)}{' '}
                <button
                  type="button"
                  onClick={(event) => {
                    openHouse(other);
                    setSaid(`${name()} is open.`);
                    focusAfter(event, () => saying);
                  }}
                >
                  Open {visibleName(other)}
                </button>{' '}
                <button
                  type="button"
                  onClick={(event) => {
                    dropHouse(other);
                    setSaid(`${visibleName(other)} is removed.`);
                    focusAfter(event, () => saying);
                  }}
                >
                  Remove {visibleName(other)}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
