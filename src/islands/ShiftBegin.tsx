// Where a shift begins: its number, so that a trainer sets the same for all, or the shift that was kept, which is not lost unasked.
import { createSignal, Show } from 'solid-js';
import { wasGiven } from '../core/quoted-given.ts';
import type { KeptShift } from '../shift/kept.ts';
import { isSeed, ROUNDS_OF_SHIFT, SEEDS } from '../shift/seed.ts';

export function ShiftBegin<K extends KeptShift<unknown, unknown, unknown>>(props: {
  readonly seed: number;
  /** Where it begins: “Harrowmere’s still”. */
  readonly place: string;
  readonly kept: K | undefined;
  /** Whether the kept one is under way, so that another is not begun over it unasked; whether it has come to its end. */
  readonly isToLose: boolean;
  readonly isOver: boolean;
  readonly clock: (step: number) => string;
  readonly isReady: boolean;
  readonly begin: (seed: number) => void;
  readonly goOn: (shift: K) => void;
}) {
  const [problem, setProblem] = createSignal('');
  let input: HTMLInputElement | undefined;
  /** The number that stands in the field; undefined, and said so, where it is none. */
  const read = (): number | undefined => {
    const text = input!.value.trim();
    const seed = /^\d{1,6}$/.test(text) ? Number(text) : undefined;
    if (isSeed(seed)) return (setProblem(''), seed);
    setProblem(wasGiven('Number of the shift', text, `it can be a whole number from ${SEEDS[0]} to ${SEEDS[1]}.`)); // prettier-ignore
    input!.focus();
    return undefined;
  };
  const begin = () => {
    const seed = read();
    if (seed !== undefined) props.begin(seed);
  };
  const keepIt = () => {
    setAsked(false);
    document.getElementById('shift-go-on')?.focus();
  };
  const [isAsked, setAsked] = createSignal(false); // whether the shift that is kept may go
  const wants = () => {
    if (!props.isToLose || read() === undefined) return begin();
    setAsked(true);
    queueMicrotask(() => document.getElementById('shift-keep')?.focus());
  };
  const round = () => `shift ${props.kept!.seed}, round ${Math.min(ROUNDS_OF_SHIFT, props.kept!.done.length + 1)}`;
  return (
    <>
      <Show when={props.kept}>
        {(kept) => (
          <form
            class="shift-begin"
            onSubmit={(event) => {
              event.preventDefault();
              props.goOn(kept());
            }}
          >
            <p class="actions">
              <button type="submit" id="shift-go-on">
                {props.isOver ? `See how it went: ${round()}` : `Go on with ${round()}`}
              </button>
            </p>
          </form>
        )}
      </Show>
      <form
        class="shift-begin"
        autocomplete="off"
        onSubmit={(event) => {
          event.preventDefault();
          wants();
        }}
      >
        <div class="field" data-state={problem() ? 'wrong' : 'ok'}>
          <label for="shift-seed">Number of the shift</label>
          <input
            id="shift-seed"
            class="words"
            type="text"
            inputmode="numeric"
            maxlength={40}
            value={props.seed}
            ref={input}
            aria-invalid={problem() ? 'true' : 'false'}
            aria-describedby={problem() ? 'shift-seed-problem' : 'shift-seed-meaning'}
          />
          <p class="meaning" id="shift-seed-meaning">
            The same number brings the same events, so that everybody has the same shift.
          </p>
          <Show when={problem()}>
            <p class="problem" id="shift-seed-problem" role="alert">
              {problem()}
            </p>
          </Show>
        </div>
        <Show
          when={isAsked()}
          fallback={
            <p class="actions">
              <button
                type={props.kept ? 'button' : 'submit'}
                id="shift-begin"
                disabled={!props.isReady}
                onClick={() => props.kept && wants()}
              >
                {props.kept ? 'Begin another' : 'Begin'} at {props.place}
              </button>
            </p>
          }
        >
          <p role="alert">
            {`S${round().slice(1)}`} is not done: it stands at {props.clock(props.kept!.step)}. Another takes its place, and it is lost.
          </p>
          <p class="actions">
            <button type="button" id="shift-keep" onClick={keepIt}>
              Keep it
            </button>
            <button type="button" id="shift-lose" onClick={begin}>
              Begin another, lose this one
            </button>
          </p>
        </Show>
      </form>
    </>
  );
} // prettier-ignore
