// A short field of a walk: a name, a time, minutes, a line. What cannot be is refused in a sentence, and the old one stays.
import { createSignal, Show } from 'solid-js';

export function WalkField(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** Takes what was typed; gives back what is wrong with it. */
  readonly take: (text: string) => string | undefined;
  /** Behind the field, as “min”. */
  readonly unit?: string;
  readonly isWide?: boolean;
  readonly longest?: number;
  readonly meaning?: string;
}) {
  const [problem, setProblem] = createSignal<string>();
  let field: HTMLInputElement | undefined;
  let isTyping = false;
  /** A field that is being typed in keeps what stands in it, whatever becomes of the walk meanwhile. */
  const shown = (value: string) => (isTyping ? field!.value : value);
  return (
    <div classList={{ field: true, wide: props.isWide ?? false }} data-state={problem() ? 'wrong' : 'ok'}>
      <label for={props.id}>
        {props.label}
        {props.unit ? `, ${props.unit}` : ''}
      </label>
      <input
        id={props.id}
        ref={field}
        class="words"
        type="text"
        inputmode={props.unit ? 'numeric' : 'text'}
        autocomplete="off"
        maxlength={props.longest ?? 80}
        aria-invalid={problem() ? 'true' : 'false'}
        aria-describedby={
          problem() ? `${props.id}-problem` : props.meaning ? `${props.id}-meaning` : undefined
        }
        value={shown(props.value)}
        onInput={() => (isTyping = true)}
        onBlur={(event) => {
          if (isTyping) event.currentTarget.value = props.value; // typed, and put as it was
          isTyping = false;
        }}
        onChange={(event) => {
          isTyping = false;
          const wrong = props.take(event.currentTarget.value);
          setProblem(wrong);
          if (wrong === undefined) event.currentTarget.value = props.value;
        }}
      />
      <Show when={props.meaning}>
        <p class="meaning" id={`${props.id}-meaning`}>
          {props.meaning}
        </p>
      </Show>
      <Show when={problem()}>
        <p class="problem" id={`${props.id}-problem`} role="alert">
          {problem()}
        </p>
      </Show>
    </div>
  );
}

/** Reads a whole number between two, or says what it can be. */
export function wholeFrom(
  text: string,
  [low, high]: readonly [number, number],
  what: string,
): number | string {
  const plain = text.trim();
  const number = Number(plain);
  if (/^\d{1,6}$/.test(plain) && number >= low && number <= high) return number;
  return `${what}: it can be a whole number from ${low} to ${high}.`;
}
