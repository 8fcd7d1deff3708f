// Releases the house: a number and a signature on its file, and the owner's key that makes them.
import { createEffect, createSignal, on, onMount, Show } from 'solid-js';
import { LAST_RELEASE, fileText } from '../handing/envelope.ts';
import { dropKey, keepKey, keptKey } from '../browser/handing-store.ts';
import { numberProblem } from '../handing/judge-file.ts';
import { keyText, lastRelease, thingOf, withReleased, type OwnKey } from '../handing/own-key.ts';
import { canSign, keyFingerprint, makeKey, publicOf, signedRelease } from '../handing/signing.ts';
import { nameProblem } from '../house/name.ts';
import { useHouse } from '../browser/house-store.ts';
import { fileNameOf } from './file-name.ts';
import { HandOnKey } from './HandOnKey.tsx';
import { NumberField } from './NumberField.tsx';
import { saveFile } from './save-file.ts';
import { today } from './today.ts';

const NOT_KEPT =
  'This browser does not let the handbook keep your key; save it to a file, or the next release will be by another.';

export function HandOnSign() {
  const { mounted, name, text, visiting } = useHouse();
  const [own, setOwn] = createSignal<OwnKey>();
  const [digits, setDigits] = createSignal('');
  const [signer, setSigner] = createSignal('');
  const [problem, setProblem] = createSignal<string>();
  const [said, setSaid] = createSignal<string>();
  const thing = () => thingOf({ kind: 'house', name: name() });
  const last = () => lastRelease(own()?.released ?? {}, thing());
  const [number, setNumber] = createSignal(1);
  const isReady = () => mounted() && canSign();
  createEffect(() => setNumber(Math.min(last() + 1, LAST_RELEASE)));

  onMount(() => {
    const kept = keptKey();
    setOwn(kept.own);
    setSaid(kept.problem);
  });
  createEffect(on(own, async (now) => setDigits(now ? await keyFingerprint(publicOf(now.key)) : '')));

  /** Takes a key into use; nothing is the key taken out of this browser. */
  const take = (next: OwnKey | undefined, sentence?: string) => {
    setOwn(next);
    const isKept = next ? keepKey(next) : dropKey();
    setSaid(isKept ? sentence : NOT_KEPT);
  };
  const make = async () => {
    const wrong = nameProblem(signer().trim());
    setProblem(wrong && 'Put in the name that is to stand on what you sign.');
    if (wrong === undefined)
      take({ signer: signer().trim(), key: await makeKey(), released: {} }, 'Your key is made, and stays in this browser.'); // prettier-ignore
  };
  const release = async () => {
    const [by, no] = [own()!, number()];
    const wrong = numberProblem(no, last());
    if (wrong !== undefined) return void setSaid(wrong);
    const envelope = { kind: 'house', name: name(), text: text() } as const;
    const file = await signedRelease({ ...envelope, release: no, date: today(), signer: by.signer }, by.key);
    const saved = fileNameOf(`${name()}-release-${no}`, 'signed');
    saveFile(saved, fileText(file), 'application/json');
    take(withReleased(by, thing(), no), `Release ${no} of ${name()} is saved as ${saved}. Send it to those who show the house round.`); // prettier-ignore
  };
  const saveKey = () => {
    const saved = fileNameOf(own()!.signer, 'key');
    saveFile(saved, keyText(own()!), 'application/json');
    return saved;
  };

  return (
    <section class="calculator hand-on" aria-labelledby="hand-on-sign">
      <h2 id="hand-on-sign">Release it under your name</h2>
      <p>
        A release is a file with a number and your signature. Whoever opens it sees that it is by you and
        unchanged, and how many releases behind they were; what they changed themselves stays.
      </p>
      <Show when={mounted() && !canSign()}>
        <p>
          A browser signs, and checks a signature, only on a page from an address that begins with https. The
          link, the picture and the plain file do without.
        </p>
      </Show>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <Show
          when={own()}
          fallback={
            <div class="field" data-state={problem() ? 'wrong' : 'ok'}>
              <label for="hand-on-signer">Your name, as it is to stand on what you sign</label>
              <input
                id="hand-on-signer"
                class="words"
                type="text"
                maxlength="80"
                autocomplete="off"
                aria-invalid={problem() ? 'true' : 'false'}
                aria-describedby={problem() ? 'hand-on-signer-problem' : undefined}
                value={signer()}
                onInput={(event) => setSigner(event.currentTarget.value)}
              />
              <Show when={problem()}>
                <p class="problem" id="hand-on-signer-problem" role="alert">
                  {problem()}
                </p>
              </Show>
            </div>
          }
        >
          {(now) => (
            <>
              <p>
                You sign as <b>{now().signer}</b>. The fingerprint of your key, to read out to those who ask:{' '}
                <span class="fingerprint">{digits()}</span>
              </p>
              <NumberField
                id="hand-on-release"
                label={`Number of this release of ${name()}`}
                kind="count"
                range={[Math.min(last() + 1, LAST_RELEASE), LAST_RELEASE]}
                step={1}
                value={number()}
                take={(value) => void setNumber(Math.round(value))}
              />
            </>
          )}
        </Show>
      </form>
      <p class="actions">
        <Show
          when={own()}
          fallback={
            <button type="button" disabled={!isReady()} onClick={() => void make()}>
              Make my key
            </button>
          }
        >
          <button type="button" disabled={visiting() || !isReady()} onClick={() => void release()}>
            Sign and save release {number()}
          </button>
        </Show>
      </p>
      <Show when={visiting()}>
        <p>These are someone else’s figures: keep them as yours before you release them.</p>
      </Show>
      <p role="status" id="hand-on-sign-said">
        {said()}
      </p>
      <HandOnKey own={own()} isReady={isReady()} take={take} save={saveKey} say={setSaid} />
    </section>
  );
}
