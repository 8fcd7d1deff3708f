// The button that hands a sheet in: with blanks left, or a unit that is not read, it asks once, and any answer takes the question back.
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { blanksIn } from '../exercises/blanks.ts';
import type { AskedFor } from '../exercises/unit-not-read.ts';

export function HandIn(props: {
  readonly answers: readonly string[];
  /** What each question asks for, so that a unit that is not read is told first. */
  readonly asked: readonly AskedFor[];
  readonly says: string;
  /** Why it cannot be handed in yet; nothing when it can. */
  readonly waits?: string | undefined;
  readonly handIn: () => void;
}) {
  const [asks, setAsks] = createSignal('');
  const answers = createMemo(() => props.answers);
  let isLooking = false;
  createEffect(on(answers, () => setAsks(''), { defer: true }));
  const press = async (event: MouseEvent) => {
    if (isLooking) return;
    if (asks() !== '') return event.detail > 1 ? undefined : props.handIn(); // a double click is one press
    const given = answers();
    isLooking = true;
    const units = await import('../exercises/unit-not-read.ts').then(
      ({ unitsNotRead }) => unitsNotRead(given, props.asked),
      () => [], // without its reader a sheet can be handed in all the same
    );
    isLooking = false;
    if (given !== answers()) return;
    const blanks = blanksIn(given);
    const doubts = blanks === undefined ? units : [...units, blanks];
    if (doubts.length === 0) return props.handIn();
    setAsks(`${doubts.join(' ')} Press again to hand in all the same.`);
  };
  const answered = () => answers().filter((answer) => answer.trim() !== '').length;
  return (
    <>
      <p role="status">
        {answered()} of {answers().length} answered.
      </p>
      <p class="actions">
        <button type="button" disabled={props.waits !== undefined} onClick={(event) => void press(event)}>
          {props.says}
        </button>
        {props.waits}
      </p>
      <p role="status">{asks()}</p>
    </>
  );
}
