// The names of a class: people renamed, or joined by hand.
import { createSignal } from 'solid-js';
import { peopleOf, type ClassBook } from '../exercises/class/book.ts';
import { withPeopleJoined, withPersonRenamed } from '../exercises/class/names.ts';
import { LONGEST_PERSON_NAME } from '../exercises/class/text.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { ClassChoice } from './ClassChoice.tsx';
import { ClassUndo, takenOut, type UndoableStep } from './ClassUndo.tsx';

interface Props {
  readonly book: ClassBook;
  readonly change: (book: ClassBook, says?: string) => void;
}

/** Renames a person, or joins them to another. */
export function ClassNames(props: Props) {
  const [person, setPerson] = createSignal('');
  const [other, setOther] = createSignal('');
  const [name, setName] = createSignal('');
  const [done, setDone] = createSignal<UndoableStep>({ says: '' });
  const setSaid = (says: string) => setDone({ says });
  const choices = () => peopleOf(props.book).map(({ id, name }) => ({ id, text: name }));
  const nameOf = (id: string) => peopleOf(props.book).find((each) => each.id === id)?.name;
  const rename = () => {
    const wanted = oneLine(name()).slice(0, LONGEST_PERSON_NAME).trim();
    const was = nameOf(person());
    const next = withPersonRenamed(props.book, person(), wanted);
    if (typeof next === 'string') return void setSaid(next);
    props.change(next);
    setName('');
    setSaid(`${was} is called ${wanted} now.`);
  };
  const join = () => {
    const [goes, stays] = [nameOf(person()), nameOf(other())];
    if (!goes || !stays || goes === stays) return void setSaid('Choose two people.');
    const next = withPeopleJoined(props.book, person(), other());
    props.change(next);
    setPerson('');
    setOther('');
    setDone(takenOut(next, `All that ${goes} had stands under ${stays} now.`));
  };
  return (
    <details>
      <summary>Rename somebody, or join two that are one</summary>
      <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <ClassChoice id="names-person" label="Who" value={person()} choices={choices()} choose={setPerson} />
        <div class="field">
          <label for="names-new">New name</label>
          <input
            id="names-new"
            class="words"
            type="text"
            maxlength={LONGEST_PERSON_NAME}
            autocomplete="off"
            aria-describedby="names-said"
            value={name()}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </div>
        <p class="actions">
          <button type="button" onClick={rename}>
            Rename
          </button>
        </p>
        <ClassChoice
          id="names-other"
          label="Or is the same as"
          value={other()}
          choices={choices().filter(({ id }) => id !== person())}
          choose={setOther}
        />
        <p class="actions">
          <button type="button" onClick={join}>
            Join the two
          </button>
        </p>
        <ClassUndo book={props.book} done={done()} change={props.change} say={setDone} id="names-said" />
      </form>
      <p class="small">The old name is remembered: codes that come under it are still theirs.</p>
    </details>
  );
}
