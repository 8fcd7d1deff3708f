// Whose record is printed from the class book; the paper itself comes when it is asked for.
import { createSignal, Show, type Component } from 'solid-js';
import { peopleOf } from '../exercises/class/book.ts';
import { useHouse } from '../browser/house-store.ts';
import type { OwnKnown } from '../exercises/class/own-words.ts';
import { ClassChoice } from './ClassChoice.tsx';
import { ownQuestionsKnown } from './class-own.ts';
import type { ClassRecordOf } from './ClassRecord.tsx';
import { printPart } from './print-part.ts';

export function ClassPrint(props: Omit<ClassRecordOf, 'person' | 'houseName' | 'own'>) {
  const { name } = useHouse();
  const [chosen, setChosen] = createSignal<string>();
  const [Paper, setPaper] = createSignal<Component<ClassRecordOf>>();
  const [own, setOwn] = createSignal<OwnKnown>(new Map());
  const [isPrinting, setPrinting] = createSignal(false);
  const [said, setSaid] = createSignal('');
  const people = () => peopleOf(props.book);
  /** Before anybody is chosen it is the first trainee. */
  const who = () => chosen() ?? (people().find(({ role }) => role === 'trainee') ?? people()[0])?.id ?? '';
  const one = () => people().find(({ id }) => id === who());
  const print = async () => {
    const part = await import('./ClassRecord.tsx').catch(() => undefined);
    if (!part) return void setSaid('A part of the book did not come; load the page again.');
    setSaid('');
    setOwn(await ownQuestionsKnown(props.book).catch(() => new Map()));
    setPaper(() => part.ClassRecord);
    setPrinting(true);
    addEventListener('afterprint', () => setPrinting(false), { once: true });
    printPart('record');
  };
  return (
    <>
      <section class="calculator class-part screen-only" aria-labelledby="class-print">
        <h2 id="class-print">One person on paper</h2>
        <p>All that the book has of one person, for whoever assesses from outside, with places to sign.</p>
        <ClassChoice
          id="class-print-who"
          label="Whose record"
          value={who()}
          choices={people().map(({ id, name }) => ({ id, text: name }))}
          choose={setChosen}
        />
        <p class="actions">
          <button type="button" disabled={!one()} onClick={() => void print()}>
            {one() ? `Print the record of ${one()!.name}` : 'Choose whose record to print'}
          </button>
        </p>
        <p role="status">{said()}</p>
      </section>
      <Show when={isPrinting() && Paper()} keyed>
        {(Record) => <Record {...props} person={who()} houseName={name()} own={own()} />}
      </Show>
    </>
  );
}
