// The results of a sheet on paper, one line each, with places to sign: for the trainer, and for whoever checks the marking.
import { For } from 'solid-js';
import type { SheetResult } from '../exercises/result.ts';
import { bookStamp } from '../house/book.ts';
import { ResultLines, type Column } from './ResultLines.tsx';
import { dateInWords, today } from './today.ts';

export function ResultPaper(props: {
  readonly title: string;
  readonly rules: string;
  readonly results: readonly SheetResult[];
  readonly points: Column;
  readonly outcome: Column;
}) {
  return (
    <section class="paper record result-paper" aria-hidden="true">
      <h2>{props.title}</h2>
      <p>
        {props.rules} Printed on {dateInWords(today())}, by book {bookStamp}.
      </p>
      <ResultLines results={props.results} points={props.points} more={[props.outcome]} />
      <p>
        The machines of those who sat it did the marking. Whoever signs says that these people sat it, where,
        and who was in the room.
      </p>
      <For each={['Trainer', 'Checked by']}>
        {(who) => (
          <p class="who">
            <span>{who}</span> <span>Signed</span> <span>Date</span>
          </p>
        )}
      </For>
      <p class="who">
        <span>Place, and who was in the room</span>
      </p>
    </section>
  );
}
