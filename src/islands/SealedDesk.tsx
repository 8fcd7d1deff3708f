// A trainer's desk of sealed sheets: the key; with it, the sheets that are sealed to it, and the answers that come back.
import { createSignal, onMount, Show } from 'solid-js';
import { isSealKeySound, makeSealKey, readSealKey, sealKeyText } from '../handing/sealing.ts';
import { canSign, keyFingerprint, publicOf, type SecretKey } from '../handing/signing.ts';
import { TextFileField } from './TextFileField.tsx';
import { saveFile } from './save-file.ts';
import { isKeptKey, keepSealKey, keptSealKey } from './seal-kept.ts';
import { isSheetToSeal } from './sealed-address.ts';
import { SealedBack } from './SealedBack.tsx';
import { SealedMake } from './SealedMake.tsx';

const BIGGEST_KEY = 10_000; // bytes of a key's file; a key needs about 400

export default function SealedDesk(props: { readonly list: string }) {
  const [key, setKey] = createSignal<SecretKey>();
  const [print, setPrint] = createSignal('');
  const [said, setSaid] = createSignal('');
  const [waits, setWaits] = createSignal(false); // a sheet in the address, to be sealed

  const takeKey = async (next: SecretKey, says: string) => {
    if (!(await isSealKeySound(next))) return void setSaid('This key is damaged: it does not open what is sealed to it.'); // prettier-ignore
    setKey(next);
    setPrint(await keyFingerprint(publicOf(next)));
    setSaid(keepSealKey(next) ? says : `${says} This browser does not keep it: save it to a file now.`);
  };
  onMount(() => {
    setWaits(isSheetToSeal(location.hash));
    if (!canSign()) return void setSaid('This page came by an address that browsers do not trust with keys (plain http), so nothing can be sealed here. Open it by https.'); // prettier-ignore
    const kept = keptSealKey();
    if (typeof kept === 'string') setSaid(kept);
    else if (kept) void takeKey(kept, '');
  });

  return (
    <>
      <section class="calculator sealed-desk" aria-labelledby="sealed-key-title">
        <h2 id="sealed-key-title">Your key</h2>
        <Show
          when={key()}
          fallback={
            <p>
              A key is made once. Whoever has its file can open the sheets and the answers; who has lost it
              can open neither.{' '}
              <Show when={waits()}>The sheet to be sealed waits here: make a key, or open yours.</Show>
            </p>
          }
        >
          <p>
            The key <span class="number">{print()}</span> is in this browser. Save it to a file, and keep that
            where no trainee comes. On another machine you need this file and the file of the sealed sheet.
          </p>
        </Show>
        <TextFileField
          id="sealed-key-file"
          label="Open a key from a file"
          most={BIGGEST_KEY}
          what="a key"
          saidBy="sealed-key-said"
          take={async (text) => {
            const read = readSealKey(text);
            if (typeof read === 'string') setSaid(read);
            else
              await takeKey(
                read,
                isKeptKey(read)
                  ? 'This is the key that is here already; nothing has changed.'
                  : key()
                    ? 'The key is open. The one that was here before is set aside in this browser.'
                    : 'The key is open.',
              );
          }}
          tell={setSaid}
        />
        <p class="actions">
          <Show
            when={key()}
            fallback={
              <button
                type="button"
                onClick={() =>
                  void makeSealKey().then(
                    (next) => takeKey(next, 'The key is made. Save it to a file before you seal with it.'),
                    () => setSaid('This browser cannot make a key here.'),
                  )
                }
              >
                Make a key
              </button>
            }
          >
            <button
              type="button"
              onClick={() => saveFile('sealed-sheets.key.json', sealKeyText(key()!), 'application/json')}
            >
              Save the key to a file
            </button>
          </Show>
        </p>
        <p id="sealed-key-said" role="status">
          {said()}
        </p>
      </section>
      <Show when={key()}>
        {(now) => (
          <>
            <SealedMake key={now()} list={props.list} />
            <SealedBack key={now()} list={props.list} />
          </>
        )}
      </Show>
    </>
  );
}
