// Says that this browser keeps nothing of what a page would keep, where that is so.
import { Show } from 'solid-js';

export function NotKept(props: {
  readonly isKept: boolean;
  /** What is not kept, as “your walk”. */
  readonly what: string;
}) {
  return (
    <Show when={!props.isKept}>
      <p class="problem">
        This browser does not let the handbook keep {props.what}; that lasts until the page is closed.
      </p>
    </Show>
  );
}
