// The place of a worked example: what it needs is fetched once the reader begins.
import { createSignal, Show, type JSX } from 'solid-js';

export function WorkedOpen(props: {
  readonly kind: string;
  readonly title: string;
  readonly onDone: () => void;
}) {
  const [open, setOpen] = createSignal<() => JSX.Element>();
  async function begin(): Promise<void> {
    try {
      const [{ default: Fades }, { fetchedKind }] = await Promise.all([
        import('./WorkedFades.tsx'),
        import('../exercises/kinds/fetched-kinds.ts'),
      ]);
      const fetched = await fetchedKind(props.kind);
      setOpen(() => () => <Fades kind={props.kind} fetched={fetched} onDone={props.onDone} />);
      queueMicrotask(() => document.getElementById('worked-title')?.focus());
    } catch {
      document.documentElement.dataset['script'] = 'lost';
    }
  }
  return (
    <section class="calculator path-worked" aria-labelledby="worked">
      <h2 id="worked">Worked example: {props.title}</h2>
      <Show
        when={open()}
        fallback={
          <>
            <p>
              Three times with other numbers: with the working, with its end left to you, and on your own.
            </p>
            <p class="actions">
              <button type="button" onClick={() => void begin()}>
                Begin the worked example
              </button>
            </p>
          </>
        }
      >
        {(view) => view()()}
      </Show>
    </section>
  );
}
