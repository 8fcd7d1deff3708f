// What has been practised, by stage on the screen, and as a record to print and sign.
import { For, Show } from 'solid-js';
import { changeName, useProgress } from '../browser/progress-store.ts';
import { recordOf, type TopicRecord } from '../exercises/record.ts';
import { bookStamp } from '../house/book.ts';
import type { Listed } from '../exercises/kinds/list.ts';
import { topicTitles } from '../exercises/topics.ts';
import { dateInWords, today } from './today.ts';
import { printPart } from './print-part.ts';

export function RecordSheet(props: { readonly kinds: readonly Listed[] }) {
  const { mounted, progress, name } = useProgress();
  const records = () => recordOf(progress(), props.kinds);
  const begun = () => records().filter(({ practised }) => practised.length > 0);
  return (
    <>
      <section class="screen-only record-so-far" aria-labelledby="so-far-title">
        <h2 id="so-far-title">So far</h2>
        <div class="table" tabindex="0" role="group" aria-label="So far, by stage">
          <table>
            <thead>
              <tr>
                <th scope="col">Topic</th>
                <th scope="col">Kinds of question met</th>
                <th scope="col">Answers right</th>
                <th scope="col">Known well</th>
              </tr>
            </thead>
            <tbody>
              <For each={records()}>
                {(record) => (
                  <tr>
                    <th scope="row">
                      <a href={`#topic=${record.topic}`}>{topicTitles[record.topic]}</a>
                    </th>
                    <td class="number">
                      {record.practised.length} of {record.kinds}
                    </td>
                    <td class="number">
                      {record.right} of {record.answers}
                    </td>
                    <td class="number">{record.known}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p>
          A kind counts as known well when its last answers were right often enough to rest it for eight days
          or more.
        </p>
        <div class="field">
          <label for="record-name">Name on the record</label>
          <input
            id="record-name"
            class="words"
            type="text"
            maxlength="60"
            autocomplete="off"
            value={name()}
            onInput={(event) => changeName(event.currentTarget.value)}
          />
        </div>
        <p class="actions">
          <button type="button" onClick={() => printPart('record')}>
            Print the record to sign
          </button>
        </p>
      </section>
      <section class="paper record" aria-hidden="true">
        <h2>Record of practice</h2>
        <p>
          {name() || '…………………………………………'}, {mounted() ? dateInWords(today()) : ''}
        </p>
        <Show when={begun().length > 0} fallback={<p>Nothing has been practised yet.</p>}>
          <For each={begun()}>{(record) => <RecordTable record={record} />}</For>
        </Show>
        <p class="small">
          “Right” counts right answers. “Half”, under Last, is a right number with the wrong unit or rounding.
          The record shows practice with this book, and is no permission to work alone or to distil.{' '}
          {`Book ${bookStamp}.`}
        </p>
        <div class="signatures">
          <p>Trainee, name and date</p>
          <p>Trainer, name and date</p>
        </div>
      </section>
    </>
  );
}

function RecordTable(props: { readonly record: TopicRecord }) {
  return (
    <table>
      <caption>{topicTitles[props.record.topic]}</caption>
      <thead>
        <tr>
          <th scope="col">Practised</th>
          <th scope="col">Answers</th>
          <th scope="col">Right</th>
          <th scope="col">Last</th>
          <th scope="col">On</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.record.practised}>
          {(each) => (
            <tr>
              <th scope="row">{each.title}</th>
              <td class="number">{each.answers}</td>
              <td class="number">{each.right}</td>
              <td>{each.last === 'right' ? 'right' : each.last === 'wrong' ? 'not yet' : 'half'}</td>
              <td>{dateInWords(each.day)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
