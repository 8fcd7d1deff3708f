// Whether two names that are almost alike are one person. It is here with the page, so that it is asked as soon as the names stand there.
import { createSignal, Show } from 'solid-js';
import type { ClassBook } from '../exercises/class/book.ts';
import { alikePeople, withPeopleJoined, withPeopleApart } from '../exercises/class/names.ts';
import { ClassUndo, takenOut, type UndoableStep } from './ClassUndo.tsx';
import { focusAfter } from './focus-after.ts';

/** Asks once of two names that are almost alike; one question at a time. */
export function AlikeAsked(props: {
  readonly book: ClassBook;
  readonly change: (book: ClassBook, says?: string) => void;
}) {
  const [done, setDone] = createSignal<UndoableStep>({ says: '' });
  const pairs = () => alikePeople(props.book);
  const answer = (event: Event, book: ClassBook, done: UndoableStep) => {
    props.change(book);
    setDone(done);
    focusAfter(event, () => document.querySelector<HTMLElement>('#class-alike button, h2#class-results'));
  };
  return (
    <div id="class-alike" class="screen-only">
      <Show when={pairs()[0]} keyed>
        {([later, earlier]) => (
          <div role="group" aria-label={`Is ${later.name} the same as ${earlier.name}?`}>
            <p class="remark">
              Is {later.name} the same as {earlier.name}?
              {pairs().length > 1 ? ` After this there are ${pairs().length - 1} more to ask.` : ''}
            </p>
            <p class="actions">
              <button
                type="button"
                onClick={(event) => {
                  const next = withPeopleJoined(props.book, later.id, earlier.id);
                  answer(event, next, takenOut(next, `${later.name} is ${earlier.name}: all results are kept under one name.`)); // prettier-ignore
                }}
              >
                Yes
              </button>
              <button
                type="button"
                onClick={(event) =>
                  answer(event, withPeopleApart(props.book, later, earlier), {
                    says: `${later.name} and ${earlier.name} are two people.`,
                  })
                }
              >
                No
              </button>
            </p>
          </div>
        )}
      </Show>
      <ClassUndo book={props.book} done={done()} change={props.change} say={setDone} />
    </div>
  );
}
