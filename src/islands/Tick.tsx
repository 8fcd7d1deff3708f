// A thing to tick, with its words; it shows what stands, also when a tick was not taken.
import type { JSX } from 'solid-js';

export interface TickProps {
  readonly checked: boolean;
  readonly disabled?: boolean;
  readonly take: (isTicked: boolean) => void;
  readonly children: JSX.Element;
}

export function Tick(props: TickProps) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        autocomplete="off"
        checked={props.checked}
        disabled={props.disabled ?? false}
        onChange={({ currentTarget }) => {
          props.take(currentTarget.checked);
          currentTarget.checked = props.checked;
        }}
      />
      <span>{props.children}</span>
    </label>
  );
}
