// The matrix of competence: outcomes by people, on a day that can be chosen, with the end of validity and the day from which a refresher is due.
import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  entriesOfKind,
  entryId,
  peopleOf,
  settingsOf,
  withoutThing,
  withThings,
  type ClassBook,
  type Settings,
  type StandingOutcome,
} from '../exercises/class/book.ts';
import { FIRST_OUTCOMES, matrixOn, monthsAfter, outcomesOf, standingsTable, stateSigns, type HeldOutcome } from '../exercises/class/competence.ts'; // prettier-ignore
import { LONGEST_BOOK_LINE } from '../exercises/class/text.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { ClassChoice } from './ClassChoice.tsx';
import { ClassUndo, takenOut, type UndoableStep } from './ClassUndo.tsx';
import { focusAfter } from './focus-after.ts';
import { saveFile } from './save-file.ts';
import { dateInWords, today } from './today.ts';

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const blank = () => ({
  outcome: '',
  day: today(),
  until: monthsAfter(today(), 24),
  assessor: '',
  evidence: '',
});

export function ClassMatrix(props: {
  readonly book: ClassBook;
  readonly change: (book: ClassBook, says?: string) => void;
  readonly set: (part: Partial<Settings>) => void;
}) {
  const [on, setOn] = createSignal(today());
  const [person, setPerson] = createSignal('');
  const [given, setGiven] = createSignal(blank());
  const [problem, setProblem] = createSignal('');
  const [put, setPut] = createSignal(''); // what came of it
  const [out, setOut] = createSignal<UndoableStep>({ says: '' });
  let heading: HTMLHeadingElement | undefined;
  const rows = createMemo(() => matrixOn(props.book, on()));
  const outcomes = () => outcomesOf(props.book);
  const write = () => {
    const { day, until } = given();
    const [outcome, assessor, evidence] = [given().outcome, given().assessor, given().evidence].map(oneLine) as [string, string, string]; // prettier-ignore
    if (!peopleOf(props.book).some(({ id }) => id === person())) return void setProblem('Choose a person.');
    if (outcome === '') return void setProblem('Say what the person can do.');
    if (!DAY.test(day) || (until !== '' && (!DAY.test(until) || until < day)))
      return void setProblem('Give the day it was judged, and a last day of validity that is not before it.');
    setProblem('');
    setOut({ says: '' });
    const id = entryId('standing', person(), outcome, day, until, assessor, evidence);
    setGiven(blank());
    props.change(withThings(props.book, { [id]: { is: 'standing', person: person(), outcome, day, until, assessor, evidence } })); // prettier-ignore
    setPut('It stands in the matrix.');
  };
  const standings = () =>
    entriesOfKind(props.book, 'standing').filter(({ person }) => nameOf(person) !== undefined);
  const nameOf = (id: string) => peopleOf(props.book).find((each) => each.id === id)?.name;
  const sayOf = ({ person, outcome, day, until, assessor }: StandingOutcome) =>
    `${nameOf(person)}: ${outcome}, judged on ${dateInWords(day)}${until === '' ? '' : `, until ${dateInWords(until)}`}${assessor === '' ? '' : `, by ${assessor}`}`;
  const cellText = ({ state, standing, refresherFrom }: HeldOutcome) =>
    standing === undefined
      ? ''
      : `${state}${standing.until === '' ? ', no end set' : ` until ${dateInWords(standing.until)}`}${refresherFrom !== '' && state === 'valid' ? `, refresher from ${dateInWords(refresherFrom)}` : ''}`;
  const field = (name: keyof ReturnType<typeof blank>, label: string, type = 'text', list?: string) => (
    <div class={type === 'date' ? 'field' : 'field own-line'}>
      <label for={`matrix-${name}`}>{label}</label>
      <input
        id={`matrix-${name}`}
        class="words"
        type={type}
        list={list}
        maxlength={LONGEST_BOOK_LINE}
        autocomplete="off"
        aria-describedby="matrix-problem"
        value={given()[name]}
        onInput={(event) => setGiven({ ...given(), [name]: event.currentTarget.value })}
      />
    </div>
  );

  return (
    <section class="calculator class-part" aria-labelledby="class-matrix">
      <h2 id="class-matrix" tabindex="-1" ref={heading}>
        Who may be counted on for what
      </h2>
      <p>
        It keeps what somebody judged, and judges nothing itself. Your site’s procedures say who may work
        alone; local rules on permits and licences come before both.
      </p>
      <Show when={peopleOf(props.book).length > 0}>
        <details class="screen-only">
          <summary>Write down that somebody can do something</summary>
          <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            <ClassChoice
              id="matrix-person"
              label="Who"
              value={person()}
              choices={peopleOf(props.book).map(({ id, name }) => ({ id, text: name }))}
              choose={setPerson}
            />
            {field('outcome', 'Can do what: a stage, or in your words', 'text', 'matrix-outcomes')}
            <datalist id="matrix-outcomes">
              <For each={[...new Set([...FIRST_OUTCOMES, ...outcomes()])]}>
                {(each) => <option value={each} />}
              </For>
            </datalist>
            {field('day', 'Judged on', 'date')}
            {field('until', 'Valid until', 'date')}
            {field('assessor', 'By whom, and with what authority')}
            {field('evidence', 'On what evidence: sheets, tasks, shifts')}
            <p class="actions">
              <button type="button" onClick={write}>
                Put it in
              </button>
            </p>
            <p id="matrix-problem" role="status" class="problem">
              {problem()}
            </p>
            <p role="status">{put()}</p>
          </form>
        </details>
      </Show>
      <Show when={outcomes().length > 0} fallback={<p>Nothing is written down yet.</p>}>
        <p class="class-printed">As it stands on {dateInWords(on())}.</p>
        <form class="choices screen-only" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <div class="field">
            <label for="matrix-on">As it stands on</label>
            <input
              id="matrix-on"
              class="words"
              type="date"
              autocomplete="off"
              value={on()}
              onChange={(event) => DAY.test(event.currentTarget.value) && setOn(event.currentTarget.value)}
            />{' '}
          </div>
          <div class="field">
            <label for="matrix-weeks">Weeks before the end from which a refresher is due</label>
            <input
              id="matrix-weeks"
              class="words"
              type="number"
              min="0"
              max="52"
              autocomplete="off"
              value={settingsOf(props.book).refresher}
              onChange={(event) => {
                const weeks = Math.round(Number(event.currentTarget.value));
                if (weeks >= 0 && weeks <= 52) props.set({ refresher: weeks });
                event.currentTarget.value = String(settingsOf(props.book).refresher);
              }}
            />
          </div>
        </form>
        <div class="table" tabindex="0" role="group" aria-label="Matrix of competence">
          <table class="class-matrix">
            <thead>
              <tr>
                <th scope="col">Name</th>
                <For each={outcomes()}>{(outcome) => <th scope="col">{outcome}</th>}</For>
              </tr>
            </thead>
            <tbody>
              <For each={rows()}>
                {(row) => (
                  <tr>
                    <th scope="row">{row[0]!.person.name}</th>
                    <For each={row}>
                      {(held) => (
                        <td data-state={held.state}>
                          <b aria-hidden="true">{stateSigns[held.state]}</b> {cellText(held)}
                          <Show when={held.state === 'none'}>
                            <span class="visually-hidden">none</span>
                          </Show>
                        </td>
                      )}
                    </For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="small">
          ● valid, ◐ a refresher is due, ○ expired, – none. Choose another day to see years gone by or to
          come.
        </p>
        <div class="screen-only">
          <details>
            <summary>What was written down, to take out what is wrong</summary>
            <ul class="class-list">
              <For each={standings()}>
                {(each) => (
                  <li>
                    <span>{sayOf(each)}</span>
                    <button
                      type="button"
                      onClick={(event) => {
                        const next = withoutThing(props.book, each.id);
                        props.change(next);
                        setOut(takenOut(next, `“${sayOf(each)}” is taken out.`));
                        focusAfter(event, () => heading);
                      }}
                    >
                      Take out <span class="visually-hidden">{sayOf(each)}</span>
                    </button>
                  </li>
                )}
              </For>
            </ul>
          </details>
        </div>
        <p class="actions screen-only">
          <button
            type="button"
            onClick={() =>
              saveFile('competence.csv', standingsTable(props.book, on()), 'text/csv;charset=utf-8')
            }
          >
            Save all that was written down as CSV
          </button>
        </p>
      </Show>
      <div class="screen-only">
        <ClassUndo book={props.book} done={out()} change={props.change} say={setOut} />
      </div>
    </section>
  );
}
