// A choice of one of a class book's things, as a person or a sheet.
import { createEffect, For } from 'solid-js';

export function ClassChoice(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly choices: readonly { readonly id: string; readonly text: string }[];
  readonly choose: (id: string) => void;
}) {
  let select: HTMLSelectElement | undefined;
  // Choices that come after the value, or change under it, leave the browser at the first of them.
  createEffect(() => {
    const there = props.choices.some(({ id }) => id === props.value);
    if (select) select.value = there ? props.value : '';
  });
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <select
        ref={select}
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
