// Chooses a sheet to be sealed, with a title, a time and a pass mark where it has none.
import { createSignal, For, Show } from 'solid-js';
import { TextFileField } from './TextFileField.tsx';
import type { SheetToSeal } from './sealed-source.ts';

const LONGEST_OWN = 400_000; // bytes of a sheet's file that are read, as own-text.ts has it

/** What a trainer types of a sheet that is to be sealed. */
export interface SealingTyped {
  readonly title: string;
  readonly minutes: string;
  readonly passMark: string;
}

function RuleField(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly set: (text: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="words"
        type="text"
        inputmode="numeric"
        maxlength="4"
        autocomplete="off"
        aria-describedby="sealed-said"
        value={props.value}
        onInput={(event) => props.set(event.currentTarget.value)}
      />
    </div>
  );
}

export function SealedChoose(props: {
  readonly source: SheetToSeal;
  readonly say: (sentence: string) => void;
  readonly seal: (typed: SealingTyped) => void;
}) {
  const { titles, chosen, address, isChosen, about, choose } = props.source;
  const [title, setTitle] = createSignal('');
  const [minutes, setMinutes] = createSignal('');
  const [passMark, setPassMark] = createSignal('');
  return (
    <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <Show when={titles().length > 0}>
        <div class="field">
          <label for="sealed-kept">A sheet of your own</label>
          <select
            id="sealed-kept"
            autocomplete="off"
            value={chosen()}
            onChange={(event) => choose({ title: event.currentTarget.value })}
          >
            <option value="">by its link or file</option>
            <For each={titles()}>{(title) => <option value={title}>{title}</option>}</For>
          </select>
        </div>
      </Show>
      <div class="field own-line">
        <label for="sealed-address">
          {titles().length > 0 ? 'Or the link of a sheet' : 'The link of a sheet'}
        </label>
        <input
          id="sealed-address"
          class="words"
          type="text"
          autocomplete="off"
          value={address()}
          onInput={(event) => choose({ address: event.currentTarget.value })}
        />
      </div>
      <Show when={chosen() === '' && address().trim() !== ''}>
        <div class="field own-line">
          <label for="sealed-title">What the trainees see as its title</label>
          <input
            id="sealed-title"
            class="words"
            type="text"
            maxlength="60"
            autocomplete="off"
            value={title()}
            onInput={(event) => setTitle(event.currentTarget.value)}
          />
        </div>
      </Show>
      <TextFileField
        id="sealed-own-file"
        label="Or a sheet of your own from a file"
        most={LONGEST_OWN}
        what="a sheet"
        saidBy="sealed-said"
        take={async (text) => {
          const { readOwnSheet } = await import('../exercises/own/own-text.ts');
          const read = readOwnSheet(text);
          if (typeof read === 'string') return props.say(read);
          choose({ own: read });
          props.say(
            `“${read.title || 'A sheet'}” is read from the file. It is sealed when you press the button.`,
          );
        }}
        tell={props.say}
      />
      <Show when={about()?.minutes === 0}>
        <RuleField
          id="sealed-minutes"
          label="Minutes allowed, empty for no limit"
          value={minutes()}
          set={setMinutes}
        />
      </Show>
      <Show when={about()?.passMark === 0}>
        <RuleField
          id="sealed-pass"
          label="Pass mark in % of the marks, empty for none"
          value={passMark()}
          set={setPassMark}
        />
      </Show>
      <Show when={about()?.warning}>
        <p class="remark" role="alert">
          {about()!.warning}
        </p>
      </Show>
      <p class="actions">
        <button
          type="button"
          disabled={!isChosen()}
          onClick={() => props.seal({ title: title(), minutes: minutes(), passMark: passMark() })}
        >
          {about()?.warning ? 'Seal it as it is' : 'Draw it anew and seal it'}
        </button>
      </p>
    </form>
  );
}
