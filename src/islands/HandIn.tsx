// The button that hands a sheet in: with blanks left it asks once, and any answer takes the question back.
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { blanksIn } from '../exercises/blanks.ts';

export function HandIn(props: {
  readonly answers: readonly string[];
  readonly says: string;
  /** Why it cannot be handed in yet; nothing when it can. */
  readonly waits?: string | undefined;
  readonly handIn: () => void;
}) {
  const [asks, setAsks] = createSignal('');
  const answers = createMemo(() => props.answers);
  createEffect(on(answers, () => setAsks(''), { defer: true }));
  const press = (event: MouseEvent) => {
    const blanks = blanksIn(answers());
    if (blanks === undefined) return props.handIn();
    if (asks() !== '') return event.detail > 1 ? undefined : props.handIn(); // a double click is one press
    setAsks(`${blanks} Press again to hand in all the same.`);
  };
  const answered = () => answers().filter((answer) => answer.trim() !== '').length;
  return (
    <>
      <p role="status">
        {answered()} of {answers().length} answered.
      </p>
      <p class="actions">
        <button type="button" disabled={props.waits !== undefined} onClick={press}>
          {props.says}
        </button>
        {props.waits}
      </p>
      <p role="status">{asks()}</p>
    </>
  );
}
