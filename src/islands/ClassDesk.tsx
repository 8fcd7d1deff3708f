// The class book: kept in this browser and as a file, with people, what was set, results, what is confused and who is competent until when.
import { createSignal, lazy, onMount, Show, Suspense } from 'solid-js';
import { entriesOfKind, freshBook, joinedBooks, peopleOf, settingsOf, SETTINGS, countings, withThings, type ClassBook, type Counting, type Settings } from '../exercises/class/book.ts'; // prettier-ignore
import { withPutBack, hasTakenOut } from '../exercises/class/put-back.ts';
import { withJoinedFollowed } from '../exercises/class/names.ts';
import { bookText, LONGEST_BOOK, LONGEST_PERSON_NAME, readBook } from '../exercises/class/text.ts';
import type { ObservedRecord } from '../exercises/observed/record.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { randomId, keepBook, keptBook, onBookChanged, openBook, otherBooks } from './class-kept.ts';
import { AlikeAsked } from './ClassAlike.tsx';
import { ClassPeople } from './ClassPeople.tsx';
import { ClassResults } from './ClassResults.tsx';
import type { TaskNames } from './ClassRecord.tsx';
import { fileNameOf } from './file-name.ts';
import { TextFileField } from './TextFileField.tsx';
import { saveFile } from './save-file.ts';

const ClassConfuses = lazy(() =>
  import('./ClassConfuses.tsx').then((part) => ({ default: part.ClassConfuses })),
);
const ClassMend = lazy(() => import('./ClassMend.tsx').then((part) => ({ default: part.ClassMend })));
const ClassNames = lazy(() => import('./ClassNames.tsx').then((part) => ({ default: part.ClassNames })));
const ClassPrint = lazy(() => import('./ClassPrint.tsx').then((part) => ({ default: part.ClassPrint })));
const ClassSeen = lazy(() => import('./ClassObserved.tsx').then((part) => ({ default: part.ClassObserved })));
const ClassMatrix = lazy(() => import('./ClassMatrix.tsx').then((part) => ({ default: part.ClassMatrix }))); // prettier-ignore

const OBSERVED = 'malt-spirit-handbook/observed-record'; // what the file of a record of observed tasks says it is
const ofTasks = () => import('./ClassWhose.tsx');

const countingWords: Readonly<Record<Counting, string>> = {
  latest: 'the latest counts',
  best: 'the best counts',
  first: 'the first counts',
};

export default function ClassDesk(props: { readonly list: string; readonly tasks: TaskNames }) {
  const [book, setBook] = createSignal<ClassBook>(freshBook('000000000000'));
  const [said, setSaid] = createSignal('');
  const [ready, setReady] = createSignal(false);
  const [askIn, setAskIn] = createSignal<'people' | 'results'>('people');
  const [others, setOthers] = createSignal<ReturnType<typeof otherBooks>>([]);
  const [asked, setAsked] = createSignal<{ readonly record: ObservedRecord; readonly part: Awaited<ReturnType<typeof ofTasks>> }>(); // prettier-ignore
  const settings = () => settingsOf(book());
  const take = ({ book: next, problems }: ReturnType<typeof keptBook>) => {
    setBook(next);
    if (problems.length > 0) setSaid(problems.join(' '));
    setOthers(otherBooks(next.id));
  };
  onMount(() => {
    take(keptBook());
    setReady(true);
    onBookChanged(() => book().id, ({ book: theirs, problems }) => {
      if (problems.length > 0) setSaid(problems.join(' '));
      setBook(withJoinedFollowed(joinedBooks(book(), theirs)));
    }); // prettier-ignore
  });
  const change = (next: ClassBook, says = '') => {
    const { book: both, isKept } = keepBook(next);
    setBook(both);
    setSaid(isKept ? says : `${says} This browser does not keep the book: save it to a file before you close the page.`.trim()); // prettier-ignore
  };
  const set = (part: Partial<Settings>) => change(withThings(book(), { [SETTINGS]: { ...plain(settings()), ...part } })); // prettier-ignore
  const putBack = () => {
    const { book: next, says } = withPutBack(book());
    change(next, says);
  };
  /** What changes the book in a part of the page, where names that are almost alike are then asked about. */
  const changeIn = (part: 'people' | 'results') => (next: ClassBook, says?: string) => {
    setAskIn(part);
    change(next, says);
  };
  const Alike = (of: { readonly part: 'people' | 'results' }) => (
    <Show when={askIn() === of.part && peopleOf(book()).length > 1}>
      <AlikeAsked book={book()} change={change} />
    </Show>
  );
  const save = () => {
    const file = fileNameOf(settings().name, 'class');
    saveFile(file, bookText(book()), 'application/json');
    setSaid(`The book is saved as ${file}.`);
  };
  const openRecord = async (text: string) => {
    setAsked(undefined);
    const part = await ofTasks().catch(() => undefined);
    if (!part) return void setSaid('A part of the book did not come; load the page again.');
    const record = part.readAnyRecord(text);
    if (typeof record === 'string') return void setSaid(record);
    const put = part.putByName(book(), record);
    if (put) return change(put.book, put.says);
    setSaid('');
    setAsked({ record, part });
  };
  const open = (text: string) => {
    if (text.slice(0, 1000).includes(OBSERVED)) return void openRecord(text);
    const read = readBook(text);
    if (typeof read === 'string') return void setSaid(read);
    const isSame = read.book.id === book().id;
    change(isSame ? withJoinedFollowed(joinedBooks(book(), read.book)) : read.book);
    setOthers(otherBooks(read.book.id));
    setSaid([isSame ? 'The file is of this book: both are put together, and of each entry the later stands.' : `“${settings().name}” is open.`, ...read.problems].join(' ')); // prettier-ignore
  };

  return (
    <>
      <section class="calculator class-book screen-only" aria-labelledby="class-title">
        <h2 id="class-title">The book</h2>
        <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <div class="field">
            <label for="class-name">Name of the class</label>
            <input
              id="class-name"
              class="words"
              type="text"
              maxlength={LONGEST_PERSON_NAME}
              autocomplete="off"
              value={settings().name}
              onChange={(event) => {
                const name = oneLine(event.currentTarget.value);
                if (name !== '') set({ name });
                event.currentTarget.value = settings().name;
              }}
            />
          </div>
          <div class="field">
            <label for="class-counts">Of several results of one person</label>
            <select
              id="class-counts"
              autocomplete="off"
              value={settings().counts}
              onChange={(event) => set({ counts: event.currentTarget.value as Counting })}
            >
              {countings.map((each) => (
                <option value={each}>{countingWords[each]}</option>
              ))}
            </select>
          </div>
          <TextFileField
            id="class-file"
            label="Open a class book, or a record of observed tasks"
            most={LONGEST_BOOK}
            what="a class book"
            saidBy="class-said"
            take={open}
            tell={setSaid}
          />
        </form>
        <p class="actions">
          <button type="button" onClick={save}>
            Save the book to a file
          </button>
          <button
            type="button"
            onClick={() => {
              change(freshBook(randomId()), 'A new book is open; the one before stays in this browser.');
              setOthers(otherBooks(book().id));
            }}
          >
            Begin a new book
          </button>
          {others().map(({ id, name }) => (
            <button type="button" onClick={() => take(openBook(id))}>
              Open “{name}”
            </button>
          ))}
          <Show when={hasTakenOut(book())}>
            <button type="button" onClick={putBack}>
              Put back what was taken out or joined last
            </button>
          </Show>
        </p>
        <p id="class-said" role="status">
          {said()}
        </p>
        <Show when={asked()} keyed>
          {(now) => (
            <now.part.ClassWhose
              book={book()}
              record={now.record}
              done={(put?: { readonly book: ClassBook; readonly says: string }) => {
                setAsked(undefined);
                if (put) change(put.book, put.says);
              }}
            />
          )}
        </Show>
      </section>
      <Show when={ready()}>
        <ClassPeople
          book={book()}
          change={changeIn('people')}
          list={props.list}
          alike={<Alike part="people" />}
        >
          <Suspense>
            <Show when={peopleOf(book()).length > 0}>
              <ClassNames book={book()} change={change} />
            </Show>
          </Suspense>
        </ClassPeople>
        <ClassResults
          book={book()}
          change={changeIn('results')}
          list={props.list}
          mend={
            <Suspense>
              <Show when={entriesOfKind(book(), 'result').length > 0}>
                <ClassMend book={book()} change={change} />
              </Show>
            </Suspense>
          }
        >
          <Alike part="results" />
        </ClassResults>
        <Suspense>
          {/* What only a book with people needs comes with the first of them. */}
          <Show when={peopleOf(book()).length > 0}>
            <ClassConfuses book={book()} list={props.list} />
            <ClassSeen book={book()} />
            <ClassMatrix book={book()} change={change} set={set} />
            <ClassPrint book={book()} list={props.list} tasks={props.tasks} />
          </Show>
        </Suspense>
      </Show>
    </>
  );
}

/** Settings without the stamp that an entry has. */
const plain = ({ name, counts, refresher }: Settings): Settings => ({ is: 'settings', name, counts, refresher }); // prettier-ignore
