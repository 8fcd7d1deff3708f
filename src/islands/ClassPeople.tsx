// The people of a class, and the sheets, shifts and tasks that were set for it.
import { createSignal, For, Show, type JSX } from 'solid-js';
import { entryId, peopleOf, roles, withoutThing, withThings, workKinds, worksOf, type ClassBook, type Role, type Thing, type WorkKind } from '../exercises/class/book.ts'; // prettier-ignore
import { withNames } from '../exercises/class/names-put.ts';
import { LONGEST_BOOK_LINE } from '../exercises/class/text.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { fetchSheetAt } from './class-sheets-fetched.ts';
import { ClassUndo, takenOut, type UndoableStep } from './ClassUndo.tsx';
import { focusAfter } from './focus-after.ts';
import { dateInWords, today } from './today.ts';

const roleWords: Readonly<Record<Role, string>> = { trainee: 'Trainee', trainer: 'Trainer', assessor: 'Assessor' }; // prettier-ignore
const kindWords: Readonly<Record<WorkKind, string>> = { sheet: 'Sheet', shift: 'Shift', task: 'Tasks', other: 'Other' }; // prettier-ignore

export function ClassPeople(props: {
  readonly book: ClassBook;
  readonly change: (book: ClassBook, says?: string) => void;
  readonly list: string;
  /** What is asked of names that are almost alike. */
  readonly alike: JSX.Element;
  /** What belongs below the names. */
  readonly children: JSX.Element;
}) {
  const [names, setNames] = createSignal('');
  const [role, setRole] = createSignal<Role>('trainee');
  const [address, setAddress] = createSignal('');
  const [title, setTitle] = createSignal('');
  const [kind, setKind] = createSignal<WorkKind>('task');
  const [problem, setProblem] = createSignal('');
  const [put, setPut] = createSignal<UndoableStep>({ says: '' }); // what came of the names
  const [done, setDone] = createSignal<UndoableStep>({ says: '' }); // what came of what was set
  let heading: HTMLHeadingElement | undefined;
  const addPeople = () => {
    const { book, says } = withNames(props.book, names(), role());
    setNames('');
    if (book !== props.book) props.change(book);
    setPut({ says });
  };
  const addSheet = async () => {
    setProblem('');
    setDone({ says: '' });
    const found = await fetchSheetAt(address(), props.list, today());
    if (typeof found === 'string') return void setProblem(found);
    const there = worksOf(props.book).find(({ mark }) => mark === found.mark);
    const work = there ? { ...found, day: there.day } : found;
    setAddress('');
    props.change(withThings(props.book, { [there?.id ?? entryId('work', found.mark, '')]: work }));
    setDone({ says: `“${found.title}” is in the book${there ? ', with what each of its versions asks' : ''}.` }); // prettier-ignore
  };
  const addOther = () => {
    const name = oneLine(title()).slice(0, LONGEST_BOOK_LINE).trim();
    if (name === '') return void setProblem('Give it a title first.');
    setTitle('');
    setProblem('');
    const work: Thing = { is: 'work', kind: kind(), title: name, day: today(), mark: '', address: '', passMark: 0, marks: [], kinds: [] }; // prettier-ignore
    props.change(withThings(props.book, { [entryId('work', '', name)]: work }));
    setDone({ says: `“${name}” is in the book.` });
  };
  const remove = (id: string, name: string, event: Event, say: (done: UndoableStep) => void) => {
    const next = withoutThing(props.book, id);
    props.change(next);
    say(takenOut(next, `“${name}” is taken out, with the results that hang on it.`));
    focusAfter(event, () => heading);
  };

  return (
    <section class="calculator class-part screen-only" aria-labelledby="class-people">
      <h2 id="class-people" tabindex="-1" ref={heading}>
        People, and what was set
      </h2>
      <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field own-line">
          <label for="class-names">Names, with commas between them</label>
          <input
            id="class-names"
            class="words"
            type="text"
            autocomplete="off"
            value={names()}
            onInput={(event) => setNames(event.currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="class-role">They are</label>
          <select
            id="class-role"
            autocomplete="off"
            value={role()}
            onChange={(event) => setRole(event.currentTarget.value as Role)}
          >
            {' '}
            <For each={roles}>{(each) => <option value={each}>{roleWords[each]}</option>}</For>
          </select>
        </div>
        <p class="actions">
          <button type="button" disabled={names().trim() === ''} onClick={addPeople}>
            Put them in
          </button>
        </p>
      </form>
      <ClassUndo book={props.book} done={put()} change={props.change} say={setPut} id="class-people-said" />
      {props.alike}
      <Show when={peopleOf(props.book).length > 0}>
        <ul class="class-list">
          <For each={peopleOf(props.book)}>
            {({ id, name, role }) => (
              <li>
                <span>
                  {name}, {roleWords[role].toLowerCase()}
                </span>
                <button type="button" onClick={(event) => remove(id, name, event, setPut)}>
                  Take out {name}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
      {props.children}
      <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field own-line">
          <label for="class-address">A sheet that was set: its link</label>
          <input
            id="class-address"
            class="words"
            type="text"
            autocomplete="off"
            value={address()}
            aria-describedby="class-work-problem"
            onInput={(event) => setAddress(event.currentTarget.value)}
          />
        </div>
        <p class="actions">
          <button type="button" disabled={address().trim() === ''} onClick={() => void addSheet()}>
            Put the sheet in
          </button>
        </p>
        <div class="field own-line">
          <label for="class-title-of">Something else: its title</label>
          <input
            id="class-title-of"
            class="words"
            type="text"
            maxlength={LONGEST_BOOK_LINE}
            autocomplete="off"
            value={title()}
            onInput={(event) => setTitle(event.currentTarget.value)}
          />
        </div>
        <div class="field">
          <label for="class-kind-of">It is</label>
          <select
            id="class-kind-of"
            autocomplete="off"
            value={kind()}
            onChange={(event) => setKind(event.currentTarget.value as WorkKind)}
          >
            {' '}
            <For each={workKinds.filter((each) => each !== 'sheet')}>
              {(each) => <option value={each}>{kindWords[each]}</option>}
            </For>
          </select>
        </div>
        <p class="actions">
          <button type="button" disabled={title().trim() === ''} onClick={addOther}>
            Put it in
          </button>
        </p>
        <p id="class-work-problem" role="status" class="problem">
          {problem()}
        </p>
      </form>
      <ClassUndo book={props.book} done={done()} change={props.change} say={setDone} />
      <Show when={worksOf(props.book).length > 0}>
        <ul class="class-list">
          <For each={worksOf(props.book)}>
            {(work) => (
              <li>
                <span>
                  {kindWords[work.kind]}{' '}
                  <Show when={work.address} fallback={`“${work.title}”`}>
                    <a href={`../${work.address}`}>“{work.title}”</a>
                  </Show>
                  , {dateInWords(work.day)}
                  {work.mark === '' ? '' : `, ${work.mark}`}
                  {work.kind === 'sheet' && work.kinds.length === 0
                    ? '. What it asks is not known here: put its link in above.'
                    : ''}
                </span>
                <button type="button" onClick={(event) => remove(work.id, work.title, event, setDone)}>
                  Take out “{work.title}”
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
