// Opens what was handed on: says who signed it, whether that is the same as before, and which release it is.
import { createSignal, Show } from 'solid-js';
import { BIGGEST_FILE } from '../handing/envelope.ts';
import { openFile, type OpenedFile } from '../handing/open-file.ts';
import { problemsOfParts } from '../house/parts/index.ts';
import { loadHouse } from '../browser/shelf-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { focusAfter } from './focus-after.ts';
import type { HandedOn } from './HandedOn.tsx';
import { TextFileField } from './TextFileField.tsx';

const NOT_HERE =
  'The part of this page that opens a release did not come, so nothing was changed. Load the page again.';

export function HandOnOpen() {
  const { name } = useHouse();
  const [found, setFound] = createSignal<
    Extract<OpenedFile, { signed: unknown }> & { readonly as: typeof HandedOn }
  >();
  const [said, setSaid] = createSignal<string>();
  const [undo, setUndo] = createSignal<() => string>();
  let saying: HTMLParagraphElement | undefined;

  const say = (sentence?: string) => {
    setFound(undefined);
    setUndo(undefined);
    setSaid(sentence);
  };
  const open = async (text: string, file: string) => {
    say();
    const what = await openFile(text);
    if ('signed' in what) {
      const part = await import('./HandedOn.tsx').catch(() => undefined); // what puts a release together is fetched for one alone
      return void (part ? setFound({ ...what, as: part.HandedOn }) : setSaid(NOT_HERE));
    }
    if ('problem' in what) return void setSaid(`${file}: ${what.problem} Nothing was changed here.`);
    const wrong = loadHouse(what.plain, problemsOfParts);
    setSaid(
      wrong.length === 0
        ? `${name()} is open, from ${file}. Nobody has signed it.`
        : `${file}: ${wrong.join(' ')}`,
    );
  };
  return (
    <section class="calculator hand-on" aria-labelledby="hand-on-open">
      <h2 id="hand-on-open">Open a house from a file</h2>
      <TextFileField
        id="house-file"
        label="A file, signed or not"
        most={BIGGEST_FILE}
        what="what is handed on"
        saidBy="hand-on-open-said"
        take={open}
        tell={say}
      />
      <Show when={found()} keyed>
        {(now) => (
          <now.as
            signed={now.signed}
            digits={now.digits}
            done={(event, sentence, back) => {
              setFound(undefined);
              setUndo(() => back);
              setSaid(sentence);
              focusAfter(event, () => saying);
            }}
          />
        )}
      </Show>
      <p role="status" id="hand-on-open-said" tabindex="-1" ref={saying}>
        {said()}
      </p>
      <Show when={undo()}>
        {(back) => (
          <p class="actions">
            <button
              type="button"
              onClick={(event) => {
                setSaid(back()());
                setUndo(undefined);
                focusAfter(event, () => saying);
              }}
            >
              Undo
            </button>
          </p>
        )}
      </Show>
    </section>
  );
}
