// A sheet from one screen to another: its link as a picture of code, and in a file that its trainer has signed.
import { createEffect, createSignal, lazy, on, Show } from 'solid-js';
import { fileNameOf } from './file-name.ts';
import type { Code } from './qr.ts';
import { saveFile } from './save-file.ts';
import { today } from './today.ts';

const mostThatFit = (most: number) =>
  most === 0
    ? 'Not even one version of these questions fits: choose fewer questions.'
    : `${most} ${most === 1 ? 'version of these questions fits' : 'versions of these questions fit'}: choose no more, or fewer questions.`;

const NOT_COME = 'A part of the book did not come; load the page again, and the sheet is as it was.';
const QrPicture = lazy(() => import('./QrPicture.tsx'));

export function SheetHandOn(props: {
  /** What the sheet is called: its mark. */
  readonly mark: string;
  readonly isReady: boolean;
  /** The end of its address, once it is made. */
  readonly link: () => Promise<string | undefined>;
  readonly versions: number;
  /** The end of the address of the same sheet with its first versions alone, once it is made. */
  readonly linkOfFirst: (versions: number) => string;
  readonly addressOf: (link: string) => string;
}) {
  const [code, setCode] = createSignal<Code>();
  const [said, setSaid] = createSignal('');
  const name = () => `Sheet ${props.mark}`;
  createEffect(on(() => props.mark, () => setCode(undefined))); // prettier-ignore

  const show = async () => {
    const link = await props.link();
    if (link === undefined) return;
    const address = props.addressOf(link);
    const [{ qrCodeOf, fitsPicture }] = await Promise.all([import('./qr.ts'), QrPicture.preload()]);
    const made = qrCodeOf(address);
    setCode(made);
    if (made) return void setSaid('');
    let most = props.versions - 1;
    while (most > 0 && !fitsPicture(props.addressOf(props.linkOfFirst(most)))) most--;
    setSaid(
      `The link has ${address.length} characters, too many for a picture that a phone reads. ${mostThatFit(most)} Or hand it on in a file.`,
    );
  };
  const save = async () => {
    const [
      { fileText },
      { keepKey, keptKey },
      { lastRelease, thingOf, withReleased },
      { canSign, signedRelease },
    ] = await Promise.all([
      import('../handing/envelope.ts'),
      import('../browser/handing-store.ts'),
      import('../handing/own-key.ts'),
      import('../handing/signing.ts'),
    ]);
    const { own } = keptKey();
    if (!own || !canSign())
      return void setSaid('You have no key in this browser: make one on the page “Hand your house on”.');
    const text = await props.link();
    if (text === undefined) return;
    const sheet = { kind: 'sheet', name: name(), text } as const;
    const release = lastRelease(own.released, thingOf(sheet)) + 1;
    const file = await signedRelease({ ...sheet, release, date: today(), signer: own.signer }, own.key);
    const saved = fileNameOf(name(), 'signed');
    saveFile(saved, fileText(file), 'application/json');
    keepKey(withReleased(own, thingOf(sheet), release));
    setSaid(
      `${name()} is saved as ${saved}, signed by ${own.signer}. It is opened under “Hand your house on”.`,
    );
  };

  return (
    <>
      <p class="actions">
        <button
          type="button"
          disabled={!props.isReady}
          onClick={() => void show().catch(() => setSaid(NOT_COME))}
        >
          Show the link as a picture
        </button>
        <button
          type="button"
          disabled={!props.isReady}
          onClick={() => void save().catch(() => setSaid(NOT_COME))}
        >
          Save the link in a signed file
        </button>
      </p>
      <Show when={code()}>{(now) => <QrPicture code={now()} name={name()} opens="the sheet" />}</Show>
      <p role="status">{said()}</p>
    </>
  );
}
