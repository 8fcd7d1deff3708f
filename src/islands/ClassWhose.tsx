// Whose a record of observed tasks is, asked where its name is not in the class book.
import { createSignal } from 'solid-js';
import { peopleOf, sameName, withThings, type ClassBook } from '../exercises/class/book.ts';
import { freeId, idByName } from '../exercises/class/names.ts';
import { nameOnRecord, readAnyRecord, observedInWords, withSeen } from '../exercises/class/observed.ts';
import type { ObservedRecord } from '../exercises/observed/record.ts';
import { ClassChoice } from './ClassChoice.tsx';

export { readAnyRecord };
const NEW = 'new'; // the choice of a person who is not in the book

interface Put {
  readonly book: ClassBook;
  readonly says: string;
}

/** Puts a record in for the person of an id. */
function putFor(book: ClassBook, id: string, record: ObservedRecord, where?: string): Put {
  const name = peopleOf(book).find((each) => each.id === id)?.name ?? '';
  const { book: next, added, known } = withSeen(book, id, record);
  return { book: next, says: observedInWords(name, added, known, where) };
}
/** Puts a record in for the person whose name it bears; undefined where nobody in the book has it. */
export function putByName(book: ClassBook, record: ObservedRecord, where?: string): Put | undefined {
  const id = idByName(book).get(sameName(nameOnRecord(record)));
  return id === undefined ? undefined : putFor(book, id, record, where);
}
/** Puts a record in for a new person of the name it bears. */
export function putAsNew(book: ClassBook, record: ObservedRecord, where?: string): Put {
  const name = nameOnRecord(record);
  const id = freeId(book, name);
  const put = putFor(withThings(book, { [id]: { is: 'person', name, role: 'trainee' } }), id, record, where);
  return { ...put, says: `${put.says} ${name} is new ${where ?? 'in the class'}.` };
}

export function ClassWhose(props: {
  readonly book: ClassBook;
  readonly record: ObservedRecord;
  readonly done: (put?: Put) => void;
}) {
  const [who, setWho] = createSignal('');
  const name = () => nameOnRecord(props.record);
  const choices = () => [
    ...peopleOf(props.book).map(({ id, name }) => ({ id, text: name })),
    ...(name() === '' ? [] : [{ id: NEW, text: `${name()}, new in the class` }]),
  ];
  return (
    <div role="group" aria-label="Whose record it is">
      <p class="remark">
        {name() === ''
          ? `This record of ${props.record.stage} has no trainee’s name.`
          : `This record of ${props.record.stage} is of ${name()}, who is not in the book.`}{' '}
        Whose is it?
      </p>
      <ClassChoice id="class-whose" label="It is of" value={who()} choices={choices()} choose={setWho} />
      <p class="actions">
        <button
          type="button"
          disabled={who() === ''}
          onClick={() =>
            props.done(
              who() === NEW ? putAsNew(props.book, props.record) : putFor(props.book, who(), props.record),
            )
          }
        >
          Put the tasks in
        </button>
        <button type="button" onClick={() => props.done()}>
          Leave it
        </button>
      </p>
    </div>
  );
}
