// Results of a class: pasted many at once or written down, shown as a picture of who × what and as the table that says the same.
import { createMemo, createSignal, For, lazy, Show, Suspense, type JSX } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import {
  entryId,
  peopleOf,
  settingsOf,
  withThings,
  worksOf,
  type ClassBook,
  type Got,
} from '../exercises/class/book.ts';
import {
  alikeResults,
  grid,
  resultsTable,
  resultScore as scoredBy,
  type Cell,
  type Scored,
} from '../exercises/class/counts.ts';
import { withPasted } from '../exercises/class/taken.ts';
import type { Doubtful } from '../exercises/class/whose.ts';
import { fetchSheetAt } from './class-sheets-fetched.ts';
import { ClassChoice } from './ClassChoice.tsx';
import { keptNameList } from './handed-list.ts';
import { saveFile } from './save-file.ts';
import { sheetsSet } from './sheets-set.ts';
import { dateInWords, today } from './today.ts';

const ClassDoubtful = lazy(() => import('./ClassDoubtful.tsx').then((part) => ({ default: part.ClassDoubtful }))); // prettier-ignore

const [SIDE, GAP, NAMES, HEAD] = [26, 4, 130, 24]; // of the picture, in its own units
const LONGEST_SHOWN = 18; // signs of a name beside the picture
const points = (value: number) => formatNumber(value, value % 1 === 0 ? 0 : 1);
const cellText = ({ scored, all, counts, work }: Cell) =>
  !scored || !counts
    ? 'none'
    : `${markText(counts, scored)}${all.length > 1 ? `, ${onDay(counts)}; ${besideIt(all, counts, work)}` : ''}`;

const markText = ({ way }: Got, { got, of, isPass }: Scored) =>
  `${points(got)} of ${points(of)}${isPass === undefined ? '' : isPass ? ', pass' : ', not yet'}${way === 'sealed' ? ', sealed' : ''}`;
const onDay = ({ day, attempt }: Got) =>
  `${day === '' ? 'day not said' : dateInWords(day)}, attempt ${attempt}`;
/** The result beside the one that counts: the first, or the latest where the first counts. */
function besideIt(all: Cell['all'], counts: Got, work: Cell['work']): string {
  const isFirst = all[0] === counts;
  const other = isFirst ? all.at(-1)! : all[0]!;
  const more = all.length > 2 ? `; ${all.length} in all` : '';
  return `${isFirst ? 'latest' : 'first'}: ${markText(other, scoredBy(other, work))}, ${onDay(other)}${more}`;
}

/** Who × what: each square filled as far as the points go; a tick for a pass, a dash where there is nothing. */
function Picture(props: { readonly rows: readonly (readonly Cell[])[] }) {
  const across = () => props.rows[0]?.length ?? 0;
  const size = () => [NAMES + across() * (SIDE + GAP), HEAD + props.rows.length * (SIDE + GAP)] as const;
  return (
    <svg
      class="class-picture"
      role="img"
      aria-label="Who has done what, and how far; the table below says the same"
      viewBox={`0 0 ${size()[0]} ${size()[1]}`}
      width={size()[0]}
    >
      <For each={props.rows[0] ?? []}>
        {(_, column) => (
          <text x={NAMES + column() * (SIDE + GAP) + SIDE / 2} y={HEAD - 8} text-anchor="middle">
            {column() + 1}
          </text>
        )}
      </For>
      <For each={props.rows}>
        {(row, at) => (
          <g transform={`translate(0 ${HEAD + at() * (SIDE + GAP)})`}>
            <text x="0" y={SIDE / 2 + 5}>
              {row[0]!.person.name.length > LONGEST_SHOWN
                ? `${row[0]!.person.name.slice(0, LONGEST_SHOWN - 1)}…`
                : row[0]!.person.name}
            </text>
            <For each={row}>
              {(cell, column) => (
                <g transform={`translate(${NAMES + column() * (SIDE + GAP)} 0)`}>
                  <Show
                    when={cell.scored}
                    fallback={
                      <text class="nothing" x={SIDE / 2} y={SIDE / 2 + 5} text-anchor="middle">
                        –
                      </text>
                    }
                  >
                    {(scored) => (
                      <>
                        <rect class="frame" width={SIDE} height={SIDE} />
                        <rect
                          class="got"
                          y={SIDE * (1 - scored().share)}
                          width={SIDE}
                          height={SIDE * scored().share}
                        />
                        <Show when={scored().isPass}>
                          <path class="tick" d="M6 14 l5 5 l9 -12" />
                        </Show>
                      </>
                    )}
                  </Show>
                </g>
              )}
            </For>
          </g>
        )}
      </For>
    </svg>
  );
}

export function ClassResults(props: {
  readonly book: ClassBook;
  readonly change: (book: ClassBook, says?: string) => void;
  readonly list: string;
  /** What puts single results right. */
  readonly mend: JSX.Element;
  /** What is asked once results are in. */
  readonly children: JSX.Element;
}) {
  const [pasted, setPasted] = createSignal('');
  const [notes, setNotes] = createSignal<readonly string[]>([]);
  const [doubtful, setDoubtful] = createSignal<readonly Doubtful[]>([]);
  const [hand, setHand] = createSignal(''); // what came of the result written by hand
  const [person, setPerson] = createSignal('');
  const [work, setWork] = createSignal('');
  const [written, setWritten] = createSignal({ day: '', got: '', of: '', attempt: '1' });
  const rows = createMemo(() => grid(props.book).filter((row) => row.length > 0));
  const heads = () => worksOf(props.book);

  const take = async () => {
    const known = sheetsSet();
    const { book, notes, doubtful } = withPasted(props.book, pasted(), today(), (mark) => known.find((each) => each.mark === mark), (mark) => keptNameList(mark) ?? ''); // prettier-ignore
    setNotes(notes);
    setDoubtful(doubtful);
    setPasted('');
    await changeWith(book);
  };
  const changeWith = async (book: ClassBook) => {
    props.change(book);
    // What a sheet asks is drawn once it is known where it is.
    for (const { id, address, kinds, kind, day } of worksOf(book)) {
      if (kind !== 'sheet' || kinds.length > 0 || address === '' || address.startsWith('sheet/sealed/'))
        continue;
      const found = await fetchSheetAt(address, props.list, day);
      if (typeof found !== 'string') props.change(withThings(props.book, { [id]: { ...found, day } }));
    }
  };
  const write = () => {
    const { day, got, of, attempt } = written();
    const [points, whole, time] = [got, of, attempt].map((each) => Number(each.replace(',', '.')));
    const isSound = peopleOf(props.book).some(({ id }) => id === person()) && heads().some(({ id }) => id === work()) && got !== '' && points! >= 0 && whole! > 0 && points! <= whole! && whole! <= 100_000 && Number.isInteger(time) && time! >= 1 && time! <= 35; // prettier-ignore
    if (!isSound)
      return void setHand('Choose a person and what was done, and write points of how many, as 7.5 of 10.');
    const id = entryId('result', person(), work(), 0, time!, day, points!, whole!);
    setWritten({ day: '', got: '', of: '', attempt: '1' });
    props.change(withThings(props.book, { [id]: { is: 'result', person: person(), work: work(), day: day || today(), attempt: time!, version: 0, signs: '', answers: '', got: points!, of: whole!, way: 'hand', note: '' } })); // prettier-ignore
    setHand('The result is in the book.');
  };
  const field = (name: 'day' | 'got' | 'of' | 'attempt', label: string, type = 'text') => (
    <div class="field">
      <label for={`class-${name}`}>{label}</label>
      <input
        id={`class-${name}`}
        class="words"
        type={type}
        autocomplete="off"
        maxlength="10"
        value={written()[name]}
        onInput={(event) => setWritten({ ...written(), [name]: event.currentTarget.value })}
      />
    </div>
  );

  return (
    <section class="calculator class-part" aria-labelledby="class-results">
      <h2 id="class-results" tabindex="-1">
        Results
      </h2>
      <div class="screen-only">
        <div class="field codes">
          <label for="class-pasted">
            Result codes, and lines of shifts and of the fault desk, one below another
          </label>
          <textarea
            id="class-pasted"
            rows="4"
            autocomplete="off"
            spellcheck={false}
            aria-describedby="class-notes"
            value={pasted()}
            onInput={(event) => setPasted(event.currentTarget.value)}
          />
        </div>
        <p class="actions">
          <button type="button" disabled={pasted().trim() === ''} onClick={() => void take()}>
            Take them into the book
          </button>
        </p>
        <div id="class-notes" role="status">
          <For each={notes()}>{(note) => <p>{note}</p>}</For>
        </div>
        <Suspense>
          <Show when={doubtful().length > 0}>
            <ClassDoubtful
              doubtful={doubtful()}
              book={() => props.book}
              answer={(rest, says, book) => {
                setDoubtful(rest);
                setNotes([says]);
                if (book) void changeWith(book);
              }}
            />
          </Show>
        </Suspense>
        {props.children}
        <p class="small">
          A code is marked by the trainee’s own machine, and its day is by that machine’s clock. A name before
          it counts: “Una: r2-…”. A line of a shift or of the fault desk needs one: “Una: Case 26, house …”.
        </p>
        <Show when={heads().length > 0 && peopleOf(props.book).length > 0}>
          <details>
            <summary>Write a result down by hand</summary>
            <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
              <ClassChoice
                id="class-person"
                label="Who"
                value={person()}
                choices={peopleOf(props.book).map(({ id, name }) => ({ id, text: name }))}
                choose={setPerson}
              />
              <ClassChoice
                id="class-work"
                label="What"
                value={work()}
                choices={heads().map(({ id, title }) => ({ id, text: title }))}
                choose={setWork}
              />
              {field('got', 'Points')}
              {field('of', 'Of')}
              {field('attempt', 'Attempt')}
              {field('day', 'Day', 'date')}
              <p class="actions">
                <button type="button" onClick={write}>
                  Put the result in
                </button>
              </p>
              <p role="status">{hand()}</p>
            </form>
          </details>
        </Show>
      </div>
      <For each={alikeResults(props.book)}>{(note) => <p class="remark">{note}</p>}</For>
      <Show when={rows().length > 0} fallback={<p>Nothing yet.</p>}>
        <div class="table" tabindex="0" role="group" aria-label="Who has done what, as a picture">
          <Picture rows={rows()} />
        </div>
        <p class="small">
          A square is filled as far as the points go. A tick is a pass, a dash is nothing yet. Of several
          results, the {settingsOf(props.book).counts} counts.
        </p>
        <div class="table" tabindex="0" role="group" aria-label="Who has done what">
          <table>
            <thead>
              <tr>
                <th scope="col">Name</th>
                <For each={heads()}>
                  {({ title, day }, i) => (
                    <th scope="col">
                      {i() + 1}. {title}, {dateInWords(day)}
                    </th>
                  )}
                </For>
              </tr>
            </thead>
            <tbody>
              <For each={rows()}>
                {(row) => (
                  <tr>
                    <th scope="row">{row[0]!.person.name}</th>
                    <For each={row}>{(cell) => <td>{cellText(cell)}</td>}</For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <div class="screen-only">{props.mend}</div>
        <p class="actions screen-only">
          <button
            type="button"
            onClick={() => saveFile('class-results.csv', resultsTable(props.book), 'text/csv;charset=utf-8')}
          >
            Save all results as CSV
          </button>
        </p>
      </Show>
    </section>
  );
}
