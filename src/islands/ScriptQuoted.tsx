// What helps in typing a few figures: one chosen by name, the rest of the reader's own house, and a clean slate.
import { For } from 'solid-js';
import type { Line } from '../core/line/line.ts';
import {
  quotableFigures,
  quotableNames,
  type Quoted,
  type QuotableName,
} from '../core/cross-check/quoted.ts';
import { focusAfter } from './focus-after.ts';
import { filledIn, withLine } from './script-quoted.ts';

export function ScriptQuoted(props: {
  readonly text: () => string;
  readonly told: () => Quoted;
  readonly line: () => Line;
  readonly put: (text: string) => void;
  readonly box: () => HTMLTextAreaElement | undefined;
}) {
  const told = () => Object.keys(props.told()) as QuotableName[];
  return (
    <div class="actions">
      <select
        id="quoted-add"
        aria-label="Add a figure by its name"
        autocomplete="off"
        onChange={(event) => {
          const name = event.currentTarget.value as QuotableName;
          event.currentTarget.value = '';
          if (!Object.hasOwn(quotableFigures, name)) return;
          props.put(`${withLine(props.text(), quotableFigures[name].label)}: `);
          queueMicrotask(() => {
            const box = props.box()!;
            box.focus();
            box.setSelectionRange(box.value.length, box.value.length);
          });
        }}
      >
        <option value="">Add a figure …</option>
        <For each={quotableNames.filter((name) => !(name in props.told()))}>
          {(name) => <option value={name}>{quotableFigures[name].label}</option>}
        </For>
      </select>
      <button type="button" onClick={() => props.put(filledIn(props.text(), told(), props.line()))}>
        Fill in the rest from my house
      </button>
      <button
        type="button"
        onClick={(event) => {
          props.put('');
          focusAfter(event, props.box);
        }}
      >
        Clear all
      </button>
    </div>
  );
}
