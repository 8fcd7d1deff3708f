// The three things that are printed of a sheet, in all its versions: what the buttons say, and what stands on the page while it prints.
import { createSignal, For, Show, type JSX } from 'solid-js';
import type { PrintedPart } from './PaperQuestion.tsx';
import { printPart } from './print-part.ts';

export const printButtonTitles: Readonly<Record<PrintedPart, string>> = {
  questions: 'Print the questions',
  answers: 'Print the answers with working',
  key: 'Print the marking key',
};

/** A button for each thing that can be printed. */
export function PrintButtons(props: {
  readonly versions: number;
  readonly isReady: boolean;
  readonly print: (part: PrintedPart) => void;
}) {
  return (
    <For each={Object.entries(printButtonTitles) as [PrintedPart, string][]}>
      {([part, title]) => (
        <button type="button" disabled={!props.isReady} onClick={() => props.print(part)}>
          {title}
          {props.versions > 1 ? `, all ${props.versions} versions` : ''}
        </button>
      )}
    </For>
  );
}

/** What is on the page while it prints, and a function that prints versions; the pages of each version are numbered by themselves but in a marking key. */
export function usePrintedVersions<T>() {
  const [printing, setPrinting] = createSignal<{
    readonly part: PrintedPart;
    readonly versions: readonly T[];
  }>();
  const print = async (part: PrintedPart, versions: readonly T[], name: string) => {
    setPrinting({ part, versions });
    if (part !== 'key') (await import('./version-pages.ts')).footPages(name, versions.length);
    printPart('sheet');
    addEventListener('afterprint', () => setPrinting(undefined), { once: true });
  };
  const Printed = (props: {
    readonly children: (version: T, number: number, part: PrintedPart) => JSX.Element;
  }) => (
    <Show when={printing()}>
      {(now) => (
        <div class="paper sheet">
          <For each={now().versions}>{(version, i) => props.children(version, i() + 1, now().part)}</For>
        </div>
      )}
    </Show>
  );
  return { print, Printed };
}
