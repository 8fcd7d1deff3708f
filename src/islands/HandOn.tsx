// Hands the house on: to another phone by a picture or a link, to anyone by a file, signed and numbered or not.
import { createMemo, createSignal, Show } from 'solid-js';
import { encodeHouse } from '../house/codec.ts';
import { linkIfItFits } from '../house/pack.ts';
import { useHouse } from '../browser/house-store.ts';
import { copyAddress } from './copy-address.ts';
import { fileNameOf } from './file-name.ts';
import { HandOnOpen } from './HandOnOpen.tsx';
import { HandOnSign } from './HandOnSign.tsx';
import { printPart } from './print-part.ts';
import QrPicture from './QrPicture.tsx';
import { qrCodeOf } from './qr.ts';
import { saveFile } from './save-file.ts';

/** The address that opens a house where its figures are; undefined when it is too much for one. */
function addressOf(text: string): string | undefined {
  const link = linkIfItFits(text);
  return link && `${location.origin}${location.pathname.replace(/hand-on\/$/, '')}${link}`;
}
function pictureOf(text: string) {
  const address = addressOf(text);
  return address === undefined ? undefined : qrCodeOf(address);
}

export default function HandOn() {
  const { mounted, name, house, text } = useHouse();
  const [said, setSaid] = createSignal<string>();
  const whole = createMemo(() => (mounted() ? pictureOf(text()) : undefined));
  const picture = () => whole() ?? (mounted() ? pictureOf(encodeHouse({ name: name(), house: house() })) : undefined); // prettier-ignore
  const tooMuch = () => `${name()} keeps too much for a link. Save it to a file and send that.`;
  const copy = async () => {
    const address = addressOf(text());
    if (address === undefined) return void setSaid(tooMuch());
    const copied = 'The link is copied. It carries the figures themselves; nothing was sent anywhere.';
    setSaid(await copyAddress(address, copied));
  };
  const save = () => {
    const file = fileNameOf(name(), 'house');
    saveFile(file, JSON.stringify(JSON.parse(text()), null, 2), 'application/json');
    setSaid(`${name()} is saved as ${file}.`);
  };

  return (
    <>
      <section class="calculator hand-on" aria-labelledby="hand-on-phone">
        <h2 id="hand-on-phone">To another phone</h2>
        <p>
          Hold the other phone’s camera on the picture and open the address that it finds. It is the address
          at which you have the book now: a copy that runs on this machine alone cannot be reached from
          another.
        </p>
        <div class="qr-place">
          <Show when={picture()}>
            {(code) => <QrPicture code={code()} name={name()} opens={`the figures of ${name()}`} />}
          </Show>
        </div>
        <div>
          <Show when={mounted() && !whole()}>
            <p class="remark">
              {picture()
                ? `${name()} keeps more than one picture can carry: this one has its figures and nothing else. Hand on the whole of it in a file.`
                : tooMuch()}
            </p>
          </Show>
        </div>
        <p class="actions">
          <button type="button" onClick={() => void copy()}>
            Copy the link
          </button>{' '}
          <button type="button" onClick={save}>
            Save to a file
          </button>{' '}
          <button type="button" disabled={!picture()} onClick={() => printPart('picture')}>
            Print the picture
          </button>
        </p>
        <p role="status">{said()}</p>
      </section>
      <HandOnSign />
      <HandOnOpen />
    </>
  );
}
