// The record of one person on paper, for an assessor from outside: results, re-sits, tasks and standings with their dates; the name on every page.
import { For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { settingsOf, type ClassBook } from '../exercises/class/book.ts';
import { stateOn } from '../exercises/class/competence.ts';
import { modesProve, ofOne, wayWords, type LineOf } from '../exercises/class/of-one.ts';
import { kindsOf } from '../exercises/kinds/later.ts';
import { book as edition } from '../house/book.ts';
import { inWords, today } from './today.ts';

/** The names of tasks and questions, by stage and id. */
export type TaskNames = Readonly<Record<string, Readonly<Record<string, string>>>>;
export interface ClassRecordOf {
  readonly book: ClassBook;
  readonly person: string;
  readonly list: string;
  readonly tasks: TaskNames;
}

const onDay = (day: string) => (day === '' ? 'not said' : inWords(day));
const points = (value: number) => formatNumber(value, value % 1 === 0 ? 0 : 1);
const countWords = { latest: 'the latest', best: 'the best', first: 'the first' } as const;

export function ClassRecord(props: ClassRecordOf) {
  const one = () => ofOne(props.book, props.person);
  const settings = () => settingsOf(props.book);
  const titles = new Map(kindsOf(props.list).map(({ id, title }) => [id, title]));
  const titled = ({ kinds }: LineOf, number: number) => {
    const title = titles.get(kinds[number - 1] ?? '');
    return title === undefined ? String(number) : `${number} ${title.toLowerCase()}`;
  };
  const missed = (line: LineOf) =>
    line.missed === undefined
      ? line.result.note
      : [
          line.missed.length > 0 ? line.missed.map((each) => titled(line, each)).join('; ') : 'none',
          ...(line.blank!.length > 0 ? [`left blank: ${line.blank!.join(', ')}`] : []),
        ].join('. ');
  const Lines = (of: { readonly lines: readonly LineOf[] }) => (
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Day, attempt</th>
          <th scope="col">Version</th>
          <th scope="col">Marks</th>
          <th scope="col">Mode</th>
          <th scope="col">Questions missed</th>
        </tr>
      </thead>
      <tbody>
        <For each={of.lines}>
          {(line) => (
            <tr>
              <th scope="row">
                {line.title}
                {line.mark === '' || line.title.includes(line.mark) ? '' : ` (${line.mark})`}
              </th>
              <td>
                {onDay(line.result.day)}, attempt {line.result.attempt}
              </td>
              <td>{line.result.version || '–'}</td>
              <td>
                {points(line.got)} of {points(line.of)}
                {line.isPass === undefined ? '' : line.isPass ? ', pass' : ', not yet'}
                {line.counts ? '' : ' (does not count)'}
              </td>
              <td>{wayWords[line.result.way]}</td>
              <td>{missed(line)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
  return (
    <Show when={one()}>
      {(of) => (
        <section class="paper record class-paper">
          <table class="class-every" role="presentation">
            <thead>
              <tr>
                <th>
                  {of().person.name}, {of().person.role}. Class: {settings().name}. Printed on{' '}
                  {inWords(today())}, book {edition}.
                </th>
              </tr>
            </thead>
            <tbody>
              <tr>
                <td>
                  <h2>Record of {of().person.name}</h2>
                  <h3>Results</h3>
                  <Show when={of().first.length > 0} fallback={<p>None.</p>}>
                    <Lines lines={of().first} />
                  </Show>
                  <h3>Re-sits and later attempts</h3>
                  <Show when={of().again.length > 0} fallback={<p>None.</p>}>
                    <Lines lines={of().again} />
                    <p class="small">
                      Of several results for one thing, {countWords[settings().counts]} counts.
                    </p>
                  </Show>
                  <p class="small">{modesProve.join(' ')}</p>
                  <h3>Tasks and questions seen</h3>
                  <Show when={of().seen.length > 0} fallback={<p>None.</p>}>
                    <table>
                      <thead>
                        <tr>
                          <th scope="col">Task or question</th>
                          <th scope="col">Stage</th>
                          <th scope="col">Done</th>
                          <th scope="col">On</th>
                          <th scope="col">Assessor</th>
                          <th scope="col">Valid until, evidence</th>
                        </tr>
                      </thead>
                      <tbody>
                        <For each={of().seen}>
                          {(each) => (
                            <tr>
                              <th scope="row">{props.tasks[each.stage]?.[each.task] ?? each.task}</th>
                              <td>{each.stage}</td>
                              <td>{each.outcome}</td>
                              <td>{inWords(each.day)}</td>
                              <td>{each.assessor || 'not named'}</td>
                              <td>{[each.until || 'no end set', each.note].filter(Boolean).join('; ')}</td>
                            </tr>
                          )}
                        </For>
                      </tbody>
                    </table>
                  </Show>
                  <h3>What others judged</h3>
                  <Show when={of().standings.length > 0} fallback={<p>None.</p>}>
                    <table>
                      <thead>
                        <tr>
                          <th scope="col">Can do</th>
                          <th scope="col">Judged on</th>
                          <th scope="col">Valid until</th>
                          <th scope="col">State today</th>
                          <th scope="col">Assessor</th>
                          <th scope="col">Evidence</th>
                        </tr>
                      </thead>
                      <tbody>
                        <For each={of().standings}>
                          {(each) => (
                            <tr>
                              <th scope="row">{each.outcome}</th>
                              <td>{inWords(each.day)}</td>
                              <td>{each.until === '' ? 'no end set' : inWords(each.until)}</td>
                              <td>{stateOn(each, today(), settings().refresher)}</td>
                              <td>{each.assessor || 'not named'}</td>
                              <td>{each.evidence}</td>
                            </tr>
                          )}
                        </For>
                      </tbody>
                    </table>
                  </Show>
                  <p class="small">
                    This record says what was written down on the days named. It is no licence and no
                    permission to work alone or to distil: those come from the law, the site and whoever it
                    has authorised.
                  </p>
                  <div class="signatures">
                    <p>Assessor, name, role and date</p>
                    <p>{of().person.name}, signed, and date</p>
                  </div>
                </td>
              </tr>
            </tbody>
          </table>
        </section>
      )}
    </Show>
  );
}
