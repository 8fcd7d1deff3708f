// The owner's key on another machine: saved to a file, opened from one, taken out of this browser.
import { Show } from 'solid-js';
import { readKey, withAllReleased, type OwnKey } from '../handing/own-key.ts';
import { isKeySound, publicOf } from '../handing/signing.ts';
import { TextFileField } from './TextFileField.tsx';

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
  const open = async (text: string, file: string) => {
    const reading = readKey(text);
    if ('problem' in reading) return props.say(`${file}: ${reading.problem} Nothing was changed.`);
    const { own } = reading;
    const now = props.own;
    if (now && publicOf(now.key) !== publicOf(own.key))
      return props.say(
        `This browser signs as ${now.signer} with another key. Take that one out first; nothing was changed.`,
      );
    if (!(await isKeySound(own.key)))
      return props.say(`${file}: The key in the file is damaged. Nothing was changed.`);
    props.take(now ? withAllReleased(own, now.released) : own, `You sign as ${own.signer}.`);
  };

  return (
    <details class="keys">
      <summary>Your key on another machine</summary>
      <p>
        The key is in this browser only; without it nobody, you neither, can sign as before. Keep a copy of it
        where you keep the keys of the house: <b>whoever has that file can sign in your name.</b>
      </p>
      <TextFileField
        id="hand-on-key"
        label="Open my key from a file"
        most={BIGGEST_KEY}
        what="a key’s file"
        saidBy="hand-on-sign-said"
        disabled={!props.isReady}
        take={open}
        tell={props.say}
      />
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
