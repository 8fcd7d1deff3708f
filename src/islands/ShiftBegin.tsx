// Where a shift begins: its number, so that a trainer sets the same for all, or the shift that was kept.
import { createSignal, Show } from 'solid-js';
import { wasGiven } from '../core/format.ts';
import type { Kept } from '../shift/kept.ts';
import { isSeed, ROUNDS, SEEDS } from '../shift/seed.ts';

export function ShiftBegin<K extends Kept<unknown, unknown, unknown>>(props: {
  readonly seed: number;
  /** Where it begins: “Harrowmere’s still”. */
  readonly place: string;
  readonly kept: K | undefined;
  readonly isReady: boolean;
  readonly begin: (seed: number) => void;
  readonly goOn: (shift: K) => void;
}) {
  const [problem, setProblem] = createSignal('');
  let input: HTMLInputElement | undefined;
  const begin = () => {
    const text = input!.value.trim();
    const seed = /^\d{1,6}$/.test(text) ? Number(text) : undefined;
    if (isSeed(seed)) return (setProblem(''), props.begin(seed));
    setProblem(wasGiven('Number of the shift', text, `it can be a whole number from ${SEEDS[0]} to ${SEEDS[1]}.`)); // prettier-ignore
    input!.focus();
  };
  return (
    <form
      class="shift-begin"
      autocomplete="off"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
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
      <p class="actions">
        <button type="submit" id="shift-begin" disabled={!props.isReady}>
          Begin at {props.place}
        </button>
        <Show when={props.kept}>
          {(kept) => (
            <button type="button" id="shift-go-on" onClick={() => props.goOn(kept())}>
              Go on with shift {kept().seed}, round {Math.min(ROUNDS, kept().done.length + 1)}
            </button>
          )}
        </Show>
      </p>
    </form>
  );
}
