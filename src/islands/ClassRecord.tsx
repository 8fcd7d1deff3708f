// The record of one person on paper, for an assessor from outside: results, re-sits, tasks and standings with their dates; the name on every page.
import { For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { settingsOf, type ClassBook } from '../exercises/class/book.ts';
import { standingOn } from '../exercises/class/competence.ts';
import {
  modesProve,
  recordOfPerson,
  wayWords,
  type LineOf,
  type RecordSitting,
} from '../exercises/class/of-one-person.ts';
import type { OwnKnown } from '../exercises/class/own-words.ts';
import { wholeRecord } from '../exercises/class/observed.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { particulars } from '../exercises/observed/record.ts';
import { bookStamp as edition } from '../house/book.ts';
import { dateInWords, today } from './today.ts';

/** Tasks and questions by stage and id: what each is called, and what whoever watches a task looks for. */
export type TaskNames = Readonly<
  Record<string, Readonly<Record<string, { readonly name: string; readonly see: readonly string[] }>>>
>;
export interface ClassRecordOf {
  readonly book: ClassBook;
  readonly person: string;
  readonly list: string;
  readonly tasks: TaskNames;
  readonly houseName: string;
  /** Questions of the trainer's own that are known here. */
  readonly own: OwnKnown;
}

const onDay = (day: string) => (day === '' ? 'not said' : dateInWords(day));
const points = (value: number) => formatNumber(value, value % 1 === 0 ? 0 : 1);
const byHand = ['Trainee’s number, or date of birth', 'Sheets set by', 'Invigilated by'];
const countWords = { latest: 'the latest', best: 'the best', first: 'the first' } as const;

export function ClassRecord(props: ClassRecordOf) {
  const one = () => recordOfPerson(props.book, props.person);
  const settings = () => settingsOf(props.book);
  const titles = new Map(kindsOf(props.list).map(({ id, title }) => [id, title]));
  const titled = ({ kinds }: LineOf, number: number) => {
    const kind = kinds[number - 1] ?? '';
    const own = props.own.get(kind)?.title;
    if (own !== undefined) return `${number} ${own}`;
    const title = titles.get(kind);
    return title === undefined ? `question ${number}` : `${number} ${title.toLowerCase()}`;
  };
  const missed = (line: LineOf) =>
    line.missed === undefined
      ? line.result.note
      : [
          ...(line.missed.length > 0 ? [line.missed.map((each) => titled(line, each)).join('; ')] : []),
          ...(line.blank!.length > 0 ? [`Left blank: ${line.blank!.map((each) => titled(line, each)).join('; ')}`] : []), // prettier-ignore
        ].join('. ') || 'none';
  const Lines = (of: { readonly lines: readonly LineOf[] }) => (
    <table class="class-lines">
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Day, attempt</th>
          <th scope="col">Version</th>
          <th scope="col">Marks</th>
          <th scope="col">Mode</th>
          <th scope="col">Missed, or noted</th>
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
                {line.result.minutes === undefined ? '' : `, ${line.result.minutes} min`}
              </td>
              <td>{line.result.version || '–'}</td>
              <td>
                {points(line.got)} of {points(line.of)}
                {line.isPass === undefined
                  ? ', no pass mark'
                  : `, ${line.isPass ? 'pass' : 'not yet'} (pass mark ${line.passMark} %)`}
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
  const Seen = (of: { readonly sitting: RecordSitting }) => {
    const about = () => of.sitting.about;
    return (
      <>
        <p class="class-sitting">
          <b>{about().stage[0]!.toUpperCase() + about().stage.slice(1)}</b>. Assessor:{' '}
          {about().assessor || 'not named'}.{' '}
          <For each={wholeRecord}>
            {(name) => (
              <>
                {particulars[name].split(':')[0]}: {about()[name] || 'not said'}.{' '}
              </>
            )}
          </For>
          <Show when={of.sitting.seen.some(({ outcome }) => outcome !== 'not yet')}>
            Valid until: {about().until || 'no end set'}; nothing that is “not yet” is valid.
          </Show>
        </p>
        <table class="class-tasks">
          <thead>
            <tr>
              <th scope="col">Task or question, and what was looked for</th>
              <th scope="col">Done</th>
              <th scope="col">On</th>
              <th scope="col">Evidence</th>
            </tr>
          </thead>
          <tbody>
            <For each={of.sitting.seen}>
              {(each) => {
                const task = props.tasks[each.stage]?.[each.task];
                return (
                  <tr>
                    <th scope="row">
                      <b>{task?.name ?? each.task}</b> {task?.see.join(' ')}
                    </th>
                    <td>{each.outcome}</td>
                    <td>{dateInWords(each.day)}</td>
                    <td>{each.note}</td>
                  </tr>
                );
              }}
            </For>
          </tbody>
        </table>
      </>
    );
  };
  return (
    <Show when={one()}>
      {(of) => (
        <section class="paper record class-paper">
          <table class="class-every" role="presentation">
            <thead>
              <tr>
                <th>
                  {of().person.name}, {of().person.role}. Class: {settings().name}. House: {props.houseName}.
                  Printed on {dateInWords(today())}, book {edition}.
                </th>
              </tr>
            </thead>
            <tbody>
              <tr>
                <td>
                  <h2>Record of {of().person.name}</h2>
                  <div class="class-by-hand">
                    <For each={byHand}>{(each) => <p>{each}</p>}</For>
                  </div>
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
                    <For each={of().seen}>{(sitting) => <Seen sitting={sitting} />}</For>
                    <p class="small">
                      “Alone” means alone, safely and to the standard named; “prompted” means with a word of
                      help. Below each task is what was looked for. A question is judged by the model answer
                      of the book.
                    </p>
                  </Show>
                  <h3>What others judged</h3>
                  <Show when={of().standings.length > 0} fallback={<p>None.</p>}>
                    <table class="class-judged">
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
                              <td>{dateInWords(each.day)}</td>
                              <td>{each.until === '' ? 'no end set' : dateInWords(each.until)}</td>
                              <td>{standingOn(each, today(), settings().refresher)}</td>
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
