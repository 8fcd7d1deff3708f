// Who gets which version of a sheet: a list of names to fill in or take from the class book, to print and to copy with the links.
import { createEffect, createSignal, For, on, Show } from 'solid-js';
import { amissInNames, handedOut, linesToSend, LONGEST_NAMES } from '../exercises/handed-out.ts';
import { keepNameList, keptNameList } from './handed-list.ts';
import { printPart } from './print-part.ts';

export interface HandOutProps {
  readonly title: string;
  /** By which the list is kept. */
  readonly mark: string;
  readonly versions: number;
  /** The whole address of each version, from the first; nothing, or a sentence, where there is none. */
  readonly links: () => Promise<readonly string[] | string | undefined>;
}

export function HandOut(props: HandOutProps) {
  const [names, setNames] = createSignal('');
  const [said, setSaid] = createSignal('');
  createEffect(on(() => props.mark, (mark) => setNames(keptNameList(mark) ?? names()))); // prettier-ignore
  const handed = () => handedOut(names(), props.versions);
  const change = (text: string) => {
    setNames(text);
    setSaid(keepNameList(props.mark, text) ? '' : 'This browser does not keep the list: print or copy it.'); // prettier-ignore
  };
  const fromClass = async () => {
    const [{ keptBook }, { peopleOf }] = await Promise.all([import('./class-kept.ts'), import('../exercises/class/book.ts')]); // prettier-ignore
    const trainees = peopleOf(keptBook().book).filter(({ role }) => role === 'trainee');
    if (trainees.length === 0) return void setSaid('No trainee stands in the class book of this browser.');
    change(trainees.map(({ name }) => name).join('\n'));
  };
  const copy = async () => {
    const links = await props.links();
    if (typeof links !== 'object') return void setSaid(links ?? 'The sheet is still being drawn; try again in a moment.'); // prettier-ignore
    keepNameList(props.mark, names()); // it may have been carried over from the sheet as it was
    const lines = linesToSend(handed(), (version) => links[version - 1]!);
    try {
      await navigator.clipboard.writeText(lines);
      setSaid('The list is copied, a line for each: the name and the link to their version.');
    } catch {
      setSaid('This browser does not let the list be copied.');
    }
  };
  return (
    <>
      <div class="field own-line screen-only">
        <label for="handed-names">Names, one a line: the first gets version 1</label>
        <textarea
          id="handed-names"
          rows="6"
          maxlength={LONGEST_NAMES}
          autocomplete="off"
          value={names()}
          onInput={(event) => change(event.currentTarget.value)}
        />
      </div>
      <p class="actions screen-only">
        <button type="button" onClick={() => void fromClass()}>
          Fill it in from the class book
        </button>
        <button type="button" disabled={handed().length === 0} onClick={() => void copy()}>
          Copy it with the links
        </button>
        <button
          type="button"
          disabled={handed().length === 0}
          onClick={() => {
            keepNameList(props.mark, names());
            printPart('handed-out');
          }}
        >
          Print it
        </button>
      </p>
      <p role="status">{said() || amissInNames(handed())}</p>
      <Show when={handed().length > 0}>
        <div class="handed-out">
          <table>
            <caption>
              {props.title} ({props.mark}): who has which version
            </caption>
            <thead>
              <tr>
                <th scope="col" class="number">
                  Version
                </th>
                <th scope="col">Name</th>
                <th scope="col">Handed in</th>
              </tr>
            </thead>
            <tbody>
              <For each={handed()}>
                {({ name, version }) => (
                  <tr>
                    <td class="number">{version ?? '–'}</td>
                    <th scope="row">{name}</th>
                    <td />
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </Show>
    </>
  );
}
