// The log of a round: what was done, what happened and what was read, each with its time; and a line of one's own.
import { createMemo, createSignal, Index } from 'solid-js';
import { UNSEEN } from '../core/quoted-given.ts';
import type { Moment, LogNote, LogRead } from '../core/shift/course.ts';
import { LONGEST_NOTE } from '../shift/text.ts';
import type { KeptShift } from '../shift/kept.ts';
import { logLines } from './shift-log.ts';
import type { Post } from './shift-post.ts';

export function ShiftLog<R, S extends Moment, A extends LogNote | LogRead | { readonly do: string }, D, K extends KeptShift<{ readonly name: string }, D, A>>(props: {
  readonly post: Post<R, S, A, D, K>;
  readonly shift: K;
  readonly state: S;
  readonly came: readonly string[];
  readonly write: (text: string) => void;
}) {
  const [note, setNote] = createSignal('');
  const lines = createMemo(() => logLines(props.post, props.shift.log, props.came, props.state));
  const write = () => {
    const text = note().replace(/\s+/g, ' ').replace(UNSEEN, '').trim().slice(0, LONGEST_NOTE);
    if (text === '') return;
    props.write(text);
    setNote('');
  };
  return (
    <details class="shift-log">
      <summary>The log: {lines().length} {lines().length === 1 ? 'line' : 'lines'}</summary>
      <form
        class="note-of"
        autocomplete="off"
        onKeyDown={(event) => event.stopPropagation()}
        onSubmit={(event) => {
          event.preventDefault();
          write();
        }}
      >
        <label for="shift-note">Write a line</label>
        <input
          id="shift-note"
          type="text"
          maxlength={LONGEST_NOTE}
          value={note()}
          onInput={(event) => setNote(event.currentTarget.value)}
        />
        <button type="submit">Write</button>
      </form>
      <ol tabindex="0" aria-label="The log">
        <Index each={lines()}>
          {(line) => (
            <li>
              <time>{props.post.clock(line().step)}</time> {line().text}
            </li>
          )}
        </Index>
      </ol>
    </details>
  );
} // prettier-ignore
