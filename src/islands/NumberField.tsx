// A number with its unit, its allowed range and, when something is wrong, one sentence that says what.
import { createEffect, createSignal, on, Show } from 'solid-js';
import { kinds, type KindName } from '../core/kinds.ts';
import { formatNumber } from '../core/format.ts';

export interface NumberFieldProps {
  readonly id: string;
  readonly label: string;
  readonly kind: KindName;
  readonly range: readonly [number, number];
  readonly step: number;
  readonly value: number;
  /** Takes the text just typed; returns the sentence to show when it cannot be used. */
  readonly attempt: (text: string) => string | undefined;
  readonly meaning?: string;
  /** Marks a figure of the house, which changes the whole book. */
  readonly ofHouse?: boolean;
  /** Also draws a slider, for figures that one likes to move to and fro. */
  readonly slider?: boolean;
  /** Puts the figure back to where it stood before the reader changed it; left out when it is there already. */
  readonly reset?: (() => void) | undefined;
}

/** A value as it stands in the field: as many decimals as it needs, up to the kind's own. */
function asTyped(value: number, kind: KindName): string {
  if (kind === 'gravity') return formatNumber(value, 3);
  const digits = Math.max(kinds[kind].digits, 1);
  return String(Number(value.toFixed(digits))).replace('-', '−');
}

export function NumberField(props: NumberFieldProps) {
  const [text, setText] = createSignal(asTyped(props.value, props.kind));
  const [problem, setProblem] = createSignal<string>();
  let field: HTMLInputElement | undefined;

  const tryText = (next: string) => {
    setText(next);
    setProblem(props.attempt(next));
  };
  const settle = () => problem() === undefined && setText(asTyped(props.value, props.kind));
  const move = (steps: number) => {
    const moved = Math.min(props.range[1], Math.max(props.range[0], props.value + steps * props.step));
    tryText(asTyped(Number(moved.toFixed(6)), props.kind));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const steps = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    move(steps);
  };
  // When the figure changes elsewhere, a text that was refused gets another try; any other text follows the figure.
  createEffect(
    on(
      () => props.value,
      () => {
        if (problem() !== undefined) setProblem(props.attempt(text()));
        if (problem() === undefined && field !== document.activeElement) settle();
      },
      { defer: true },
    ),
  );

  return (
    <div
      class="field"
      classList={{ 'of-house': props.ofHouse ?? false }}
      data-state={problem() ? 'wrong' : 'ok'}
    >
      <label for={props.id}>
        {props.label}
        <Show when={props.ofHouse}>
          {' '}
          <span class="mark">house</span>
        </Show>
      </label>
      <span class="with-unit">
        <input
          ref={field}
          id={props.id}
          class="number"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text()}
          aria-invalid={problem() ? 'true' : 'false'}
          aria-describedby={
            problem() ? `${props.id}-problem` : props.meaning ? `${props.id}-meaning` : undefined
          }
          onInput={(event) => tryText(event.currentTarget.value)}
          onBlur={settle}
          onKeyDown={onKeyDown}
        />
        <span class="unit">{kinds[props.kind].unit}</span>
        <Show when={props.reset}>
          {(reset) => (
            <button
              type="button"
              class="reset"
              title={`Put ${props.label} back`}
              onClick={() => (reset()(), setProblem(undefined))}
            >
              put back
            </button>
          )}
        </Show>
      </span>
      <Show when={props.slider && (props.range[1] - props.range[0]) / props.step <= 1000}>
        <input
          class="slide"
          type="range"
          aria-label={`${props.label}, slider`}
          autocomplete="off"
          min={props.range[0]}
          max={props.range[1]}
          step={props.step}
          value={props.value}
          onInput={(event) => tryText(asTyped(event.currentTarget.valueAsNumber, props.kind))}
        />
      </Show>
      <Show when={problem()}>
        <p class="problem" id={`${props.id}-problem`} role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={props.meaning}>
        <p class="meaning" id={`${props.id}-meaning`}>
          {props.meaning}
        </p>
      </Show>
    </div>
  );
}
