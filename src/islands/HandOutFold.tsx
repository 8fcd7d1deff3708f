// The fold that says who gets which version: it stands from the first, and what it holds comes when it is opened.
import { createSignal, lazy, Show } from 'solid-js';
import type { HandOutProps } from './HandOut.tsx';

const HandOut = lazy(() => import('./HandOut.tsx').then((part) => ({ default: part.HandOut })));

export function HandOutFold(props: HandOutProps & { readonly isReady: boolean }) {
  const [isOpen, setOpen] = createSignal(false);
  return (
    <details class="exchange" onToggle={(event) => event.currentTarget.open && setOpen(true)}>
      <summary>Who gets which version</summary>
      <Show when={isOpen() && props.isReady}>
        <HandOut {...props} />
      </Show>
    </details>
  );
}
