// The houses of the reader: name, copies, files and links.
import { createSignal, For, Show } from 'solid-js';
import { shown } from '../core/shown.ts';
import { builtInName } from '../house/figures.ts';
import { seenName } from '../house/name.ts';
import {
  copyHouse,
  dropHouse,
  loadHouse,
  openHouse,
  renameHouse,
  resetHouse,
  useHouse,
} from '../house/store.ts';
import { textOfFile } from './open-file.ts';
import { focusAfter } from './focus-after.ts';
import { saveFile } from './save-file.ts';
import { Troubles } from './Troubles.tsx';

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened; a house needs about 1,500

export default function HouseDesk() {
  const { name, shelf, text, link } = useHouse();
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal<string>();
  let saying: HTMLParagraphElement | undefined;
  const others = () => Object.keys(shelf()).filter((other) => other !== name());
  const fileName = () =>
    `${name()
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')}.house.json`;

  const save = () => {
    saveFile(fileName(), JSON.stringify(JSON.parse(text()), null, 2), 'application/json');
    setSaid(`${name()} is saved as ${fileName()}.`);
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_FILE, 'a house’s file');
    if ('problem' in read) return void setSaid(read.problem);
    const wrong = loadHouse(read.text);
    setSaid(
      wrong.length === 0
        ? `${name()} is open, from ${shown(file.name)}.`
        : `${shown(file.name)}: ${wrong.join(' ')}`,
    );
  };
  const share = async () => {
    const address = `${location.origin}${location.pathname}${link()}`;
    try {
      await navigator.clipboard.writeText(address);
      setSaid('The link is copied. It carries the figures themselves; nothing was sent anywhere.');
    } catch {
      history.replaceState(null, '', location.pathname);
      setSaid(`Copy this link: ${address}`);
    }
  };

  return (
    <section class="calculator house-desk" aria-labelledby="house-desk-title">
      <h2 id="house-desk-title">Name, files and other houses</h2>
      <Troubles />
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field" data-state={problem() ? 'wrong' : 'ok'}>
          <label for="house-name">Name of this house</label>
          <input
            id="house-name"
            class="words"
            type="text"
            maxlength="80"
            autocomplete="off"
            aria-invalid={problem() ? 'true' : 'false'}
            aria-describedby={problem() ? 'house-name-problem' : undefined}
            value={name()}
            onChange={(event) => setProblem(renameHouse(event.currentTarget.value))}
          />
          <Show when={problem()}>
            <p class="problem" id="house-name-problem" role="alert">
              {problem()}
            </p>
          </Show>
        </div>
        <div class="field">
          <label for="house-file">Open a house from a file</label>
          <input
            id="house-file"
            type="file"
            accept=".json,application/json"
            aria-describedby="house-desk-said"
            onChange={(event) => {
              void load(event.currentTarget.files?.[0]);
              event.currentTarget.value = '';
            }}
          />
        </div>
      </form>
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
        <button type="button" onClick={save}>
          Save to a file
        </button>{' '}
        <button type="button" onClick={() => void share()}>
          Copy a link to these figures
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
      <p role="status" id="house-desk-said" tabindex="-1" ref={saying}>
        {said()}
      </p>
      <Show when={others().length > 0}>
        <h3>Your other houses</h3>
        <ul class="shelf">
          <For each={others()}>
            {(other) => (
              <li>
                {seenName(other)}{' '}
                <button
                  type="button"
                  onClick={(event) => {
                    openHouse(other);
                    setSaid(`${name()} is open.`);
                    focusAfter(event, () => saying);
                  }}
                >
                  Open {seenName(other)}
                </button>{' '}
                <button
                  type="button"
                  onClick={(event) => {
                    dropHouse(other);
                    setSaid(`${seenName(other)} is removed.`);
                    focusAfter(event, () => saying);
                  }}
                >
                  Remove {seenName(other)}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
