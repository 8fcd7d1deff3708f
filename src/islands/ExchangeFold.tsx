// The fold that keeps a sheet for other systems: it stands from the first, and what it holds comes when it is opened.
import { createSignal, lazy, Show } from 'solid-js';
import type { ExchangeProps } from './Exchange.tsx';

const Exchange = lazy(() => import('./Exchange.tsx').then((part) => ({ default: part.Exchange })));

export function ExchangeFold(props: ExchangeProps & { readonly isReady: boolean }) {
  const [isOpen, setOpen] = createSignal(false);
  return (
    <details class="exchange" onToggle={(event) => event.currentTarget.open && setOpen(true)}>
      <summary>For another system, or a table</summary>
      <Show when={isOpen() && props.isReady}>
        <Exchange {...props} />
      </Show>
    </details>
  );
}
