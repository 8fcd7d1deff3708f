// The results of a sheet on paper, one line each, with places to sign: for the trainer, and for whoever checks the marking.
import { For } from 'solid-js';
import { book } from '../house/book.ts';
import { inWords, today } from './today.ts';

export interface ResultLine {
  readonly name: string;
  readonly version: number;
  readonly day: string | undefined;
  readonly attempt: number | undefined;
  /** “7.5 of 10”. */
  readonly points: string;
  readonly missed: string;
  readonly outcome: string;
}

export function ResultPaper(props: {
  readonly title: string;
  readonly rules: string;
  readonly lines: readonly ResultLine[];
}) {
  return (
    <section class="paper record result-paper" aria-hidden="true">
      <h2>{props.title}</h2>
      <p>
        {props.rules} Printed on {inWords(today())}, by book {book}.
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">Name</th>
            <th scope="col">Version</th>
            <th scope="col">Day and attempt</th>
            <th scope="col">Points</th>
            <th scope="col">Missed</th>
            <th scope="col">Outcome</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.lines}>
            {(line) => (
              <tr>
                <th scope="row">{line.name || 'no name'}</th>
                <td class="number">{line.version}</td>
                <td>
                  {line.day === undefined ? 'not said' : `${inWords(line.day)}, attempt ${line.attempt}`}
                </td>
                <td class="number">{line.points}</td>
                <td>{line.missed}</td>
                <td>{line.outcome}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
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
