// Which sheets are touched by what changed: those that the book prints of the house, and one whose link is pasted.
import { createResource, createSignal, For, Show } from 'solid-js';
import type { HouseChanges } from '../house/changes.ts';
import type { HouseVersion } from '../house/parts/dates.ts';
import { useAnnouncement } from './announce.ts';

const LONGEST = 70_000; // characters of an address that are looked at
const NOT_COME = 'The part of this page that reads a sheet’s link did not come; load the page again.';

export function ChangesSheets(props: {
  readonly name: string;
  readonly to: HouseVersion;
  readonly versions: readonly HouseVersion[];
  readonly touched: HouseChanges;
}) {
  const [link, setLink] = createSignal('');
  const [pasted] = createResource(
    () => link().trim() !== '' && ([link(), props.to] as const),
    async ([text, to]) => {
      const come = await import('../exercises/sheet-touched.ts').catch(() => undefined);
      return come?.sheetTouched(text.slice(0, LONGEST), props.name, to.figures, props.versions).says ?? NOT_COME;
    },
  );
  useAnnouncement('changes-sheet', () => pasted.latest, () => pasted.latest ?? '');
  const printed = (): readonly (readonly [href: string, text: string])[] => {
    const { given, counted, computed, cards } = props.touched;
    const any = given.length + counted.length + computed.length > 0;
    return [
      ...(cards.length > 0 ? [['../../cards/', 'Pocket cards'] as const] : []),
      ...(any ? [['../', 'The sheet of every figure'] as const] : []),
      ...(given.length > 0 ? [['../../sheets/', `Exercise sheets with ${props.name}’s figures`] as const] : []),
    ];
  };
  return (
    <div class="touched">
      <h3>What to make again</h3>
      <Show when={printed().length > 0} fallback={<p>Nothing: what was printed still holds.</p>}>
        <ul>
          <For each={printed()}>{([href, text]) => <li><a href={href}>{text}</a></li>}</For>
        </ul>
      </Show>
      <div class="field codes">
        <label for="changes-sheet">Is a sheet touched? Paste its link</label>
        <input
          id="changes-sheet"
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={link()}
          onInput={(event) => setLink(event.currentTarget.value)}
        />
      </div>
      <Show when={link().trim() !== '' && pasted.latest}>
        <p class="remark">{pasted.latest}</p>
      </Show>
    </div>
  );
} // prettier-ignore
