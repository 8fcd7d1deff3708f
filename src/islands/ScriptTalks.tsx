// The reader's talks by name: the open one is named, saved to a file or left for another; the others are opened, or removed and put back.
import { createMemo, createSignal, onMount, Show } from 'solid-js';
import { visibleName } from '../house/name.ts';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';
import { RemovedFold } from './RemovedFold.tsx';
import { Shelf } from './Shelf.tsx';
import { decodeTalk, dropTalk, encodeTalk, FIRST_TALK_NAME, freeTalkName, keptTalks, putTalkBack, removedTalks, removeTalk, shelveTalk, talkNameProblem, talkOfFile, type Talk } from './script-kept.ts'; // prettier-ignore

/** What came of something that was done to the talks, and what takes it back. */
export interface SaidOfTalks {
  readonly says: string;
  readonly undo?: () => void;
}

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened
const NO_ROOM =
  'This browser has no room to keep this talk beside another, so nothing was changed. Save it to a file, or remove a talk.';

export function ScriptTalks(props: {
  readonly talk: Talk;
  /** The talk with what was typed last. */
  readonly now: () => Talk;
  /** Goes on with another talk, or with this one under another name; false when the browser does not keep it. */
  readonly take: (talk: Talk) => boolean;
  /** Says what came of it where it is seen though the box is folded, and where that stands. */
  readonly say: (said: SaidOfTalks) => void;
  readonly saying: () => HTMLElement | undefined;
  /** The box is wanted in sight. */
  readonly toBox: () => void;
}) {
  const [others, setOthers] = createSignal<readonly string[]>([]);
  const [removed, setRemoved] = createSignal<readonly string[]>([]);
  const look = () => {
    setOthers(Object.keys(keptTalks()));
    setRemoved(Object.keys(removedTalks()).toReversed());
  };
  onMount(look);
  const [problem, setProblem] = createSignal<string>();
  const [nameProblem, setNameProblem] = createSignal<string>();
  const named = createMemo(() => props.talk.name); // a talk that is read anew leaves a name that is being typed

  /** Leaves the open talk on the shelf and opens another; true when that one is kept. */
  const change = (next: Talk, tells: string): boolean => {
    const isKept = shelveTalk(props.now());
    setProblem(isKept ? undefined : NO_ROOM);
    if (!isKept) return false;
    setNameProblem(undefined);
    props.say({ says: tells });
    const isNextKept = props.take(next);
    look();
    return isNextKept;
  };
  const open = (name: string) => {
    const next = decodeTalk(keptTalks()[name] ?? null);
    if (!next) return void setProblem(`${visibleName(name)} cannot be opened; it stays where it is.`);
    if (change({ ...next, name }, `${visibleName(name)} is open.`)) dropTalk(name);
    look();
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_FILE, 'a talk’s file');
    const next = 'problem' in read ? read : talkOfFile(file.name, read.text);
    if ('problem' in next) return void setProblem(next.problem);
    const own = props.now();
    if (next.name === own.name && encodeTalk(next) === encodeTalk(own))
      return void props.say({
        says: `${visibleName(own.name)} is this talk, word for word: nothing was changed.`,
      });
    const isEmpty = own.text.trim() === '';
    const name = freeTalkName(next.name, isEmpty ? undefined : own.name);
    const renamed =
      name === next.name
        ? ''
        : ` You have another talk called ${visibleName(next.name)}, so this one is ${visibleName(name)}.`;
    const besides = isEmpty ? '' : ` ${visibleName(own.name)} is kept among your other talks.`;
    change({ ...next, name }, `${visibleName(name)} is open, from the file.${renamed}${besides}`);
  };
  const putBack = (name: string) => {
    const back = putTalkBack(name, props.now().name);
    look();
    if (back === undefined) setProblem(NO_ROOM);
    else props.say({ says: `${visibleName(back)} is back among your other talks.` });
  };
  const remove = (name: string) => {
    const aside = removeTalk(name);
    look();
    if (aside === undefined)
      return void setProblem(
        `This browser has no room to keep ${visibleName(name)} so that it could be had back, so it stays. Save it to a file first.`,
      );
    props.say({
      says: `${visibleName(name)}, its words and what you put right in it, is removed. It can be had back, here or under “Removed talks”.`,
      undo: () => putBack(aside),
    });
  };
  const rename = (wanted: string) => {
    const name = wanted.trim();
    const wrong = name === props.talk.name ? undefined : talkNameProblem(name);
    setNameProblem(wrong);
    if (wrong === undefined) props.take({ ...props.now(), name });
  };
  return (
    <div class="talks">
      <div class="field">
        <FileField
          id="script-file"
          label="Open a file"
          accept=".txt,.md,.json,text/plain,application/json"
          open={load}
        />
        <Show when={problem()}>
          <p class="problem" role="alert">
            {problem()}
          </p>
        </Show>
      </div>
      <details>
        <summary>Name, save, and other talks{others().length > 0 ? ` (${others().length})` : ''}</summary>
        <div class="field" data-state={nameProblem() ? 'wrong' : 'ok'}>
          <label for="script-name">Name of this talk</label>
          <input
            id="script-name"
            class="words"
            type="text"
            maxlength="80"
            autocomplete="off"
            aria-invalid={nameProblem() ? 'true' : 'false'}
            aria-describedby={nameProblem() ? 'script-name-problem' : undefined}
            value={named()}
            onChange={(event) => rename(event.currentTarget.value)}
          />
          <Show when={nameProblem()}>
            <p class="problem" id="script-name-problem" role="alert">
              {nameProblem()}
            </p>
          </Show>
        </div>
        <p class="actions">
          <button
            type="button"
            onClick={() => {
              const own = props.now();
              saveFile(fileNameOf(own.name, 'talk'), encodeTalk(own), 'application/json');
            }}
          >
            Save to a file
          </button>{' '}
          <button
            type="button"
            onClick={() => {
              const own = props.now();
              if (own.text.trim() === '') {
                props.say({ says: 'This talk is empty still.' });
                return props.toBox();
              }
              const name = freeTalkName(FIRST_TALK_NAME, own.name);
              change(
                { name, text: '', corrections: [] },
                `${name} is open; ${visibleName(own.name)} is kept.`,
              );
              props.toBox();
            }}
          >
            Begin another
          </button>
        </p>
        <Shelf names={others()} open={open} remove={remove} saying={props.saying} />
        <RemovedFold what="talks" names={removed()} putBack={putBack} saying={props.saying} />
      </details>
    </div>
  );
}
