// The trainer's table of results, from the codes that trainees hand in; what reads them comes with the first.
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';

const fetchReader = async () => ({
  ...(await import('./results-read.ts')),
  ...(await import('./ResultRows.tsx')),
});
const KEY = storageKey('result-codes');

export function ResultTable(props: { readonly mark: string }) {
  const [text, setText] = createSignal('');
  const [isKept, setKept] = createSignal(true);
  const [reader, setReader] = createSignal<Awaited<ReturnType<typeof fetchReader>>>();
  const [isLost, setLost] = createSignal(false);
  onMount(() => {
    setText(keptText(KEY) ?? '');
    addEventListener('storage', ({ key, newValue }) => key === KEY && setText(newValue ?? ''));
  });
  createEffect(() => {
    if (text().trim() !== '' && !reader())
      void fetchReader().then(
        (here) => setReader(() => here),
        () => setLost(true),
      );
  });
  const read = createMemo(() => reader()?.resultsIn(text()));
  const results = () => read()?.results ?? [];
  const problems = () => [
    ...(isKept() ? [] : ['This browser does not keep the codes; save the table before you close the page.']),
    ...(isLost() && !reader()
      ? ['A part of the book did not come; load the page again, and the codes are as they were.']
      : []),
    ...(read()?.problems ?? []),
  ];
  const take = (next: string) => {
    setText(next);
    setKept(keepText(KEY, next));
  };

  return (
    <section class="screen-only results-in" aria-labelledby="results-title">
      <h2 id="results-title">Results that came back</h2>
      <p>Paste the codes that trainees hand in, one below another. They are kept in this browser only.</p>
      <div class="field codes">
        <label for="result-codes">Result codes</label>
        <textarea
          id="result-codes"
          rows="5"
          autocomplete="off"
          spellcheck={false}
          aria-invalid={problems().length > 0 ? 'true' : 'false'}
          aria-describedby="result-problems"
          value={text()}
          onInput={(event) => take(event.currentTarget.value)}
        />
      </div>
      <div id="result-problems" role="status">
        <Show when={results().length > 0}>
          <p>{results().length === 1 ? '1 result is read.' : `${results().length} results are read.`}</p>
        </Show>
        <For each={read()?.notes}>{(note) => <p>{note}</p>}</For>
        <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
      </div>
      <Show when={results().length > 0 && reader()} keyed>
        {(here) => <here.ResultRows results={results()} mark={props.mark} />}
      </Show>
    </section>
  );
}
