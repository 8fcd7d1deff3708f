// A number with its unit, its allowed range and, when something is wrong, one sentence that says what.
import { createEffect, createSignal, For, on, onCleanup, onMount, Show, untrack } from 'solid-js';
import { fieldDecimals, formatNumber, rangeProblem, allowedInWords } from '../core/format.ts';
import { wasGiven } from '../core/quoted-given.ts';
import type { KindName } from '../core/kinds.ts';
import { isRefusal } from '../core/refusal.ts';
import { unitsOf, type Unit } from '../core/units.ts';
import { chooseUnit, useCountry, useUnits } from '../browser/units-store.ts';
import { useAnnouncement } from './announce.ts';
import { typedEarly } from './typed-early.ts';
import { focusAfter } from './focus-after.ts';
import { fetchReader, readTyped } from './fetched-reader.ts';

export interface NumberFieldProps {
  readonly id: string;
  readonly label: string;
  readonly kind: KindName;
  readonly range: readonly [number, number];
  readonly step: number;
  /** In the core's unit, whatever unit is shown; nothing in a field that may be left empty. */
  readonly value: number | undefined;
  /** Whatever else decides whether a text can be used: when it changes, a refused text gets another try. */
  readonly among?: unknown;
  /** Takes a number in range; returns the sentence to show when it cannot be used. */
  readonly take: (value: number) => string | undefined;
  /** Keeps what stands now, and returns how to put it back so; left out, the number alone is put back. */
  readonly keep?: (() => () => void) | undefined;
  /** Told whenever the text becomes wrong or right again. */
  readonly onState?: (wrong: boolean) => void;
  /** Takes what stands behind ± in the text; without it the field says that this is not used. */
  readonly takeSpread?: ((spread: number) => void) | undefined;
  readonly meaning?: string | undefined;
  /** Told that the field was emptied; without it a field must have a number. */
  readonly clear?: (() => void) | undefined;
  /** Marks a figure of the house, which changes the whole book. */
  readonly ofHouse?: boolean;
  /** What the mark says of a figure that is not known: whose it is. */
  readonly notKnown?: string | undefined;
  /** Takes the figure over as it stands, as the reader's own too; left out when it is known. */
  readonly takeOver?: (() => void) | undefined;
  /** Keeps to the core's unit: a difference or a spread does not convert as its kind does. */
  readonly plain?: boolean;
  /** Also draws a slider, for figures that one likes to move to and fro. */
  readonly slider?: boolean;
  /** Puts the figure back to where it stood before the reader changed it; left out when it is there already. */
  readonly reset?: (() => void) | undefined;
}

const SLIDER_STEPS = 1000; // a slider with more steps than this is no use to a thumb

const MOST_FIGURES = 6; // in a field

const FINE = 5; // kg; a field of smaller steps is not in tonnes: yeast is given in kilograms though malt is in tonnes
const isCoarse = ({ unit }: Unit, step: number) => unit === 't' && step < FINE;

/** Decimals of a step: 0.005 has three. */
const decimalsOf = (step: number) => String(step).split('.')[1]?.length ?? 0;

/** A value as it stands in the field: as many decimals as it needs, up to a few more than its kind or its step has. */
function asTyped(value: number, kind: KindName, step: number, { unit, digits, fromCore }: Unit): string {
  if (kind === 'gravity' && unit === '')
    return formatNumber(value, Math.abs(1000 * value - Math.round(1000 * value)) < 1e-6 ? 3 : 4);
  const most =
    unit === unitsOf(kind)[0]!.unit ? fieldDecimals(kind, step) : Math.max(digits, decimalsOf(step), 1);
  const shown = fromCore(value);
  const before = Math.abs(shown) < 1 ? 1 : Math.floor(Math.log10(Math.abs(shown))) + 1;
  const room = Math.max(decimalsOf(step), MOST_FIGURES - before, 0); // a figure that gave way to another has more decimals than anybody reads
  return String(Number(shown.toFixed(Math.min(most, room)))).replace('-', '−');
}

export function NumberField(props: NumberFieldProps) {
  const unitOf = useUnits();
  const country = useCountry();
  const fine = () => unitsOf(props.kind).filter((unit, i) => i === 0 || !isCoarse(unit, props.step));
  const unit = () => {
    const liked = props.plain ? fine()[0]! : unitOf(props.kind);
    return fine().includes(liked) ? liked : fine()[0]!;
  };
  const typed = (value: number | undefined) =>
    value === undefined
      ? ''
      : props.plain
        ? String(Number(value.toPrecision(4)))
        : asTyped(value, props.kind, props.step, unit());
  const [text, setText] = createSignal(typed(props.value));
  const [problem, setProblem] = createSignal<string>();
  const [note, setNote] = createSignal<string>();
  let field: HTMLInputElement | undefined;
  const early = typedEarly(props.id);
  let putBack: (() => void) | undefined; // to how it stood before the text that is being typed
  let stood: number | undefined;
  const hold = () => {
    const value = (stood = props.value);
    putBack = props.keep?.() ?? (() => void (value === undefined ? props.clear?.() : props.take(value)));
  };
  let isWaiting = false; // for the reader, which is to read the text

  const read = (next: string) =>
    readTyped(next, {
      kind: props.kind,
      unit: unit().unit,
      label: props.label,
      range: props.range,
      country: country(),
      plain: props.plain ?? false,
    });
  const problemOf = (next: string, said: NonNullable<ReturnType<typeof read>>): string | undefined => {
    if (isRefusal(said)) return said.refused;
    const [low, high] = props.range;
    if (said.as === 'range')
      return wasGiven(
        props.label,
        next,
        allowedInWords(props.kind, props.range, unit()),
        'and a single figure is needed',
      );
    const slack = said.unit.unit === unitsOf(props.kind)[0]!.unit ? 0 : 1e-9 * Math.abs(high);
    if (!(said.value >= low - slack && said.value <= high + slack))
      return rangeProblem(props.label, next, props.kind, props.range, unit());
    const problem = props.take(Math.min(high, Math.max(low, said.value)));
    if (problem === undefined && said.as === 'about') setNote(noteOn(said.value, said.spread));
    return problem;
  };
  /** What is said of “about” and ±, where the field has no use for them. */
  const noteOn = (value: number, spread: number | undefined): string | undefined => {
    if (spread !== undefined && props.takeSpread) return void props.takeSpread(spread);
    return `Taken as ${typed(value)}; ${spread === undefined ? '“about” is' : 'the ± is'} not used here.`;
  };
  /** True while the text, however it is written, says the figure as it stands. */
  const isRight = () => {
    if (props.value === undefined) return text().trim() === '';
    const said = read(text());
    return !said || (!isRefusal(said) && said.as !== 'range' && typed(said.value) === typed(props.value));
  };
  const tryText = (next: string) => {
    setText(next);
    setNote(undefined);
    if (props.clear && next.trim() === '') return clear(props.clear);
    const said = read(next);
    isWaiting = !said;
    if (!said) return void fetchReader().then(() => text() === next && tryAgain(next));
    setProblem(problemOf(next, said));
    // On its way to 2000 a 20 was taken: what is refused gives back the number before it.
    if (problem() !== undefined && putBack && props.value !== stood) {
      putBack();
      setProblem(problemOf(next, said));
    }
    props.onState?.(problem() !== undefined);
  };
  const clear = (take: () => void) => {
    isWaiting = false;
    setProblem(undefined);
    take();
    props.onState?.(false);
  };
  const settle = () => problem() === undefined && !isWaiting && setText(typed(props.value));
  const leave = () => {
    putBack = undefined;
    settle();
  };
  /** Tries a text that the reader had to come for. */
  const tryAgain = (next: string) => {
    if (!read(next)) return; // it did not come, and the page says so
    tryText(next);
    if (field !== document.activeElement) settle();
  };
  /** Moves the figure. The field gets its text first: later, the browser would lay the whole page out for it, and once more for the frame. */
  const moveTo = (value: number) => {
    const next = typed(Math.min(props.range[1], Math.max(props.range[0], Number(value.toFixed(6)))));
    if (field) field.value = next;
    tryText(next);
    hold();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const steps = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (steps === undefined || props.value === undefined) return;
    event.preventDefault();
    moveTo(props.value + steps * props.step);
  };
  // What changes the text elsewhere gives it to the field after all that follows from it has been written.
  createEffect(
    on(text, (now) =>
      queueMicrotask(() => {
        if (field && field.value !== now) field.value = now;
      }),
    ),
  );
  // Runs at once too: the house may have taken the reader's saved figures while this field was hydrating.
  // When the figure changes elsewhere, a text that was refused gets another try; any other text follows the figure,
  // but for one being typed that says the same in other words.
  createEffect(
    on(
      () => [props.value, unit(), props.among] as const,
      ([value, now], before) => {
        if (problem() === undefined && before && value === before[0] && now === before[1]) return;
        const isAgain = problem() !== undefined; // a text that was refused gets another try, in a newly chosen unit too
        if (isAgain) tryText(text());
        if (isAgain && problem() !== undefined) return;
        if (field !== document.activeElement || now !== before?.[1] || !isRight()) settle();
      },
    ),
  );

  onMount(() => early !== undefined && tryText(early));

  // A field that goes takes its problem with it.
  onCleanup(() => untrack(problem) !== undefined && props.onState?.(false));

  // Said once the reader rests: on its way to 62 a 6 may be out of range.
  useAnnouncement(
    props.id,
    problem,
    () => problem() ?? '',
    () => field,
  );

  return (
    <div
      class="field"
      classList={{ 'of-house': props.ofHouse ?? false }}
      data-state={problem() ? 'wrong' : 'ok'}
    >
      <label for={props.id}>
        {props.label}
        <Show when={props.ofHouse || props.notKnown}>
          {' '}
          <span class="mark" classList={{ 'not-known': props.notKnown !== undefined }}>
            {props.notKnown ?? 'house'}
          </span>
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
          value={untrack(text)}
          aria-invalid={problem() ? 'true' : 'false'}
          aria-describedby={
            problem()
              ? `${props.id}-problem`
              : note()
                ? `${props.id}-note`
                : props.meaning
                  ? `${props.id}-meaning`
                  : undefined
          }
          onFocus={() => {
            hold();
            void fetchReader();
          }}
          onPointerEnter={() => void fetchReader()}
          onInput={(event) => tryText(event.currentTarget.value)}
          onBlur={leave}
          onKeyDown={onKeyDown}
        />
        <Show when={!props.plain} fallback={<span class="unit">{unit().unit}</span>}>
          <UnitChoice kind={props.kind} among={fine()} label={props.label} now={unit().unit} />
        </Show>
        <Show when={props.reset}>
          {(reset) => (
            <button
              type="button"
              class="reset"
              title={`Put ${props.label} back`}
              onClick={(event) => {
                setProblem(undefined);
                setNote(undefined);
                props.onState?.(false);
                reset()();
                focusAfter(event, () => field);
              }}
            >
              put back
            </button>
          )}
        </Show>
      </span>
      <Show when={problem() === undefined && props.takeOver}>
        {(takeOver) => (
          <button
            type="button"
            class="reset take-over"
            aria-label={`The same at ours: ${props.label}`}
            onClick={(event) => {
              takeOver()();
              focusAfter(event, () => field);
            }}
          >
            The same at ours
          </button>
        )}
      </Show>
      <Show when={props.slider && (props.range[1] - props.range[0]) / props.step <= SLIDER_STEPS}>
        <input
          class="slide"
          type="range"
          aria-label={`${props.label}, slider`}
          aria-valuetext={`${text()} ${unit().unit}`}
          autocomplete="off"
          min={Math.ceil(props.range[0] / props.step - 1e-9) * props.step}
          max={props.range[1]}
          step={props.step}
          value={props.value ?? props.range[0]}
          onInput={(event) => moveTo(event.currentTarget.valueAsNumber)}
        />
      </Show>
      <Show when={problem()}>
        <p class="problem" id={`${props.id}-problem`}>
          {problem()}
        </p>
      </Show>
      <Show when={note()}>
        <p class="meaning" id={`${props.id}-note`}>
          {note()}
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

/** The unit behind a number: plain where there is one, a choice where there are more; it holds for the kind, everywhere. */
function UnitChoice(props: {
  readonly kind: KindName;
  readonly among: readonly Unit[];
  readonly label: string;
  readonly now: string;
}) {
  return (
    <Show when={props.among.length > 1} fallback={<span class="unit">{props.now}</span>}>
      <select
        class="unit"
        aria-label={`Unit of ${props.label}`}
        autocomplete="off"
        onChange={(event) => chooseUnit(props.kind, event.currentTarget.value)}
      >
        <For each={props.among}>
          {({ unit }) => (
            <option value={unit} selected={props.now === unit}>
              {unit === '' ? 'gravity' : unit}
            </option>
          )}
        </For>
      </select>
    </Show>
  );
}
