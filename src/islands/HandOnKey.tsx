// The owner's key on another machine: saved to a file, opened from one, taken out of this browser.
import { Show } from 'solid-js';
import { readKey, withAllReleased, type OwnKey } from '../handing/own-key.ts';
import { isKeySound, publicOf } from '../handing/signing.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { FileField } from './FileField.tsx';
import { textOfFile } from './open-file.ts';

const BIGGEST_KEY = 100_000; // bytes of a key's file; a key needs about 400, and each house released 40 more

export function HandOnKey(props: {
  readonly own: OwnKey | undefined;
  /** True where the browser signs. */
  readonly isReady: boolean;
  readonly take: (own: OwnKey | undefined, sentence?: string) => void;
  /** Saves the key to a file; its name. */
  readonly save: () => string;
  readonly say: (sentence: string) => void;
}) {
  const open = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_KEY, 'a key’s file');
    if ('problem' in read) return props.say(read.problem);
    const reading = readKey(read.text);
    if ('problem' in reading)
      return props.say(`${quotedGiven(file.name)}: ${reading.problem} Nothing was changed.`);
    const { own } = reading;
    const now = props.own;
    if (now && publicOf(now.key) !== publicOf(own.key))
      return props.say(
        `This browser signs as ${now.signer} with another key. Take that one out first; nothing was changed.`,
      );
    if (!(await isKeySound(own.key)))
      return props.say(`${quotedGiven(file.name)}: The key in the file is damaged. Nothing was changed.`);
    props.take(now ? withAllReleased(own, now.released) : own, `You sign as ${own.signer}.`);
  };

  return (
    <details class="keys">
      <summary>Your key on another machine</summary>
      <p>
        The key is in this browser only; without it nobody, you neither, can sign as before. Keep a copy of it
        where you keep the keys of the house: <b>whoever has that file can sign in your name.</b>
      </p>
      <div class="field">
        <FileField
          id="hand-on-key"
          label="Open my key from a file"
          accept=".json,application/json"
          saidBy="hand-on-sign-said"
          disabled={!props.isReady}
          open={open}
        />
      </div>
      <Show when={props.own}>
        <p class="actions">
          <button
            type="button"
            onClick={() =>
              props.say(`Your key is saved as ${props.save()}. Whoever has that file can sign in your name.`)
            }
          >
            Save my key to a file
          </button>{' '}
          <button
            type="button"
            onClick={() => {
              const saved = props.save();
              props.take(undefined, `Your key is out of this browser, and saved as ${saved}.`);
            }}
          >
            Save it and take it out of this browser
          </button>
        </p>
      </Show>
    </details>
  );
}
