// A choice of one of a class book's things, as a person or a sheet.
import { For } from 'solid-js';

export function ClassChoice(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly choices: readonly { readonly id: string; readonly text: string }[];
  readonly choose: (id: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <select
        id={props.id}
        autocomplete="off"
        value={props.value}
        onChange={(event) => props.choose(event.currentTarget.value)}
      >
        {' '}
        <option value="">choose</option>
        <For each={props.choices}>{({ id, text }) => <option value={id}>{text}</option>}</For>
      </select>
    </div>
  );
}
