// What went wrong in keeping or reading the house, and the text that was kept aside.
import { For, Show } from 'solid-js';
import { housesKeptAside, useHouse } from '../browser/house-store.ts';

export function Troubles() {
  const { troubles } = useHouse();
  return (
    <Show when={troubles().length > 0}>
      <div class="troubles" role="status">
        <For each={troubles()}>{(trouble) => <p>{trouble}</p>}</For>
        <For each={housesKeptAside()}>
          {(text, i) => (
            <p>
              <a
                download={`figures-kept-aside${i() === 0 ? '' : `-${i() + 1}`}.txt`}
                href={URL.createObjectURL(new Blob([text], { type: 'text/plain' }))}
              >
                Download the text that was set aside{i() === 0 ? '' : `, ${i() + 1}`}
              </a>
            </p>
          )}
        </For>
      </div>
    </Show>
  );
}
