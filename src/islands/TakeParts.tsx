// What any sheet taken on the screen has: the trainee's name, and the code that is handed in.
import { createEffect, createSignal, on, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import { MOST_ATTEMPTS } from '../exercises/result.ts';
import { timeText } from './own-taken.ts';

export const MINUTE_MS = 60_000; // ms

/** When a sheet was begun, and until when it may be answered: “Begun at 10:05. 40 minutes allowed: until 10:45.” */
export const timeAllowed = (begun: number, minutes: number): string =>
  `Begun at ${timeText(begun)}. ${minutes > 0 ? `${formatCount(minutes, 'minute')} allowed: until ${timeText(begun + minutes * MINUTE_MS)}.` : 'No time is set.'}`;

/** The trainee's name: it stands once a sheet is handed in under it. */
export function NameOnSheet(props: {
  readonly name: string;
  readonly handedIn: boolean;
  readonly change: (name: string) => void;
}) {
  const [isFixed, setFixed] = createSignal(false);
  createEffect(
    on(
      () => props.handedIn,
      (handedIn) => setFixed(handedIn && props.name.trim() !== ''),
    ),
  );
  return (
    <div class="field">
      <label for="take-name">Your name</label>
      <input
        id="take-name"
        class="words"
        type="text"
        maxlength="60"
        autocomplete="off"
        value={props.name}
        readonly={isFixed()}
        aria-describedby="take-name-note"
        onInput={(event) => props.change(event.currentTarget.value)}
        onChange={(event) => setFixed(props.handedIn && event.currentTarget.value.trim() !== '')}
      />
      <p id="take-name-note" class="small">
        {!props.handedIn
          ? ''
          : isFixed()
            ? 'Handed in under this name.'
            : 'Without a name the code says “no name”.'}
      </p>
    </div>
  );
}

/** The code of a result; what came of copying it is said through `say`. */
export function ResultCode(props: { readonly code: string; readonly say: (text: string) => void }) {
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(props.code);
      props.say('The code is copied. Send it to your trainer, or read it out.');
    } catch {
      props.say('Copy the code by hand, and send it to your trainer.');
    }
  };
  return (
    <>
      <p class="code">
        <output>{props.code}</output>
      </p>
      <p class="actions">
        <button type="button" onClick={() => void copy()}>
          Copy the code
        </button>
      </p>
    </>
  );
}

/** The way to take a sheet once more; its code then says which attempt it is. */
export function TakeAgain(props: { readonly attempt: number; readonly again: () => void }) {
  return (
    <Show when={props.attempt < MOST_ATTEMPTS}>
      <p class="small">
        This was attempt {props.attempt}; the code says so, with the day by this machine’s clock.
      </p>
      <p class="actions">
        <button type="button" onClick={props.again}>
          Take it once more, as attempt {props.attempt + 1}
        </button>
      </p>
    </Show>
  );
}
