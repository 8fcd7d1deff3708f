// The sheet as it is drawn, one version at a time, with its answers or without.
import { For, Show } from 'solid-js';
import { newsOf } from '../exercises/sheet-news.ts';
import type { DrawnSheet } from './sheet-drawn.ts';
import { SheetPaper } from './SheetPaper.tsx';
import { Tick } from './Tick.tsx';

export function SheetPreview(props: {
  readonly of: DrawnSheet;
  readonly withAnswers: boolean;
  readonly showAnswers: (on: boolean) => void;
}) {
  const { sheet, shown, show, drawn, laid, asked, questions, mark, numbers } = props.of;
  return (
    <section class="screen-only preview" aria-labelledby="preview-title">
      <h2 id="preview-title">The sheet</h2>
      <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field">
          <label for="sheet-shown">Version</label>
          <select
            id="sheet-shown"
            autocomplete="off"
            value={String(shown())}
            onChange={(event) => show(Number(event.currentTarget.value))}
          >
            <For each={numbers()}>{(version) => <option value={String(version)}>{version}</option>}</For>
          </select>
        </div>
        <Tick checked={props.withAnswers} take={props.showAnswers}>
          Show the answers
        </Tick>
      </form>
      <For each={drawn() ? newsOf(drawn()!.of, asked()) : []}>{(each) => <p class="remark">{each}</p>}</For>
      <Show when={laid() > 0}>
        <SheetPaper
          part={props.withAnswers ? 'answers' : 'questions'}
          questions={questions().slice(0, laid())}
          news={[]}
          version={shown()}
          mark={mark()}
          name={sheet().seed}
        />
      </Show>
    </section>
  );
}
