// A field that may be left empty: its text, and one sentence when that cannot be used.
import { createSignal, Show } from 'solid-js';
import { useAnnouncement } from './announce.ts';

export interface StockFieldProps {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly problem?: string | undefined;
  readonly meaning?: string | undefined;
  /** A number gets the keys of a number, and stands to the right. */
  readonly isNumber?: boolean;
  readonly isDay?: boolean;
  /** The list of what is usually given. */
  readonly list?: string | undefined;
  readonly take: (text: string) => void;
  /** Keeps what stands now, and returns how to put it back so. */
  readonly keep?: () => () => void;
}

export function StockField(props: StockFieldProps) {
  let field: HTMLInputElement | undefined;
  let putBack: (() => void) | undefined;
  const [draft, setDraft] = createSignal<string>(); // as it is being typed, until it is taken and left
  useAnnouncement(
    props.id,
    () => props.problem,
    () => props.problem ?? '',
    () => field,
  );
  return (
    <div class="field" data-state={props.problem ? 'wrong' : 'ok'}>
      <label for={props.id}>{props.label}</label>
      <input
        ref={field}
        id={props.id}
        type={props.isDay ? 'date' : 'text'}
        inputmode={props.isNumber ? 'decimal' : undefined}
        list={props.list}
        maxlength="60"
        autocomplete="off"
        spellcheck={false}
        value={draft() ?? props.text}
        aria-invalid={props.problem ? 'true' : 'false'}
        aria-describedby={
          props.problem ? `${props.id}-problem` : props.meaning ? `${props.id}-meaning` : undefined
        }
        onInput={(event) => {
          setDraft(event.currentTarget.value);
          props.take(event.currentTarget.value);
          if (props.problem) putBack?.(); // what was taken on the way to it
        }}
        onFocus={() => (putBack = props.keep?.())}
        onBlur={() => !props.problem && setDraft(undefined)}
      />
      <Show when={props.problem}>
        <p class="problem" id={`${props.id}-problem`}>
          {props.problem}
        </p>
      </Show>
      <Show when={props.meaning && !props.problem}>
        <p class="meaning" id={`${props.id}-meaning`}>
          {props.meaning}
        </p>
      </Show>
    </div>
  );
}
