// Tasks seen and questions asked of one person, filled in on a phone, into one record to print and to save.
import { createSignal, For, onMount, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { sources } from '../core/sources.ts';
import { freshRecord, LONGEST_RECORD_LINE, LONGEST_RECORD, particularNames, particulars, readRecord, recordText, recordTotals, type ObservedRecord, type Particular } from '../exercises/observed/record.ts'; // prettier-ignore
import { modelAnswer, outcomes, type Oral, type TaskOutcome, type Task } from '../exercises/observed/task.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { bookStamp } from '../house/book.ts';
import { visibleName } from '../house/name.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';
import { dropRemoved, keepRemoved, namesRemoved, removedUnder } from '../browser/removed-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { fileNameOf } from './file-name.ts';
import { TextFileField } from './TextFileField.tsx';
import { printPart } from './print-part.ts';
import { RemovedFold } from './RemovedFold.tsx';
import { saveFile } from './save-file.ts';
import { TaskPaper } from './TaskPaper.tsx';
import { today } from './today.ts';
import { useWayBack } from './use-way-back.tsx';

export interface TasksOfStage {
  readonly stage: string;
  readonly title: string;
  readonly tasks: readonly Task[];
  readonly orals: readonly Oral[];
}

export default function TaskRecord(props: TasksOfStage) {
  const key = () => storageKey(`observed/${props.stage}`);
  const removedKey = () => storageKey(`observed-removed/${props.stage}`);
  const { line, name } = useHouse();
  const [record, setRecord] = createSignal<ObservedRecord>(freshRecord(props.stage));
  const [removed, setRemoved] = createSignal<readonly string[]>([]);
  const { say, Said, saying } = useWayBack();
  const [isPrinting, setPrinting] = createSignal(false);
  let isHeld = false; // true while a record that cannot be read could not be set aside: nothing is written over it

  onMount(() => {
    setRemoved(namesRemoved(removedKey()));
    const text = keptText(key());
    if (text === null) return;
    const read = readRecord(text, props.stage);
    if (typeof read !== 'string') return void setRecord(read);
    isHeld = !keepAside(`${key()}-kept-aside`, text);
    say('A record was kept in this browser and cannot be read; it is set aside in it, word for word.');
  });
  const change = (next: ObservedRecord) => {
    setRecord(next);
    if (isHeld || !keepText(key(), recordText(next, bookStamp)))
      say('This browser does not keep the record: save it to a file before you close the page.');
  };
  /** Puts another record in place of the one that stands here, with the way back to it. */
  const replace = (next: ObservedRecord, says: string) => {
    const before = record();
    change(next);
    if (recordText(before, '') === recordText(freshRecord(props.stage), '')) return say(says);
    keepRemoved(removedKey(), before.about.trainee || 'A record without a name', recordText(before, bookStamp)); // prettier-ignore
    setRemoved(namesRemoved(removedKey()));
    say(says, () => {
      change(before);
      return 'The record is back as it stood.';
    });
  };
  const putBack = (name: string) => {
    const read = readRecord(removedUnder(removedKey())[name] ?? '', props.stage);
    if (typeof read === 'string') return say(read);
    replace(read, `The record of ${visibleName(name)} is open.`);
    dropRemoved(removedKey(), name);
    setRemoved(namesRemoved(removedKey()));
  };
  const press = (id: string, outcome: TaskOutcome) => {
    const { [id]: was, ...others } = record().seen;
    const seen = was?.outcome === outcome ? others : { ...others, [id]: { outcome, day: today(), note: was?.note ?? '' } }; // prettier-ignore
    const before = record();
    change({ ...before, seen });
    if (was?.note && was.outcome === outcome)
      say('What was seen is taken back, its evidence with it.', () => {
        change({ ...record(), seen: { ...record().seen, [id]: was } });
        return 'What was seen is back, with its evidence.';
      });
  };
  const note = (id: string, text: string) => {
    const was = record().seen[id];
    if (was) change({ ...record(), seen: { ...record().seen, [id]: { ...was, note: oneLine(text) } } });
  };
  const print = () => {
    setPrinting(true);
    printPart('record');
    addEventListener('afterprint', () => setPrinting(false), { once: true });
  };
  const save = () => {
    const file = fileNameOf(`${record().about.trainee || 'record'} ${props.stage}`, 'observed');
    saveFile(file, recordText(record(), bookStamp), 'application/json');
    say(`The record is saved as ${file}.`);
  };
  const intoBook = async () => {
    const part = await import('./class-observed.ts').catch(() => undefined);
    say(part ? part.recordIntoClassBook(record()) : 'A part of the book did not come; load the page again.');
  };
  const open = (text: string, file: string) => {
    const read = readRecord(text, props.stage);
    if (typeof read === 'string') return void say(read);
    replace(read, `The record from ${file} is open.`);
  };
  const sum = (ids: readonly string[]) => {
    const of = recordTotals(ids, record());
    return `${of.alone} of ${ids.length} alone, ${of.prompted} prompted, ${of['not yet']} not yet, ${of['not seen']} not seen`;
  };
  const Doing = (doing: { readonly id: string; readonly what: string }) => {
    const seen = () => record().seen[doing.id];
    return (
      <>
        <div class="observed-doing" role="group" aria-label={doing.what}>
          <For each={outcomes}>
            {(outcome) => (
              <button
                type="button"
                aria-pressed={seen()?.outcome === outcome}
                onClick={() => press(doing.id, outcome)}
              >
                {outcome[0]!.toUpperCase() + outcome.slice(1)}
              </button>
            )}
          </For>
        </div>
        <Show when={seen()}>
          {(now) => (
            <div class="field own-line">
              <label for={`note-${doing.id}`}>Evidence, {now().day}</label>
              <input
                id={`note-${doing.id}`}
                class="words"
                type="text"
                maxlength={LONGEST_RECORD_LINE}
                autocomplete="off"
                value={now().note}
                onChange={(event) => note(doing.id, event.currentTarget.value)}
              />
            </div>
          )}
        </Show>
      </>
    );
  };

  return (
    <>
      <section class="screen-only observed" aria-labelledby="observed-tasks">
        <h2 id="observed-tasks">Tasks to see</h2>
        <ol class="observed-list">
          <For each={props.tasks}>
            {(task) => (
              <li>
                <h3>{task.does}</h3>
                <ul>
                  <For each={task.see}>{(each) => <li>{keepTogether(each)}</li>}</For>
                </ul>
                <p class="about">{sources[task.rests].short}</p>
                <Doing id={task.id} what={task.does} />
              </li>
            )}
          </For>
        </ol>
        <h2>Questions to ask</h2>
        <ol class="observed-list">
          <For each={props.orals}>
            {(oral) => (
              <li>
                <h3>{oral.asks}</h3>
                <p>{keepTogether(modelAnswer(oral.model, line()))}</p>
                <p class="about">
                  {sources[oral.rests].short}
                  {/\{/.test(oral.model) ? `, figures of ${name()}` : ''}
                </p>
                <Doing id={oral.id} what={oral.asks} />
              </li>
            )}
          </For>
        </ol>
      </section>
      <section class="screen-only calculator sheet-desk observed-record" aria-labelledby="observed-record">
        <h2 id="observed-record">The record</h2>
        <p role="status">
          Tasks: {sum(props.tasks.map(({ id }) => id))}. Questions: {sum(props.orals.map(({ id }) => id))}.
        </p>
        <For each={particularNames}>
          {(each) => (
            <Particulars
              name={each}
              value={record().about[each]}
              take={(text) => change({ ...record(), about: { ...record().about, [each]: oneLine(text) } })}
            />
          )}
        </For>
        <p class="actions">
          <button type="button" onClick={print}>
            Print the record to sign
          </button>
          <button type="button" onClick={save}>
            Save it to a file
          </button>
          <button type="button" onClick={() => void intoBook()}>
            Put it into the class book
          </button>
          <button
            type="button"
            onClick={() => {
              replace(freshRecord(props.stage), 'A new record is begun.');
            }}
          >
            Begin a new record
          </button>
        </p>
        <TextFileField
          id="observed-file"
          label="Open a record from a file"
          most={LONGEST_RECORD}
          what="a record"
          saidBy="observed-said"
          take={open}
          tell={say}
        />
        <Said id="observed-said" />
        <RemovedFold what="records" names={removed()} putBack={putBack} saying={saying} />
      </section>
      <Show when={isPrinting()}>
        <TaskPaper {...props} record={record()} houseName={name()} />
      </Show>
    </>
  );
}

function Particulars(props: {
  readonly name: Particular;
  readonly value: string;
  readonly take: (text: string) => void;
}) {
  return (
    <div class="field own-line">
      <label for={`observed-${props.name}`}>{particulars[props.name]}</label>
      <input
        id={`observed-${props.name}`}
        class="words"
        type="text"
        maxlength={LONGEST_RECORD_LINE}
        autocomplete="off"
        value={props.value}
        onChange={(event) => props.take(event.currentTarget.value)}
      />
    </div>
  );
}
