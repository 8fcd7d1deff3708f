// The record of observed tasks on paper, with room for the signatures that make it one.
import { For } from 'solid-js';
import { particularNames, particulars, type ObservedRecord } from '../exercises/observed/record.ts';
import { bookStamp } from '../house/book.ts';
import type { TasksOfStage } from './TaskRecord.tsx';

const BLANK = '…………………………………………';

export function TaskPaper(
  props: TasksOfStage & { readonly record: ObservedRecord; readonly houseName: string },
) {
  const rows = () => [
    ...props.tasks.map(({ id, does, see }) => ({ id, text: does, what: 'Task', see: see.join(' ') })),
    ...props.orals.map(({ id, asks }) => ({ id, text: asks, what: 'Question', see: '' })),
  ];
  const seen = (id: string) => props.record.seen[id];
  return (
    <section class="paper record observed-paper">
      <h2>Record of observed tasks: {props.title.toLowerCase()}</h2>
      <table class="observed-about">
        <tbody>
          <For each={particularNames}>
            {(name) => (
              <tr>
                <th scope="row">{particulars[name]}</th>
                <td>{props.record.about[name] || BLANK}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <table class="observed-rows">
        <colgroup>
          <col class="looked-for" />
          <col class="short" />
          <col class="short" />
          <col />
        </colgroup>
        <thead>
          <tr>
            <th colspan="4">
              {props.record.about.trainee || BLANK}, {props.title.toLowerCase()}
            </th>
          </tr>
          <tr>
            <th scope="col">Outcome looked for</th>
            <th scope="col">Done</th>
            <th scope="col">On</th>
            <th scope="col">Evidence</th>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {({ id, text, what, see }) => (
              <tr>
                <th scope="row">
                  <b>
                    {what}: {text}
                  </b>{' '}
                  {see}
                </th>
                <td>{seen(id)?.outcome ?? 'not seen'}</td>
                <td class="number">{seen(id)?.day ?? ''}</td>
                <td>{seen(id)?.note ?? ''}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="small">
        “Alone” means alone, safely and to the standard named above; “prompted” means with a word of help. The
        model answers had the figures of {props.houseName}. Tasks and answers by book {bookStamp}. This record
        says what was seen on the days named. It is no licence and no permission to work alone or to distil:
        those come from the law, the site and whoever it has authorised.
      </p>
      <div class="signatures">
        <p>Trainee, name and date</p>
        <p>Assessor, name, role and date</p>
      </div>
    </section>
  );
}
