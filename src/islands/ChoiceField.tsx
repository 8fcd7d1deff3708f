// One of a few things; a choice that cannot be is refused in a sentence, and the old one stays.
import { createSignal, For, onMount, Show } from 'solid-js';
import { chosenEarly } from './typed-early.ts';

export interface ChoiceFieldProps {
  readonly id: string;
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly value: string;
  readonly meaning?: string;
  /** Takes the option; returns the sentence to show when it cannot be chosen. */
  readonly take: (value: string) => string | undefined;
}

export function ChoiceField(props: ChoiceFieldProps) {
  const [problem, setProblem] = createSignal<string>();
  const early = chosenEarly(props.id);
  let field: HTMLSelectElement | undefined;
  function choose(option: string): void {
    setProblem(props.take(option));
    field!.value = props.value;
  }
  onMount(() => early !== undefined && choose(early));
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <select
        id={props.id}
        ref={field}
        autocomplete="off"
        aria-invalid={problem() ? 'true' : 'false'}
        aria-describedby={
          problem() ? `${props.id}-problem` : props.meaning ? `${props.id}-meaning` : undefined
        }
        onChange={(event) => choose(event.currentTarget.value)}
      >
        <For each={Object.entries(props.options)}>
          {([value, wording]) => (
            <option value={value} selected={props.value === value}>
              {wording}
            </option>
          )}
        </For>
      </select>
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
