// The log of a charge: what was done, what happened and what was read, each with its time; and a line of one's own.
import { createMemo, createSignal, Index } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import { UNSEEN } from '../core/shown.ts';
import { whys } from '../core/shift/score.ts';
import type { Action } from '../core/shift/act.ts';
import type { ShiftState, Wrong } from '../core/shift/state.ts';
import type { Shift } from '../shift/shift.ts';
import { LONGEST_NOTE } from '../shift/text.ts';
import { clockAt, happenings, wordsOf } from './shift-words.ts';

/** What an action counts as when it is refused. */
const refusals: Readonly<Partial<Record<Action['do'], Wrong>>> = { steam: 'open-steam', manhole: 'manhole', air: 'air-hot', charging: 'charging-hot', discharge: 'vacuum' }; // prettier-ignore

export function ShiftLog(props: {
  readonly shift: Shift;
  readonly state: ShiftState;
  readonly write: (text: string) => void;
}) {
  const [note, setNote] = createSignal('');
  const lines = createMemo(() => {
    const { happened, wrong, readings } = props.state;
    let reading = 0;
    // Of a valve turned several marks at one time only where it came to.
    const log = props.shift.log.filter(({ step, action }, i, all) => {
      const next = all[i + 1];
      const isMark = action.do === 'steam' || action.do === 'water';
      return !(isMark && next?.step === step && next.action.do === action.do);
    });
    const done = log.map(({ step, action }) => {
      const made = action.do === 'read' ? readings[reading] : undefined;
      if (made?.step === step) reading++;
      const at = made ? `, sample at ${n(made.temperature, 1)} °C` : '';
      const isRefused = wrong.some((each) => each.step === step && each.id === refusals[action.do]);
      return { step, text: `${wordsOf(action)}${at}${isRefused ? ': refused' : ''}.` };
    });
    return [
      ...done,
      ...happened.map(({ step, id }) => ({ step, text: happenings[id] })),
      ...wrong.map(({ step, id }) => ({ step, text: whys[id][1] })),
    ].toSorted((a, b) => a.step - b.step);
  });
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
              <time>{clockAt(line().step)}</time> {line().text}
            </li>
          )}
        </Index>
      </ol>
    </details>
  );
} // prettier-ignore
