// Single results put right: taken out, or given to the person whose they are.
import { createSignal, For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { peopleOf, withoutThing, type ClassBook } from '../exercises/class/book.ts';
import { grid, resultScore } from '../exercises/class/counts.ts';
import { withResultGiven } from '../exercises/class/names.ts';
import { ClassChoice } from './ClassChoice.tsx';
import { ClassUndo, takenOut, type UndoableStep } from './ClassUndo.tsx';
import { focusAfter } from './focus-after.ts';
import { dateInWords } from './today.ts';

const points = (value: number) => formatNumber(value, value % 1 === 0 ? 0 : 1);

export function ClassMend(props: { readonly book: ClassBook; readonly change: (book: ClassBook) => void }) {
  const [whose, setWhose] = createSignal('');
  const [to, setTo] = createSignal('');
  const [done, setDone] = createSignal<UndoableStep>({ says: '' });
  let top: HTMLElement | undefined;
  const people = () => peopleOf(props.book).map(({ id, name }) => ({ id, text: name }));
  const nameOf = (id: string) => people().find((each) => each.id === id)?.text;
  const results = () =>
    (grid(props.book).find((row) => row[0]?.person.id === whose()) ?? []).flatMap(({ work, all }) =>
      all.map((result) => {
        const { got, of } = resultScore(result, work);
        const day = result.day === '' ? 'day not said' : dateInWords(result.day);
        return { id: result.id, says: `${work.title}, ${day}, attempt ${result.attempt}: ${points(got)} of ${points(of)}` }; // prettier-ignore
      }),
    );
  const isOther = () => nameOf(to()) !== undefined && to() !== whose();
  const takeOut = (event: Event, id: string, says: string) => {
    const next = withoutThing(props.book, id);
    props.change(next);
    setDone(takenOut(next, `“${says}” of ${nameOf(whose())} is taken out.`));
    focusAfter(event, () => top);
  };
  const give = (event: Event, id: string, says: string) => {
    const [from, other] = [whose(), to()];
    const [was, now] = [nameOf(from), nameOf(other)];
    props.change(withResultGiven(props.book, id, other));
    setDone({
      says: `“${says}” is ${now}’s now, and no longer ${was}’s.`,
      undone: (book) => {
        const entry = Object.hasOwn(book.entries, id) ? book.entries[id] : undefined;
        const back =
          entry?.is === 'result' && entry.person === other ? withResultGiven(book, id, from) : book;
        return back === book ? undefined : { book: back, says: `“${says}” is ${was}’s again.` };
      },
    });
    focusAfter(event, () => top);
  };
  return (
    <details class="class-mend">
      <summary ref={top}>Take a result out, or give it to somebody else</summary>
      <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <ClassChoice
          id="mend-whose"
          label="Whose results"
          value={whose()}
          choices={people()}
          choose={setWhose}
        />
        <ClassChoice
          id="mend-to"
          label="To give one to"
          value={to()}
          choices={people().filter(({ id }) => id !== whose())}
          choose={setTo}
        />
      </form>
      <ClassUndo book={props.book} done={done()} change={props.change} say={setDone} id="mend-said" />
      <Show when={nameOf(whose()) !== undefined}>
        <ul class="class-list">
          <For each={results()} fallback={<li>{nameOf(whose())} has no result.</li>}>
            {({ id, says }) => (
              <li>
                <span>{says}</span>
                <span class="class-do">
                  <button type="button" onClick={(event) => takeOut(event, id, says)}>
                    Take out <span class="visually-hidden">{says}</span>
                  </button>
                  <Show when={isOther()}>
                    <button type="button" onClick={(event) => give(event, id, says)}>
                      Give to {nameOf(to())} <span class="visually-hidden">{says}</span>
                    </button>
                  </Show>
                </span>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <p class="small">
        The same code pasted again changes nothing, wherever its result stands; one that was taken out comes
        back.
      </p>
    </details>
  );
}
