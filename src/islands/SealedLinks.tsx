// A sheet that is sealed, with the links and the file that are handed out.
import { For, Show } from 'solid-js';
import { onlyVersion, sealedText, type SealedSheet } from '../exercises/sealed/sealed-sheet.ts';
import { copyAddress } from './copy-address.ts';
import { fileNameOf } from './file-name.ts';
import { HandOutFold } from './HandOutFold.tsx';
import { saveFile } from './save-file.ts';
import { isSealedLinkTooLong, LONG_LINK, sealedLink } from './sealed-address.ts';
import { dateInWords } from './today.ts';

/** A sealed sheet with its links: one to all of its versions, and one to each. */
export interface SealedLinked {
  readonly sealed: SealedSheet;
  readonly day: string;
  readonly all: string;
  readonly ones: readonly string[];
  /** Where it stands with its answers, where the key opens it. */
  readonly desk?: string;
}
export async function linksOfSealed(sealed: SealedSheet): Promise<Pick<SealedLinked, 'all' | 'ones'>> {
  return {
    all: await sealedLink(sealed),
    ones: await Promise.all(sealed.versions.map(({ version }) => sealedLink(onlyVersion(sealed, version)))),
  };
}

const addressOf = (link: string) => `${location.origin}${location.pathname.replace(/sheets\/sealed\/$/, 'sheet/sealed/')}${link}`; // prettier-ignore

export function SealedLinks(props: { readonly of: SealedLinked; readonly say: (sentence: string) => void }) {
  const now = () => props.of;
  const copy = async (link: string, what: string) => {
    if (isSealedLinkTooLong(link)) return props.say(`${what} would have ${link.length} characters, too many for a link: save the sheet to a file, which the trainee opens.`); // prettier-ignore
    const address = addressOf(link);
    const long = address.length > LONG_LINK ? ' Some programs cut links as long as this: send one version each, or the file.' : ''; // prettier-ignore
    props.say(await copyAddress(address, `${what} is copied, ${address.length} characters.${long}`));
  };
  return (
    <>
      <p>
        “{now().sealed.title}”, sealed on {dateInWords(now().day)}: {now().sealed.versions.length}{' '}
        {now().sealed.versions.length === 1 ? 'version' : 'versions'}
        {now().sealed.minutes > 0 ? `, ${now().sealed.minutes} minutes` : ', no time limit'}. A link to all
        has {addressOf(now().all).length} characters, a link to one at most{' '}
        {addressOf(now().ones.reduce((a, b) => (a.length > b.length ? a : b))).length}.{' '}
        <Show when={now().desk}>
          {(desk) => (
            <>
              <a href={`../../${desk()}`}>See it with its answers</a>: that address is not sealed, so give it
              to nobody.
            </>
          )}
        </Show>
      </p>
      <p class="actions">
        <button type="button" onClick={() => void copy(now().all, 'The link to all versions')}>
          Copy the link to all versions
        </button>
        <button
          type="button"
          onClick={() => {
            const file = fileNameOf(now().sealed.title, 'sealed');
            saveFile(file, sealedText(now().sealed), 'application/json');
            props.say(`The sealed sheet is saved as ${file}.`);
          }}
        >
          Save the sealed sheet to a file
        </button>
        <For each={now().ones}>
          {(link, i) => (
            <button type="button" onClick={() => void copy(link, `The link to version ${i() + 1}`)}>
              Version {i() + 1}
            </button>
          )}
        </For>
      </p>
      <HandOutFold
        isReady
        title={now().sealed.title}
        mark={now().sealed.id}
        versions={now().ones.length}
        links={() =>
          Promise.resolve(
            now().ones.some(isSealedLinkTooLong)
              ? 'A version is too long for a link: save the sheet to a file, which the trainees open.'
              : now().ones.map(addressOf),
          )
        }
      />
    </>
  );
}
