// The reader's talks by name: the open one is named, saved to a file or left for another; the others are opened or removed.
import { createSignal, onMount, Show } from 'solid-js';
import { visibleName } from '../house/name.ts';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { focusAfter } from './focus-after.ts';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';
import { Shelf } from './Shelf.tsx';
import { decodeTalk, dropTalk, encodeTalk, FIRST_TALK_NAME, freeTalkName, keptTalks, shelveTalk, talkNameProblem, talkOfFile, type Talk } from './script-kept.ts'; // prettier-ignore

const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened
const NO_ROOM =
  'This browser has no room to keep this talk beside another, so nothing was changed. Save it to a file, or remove a talk.';

export function ScriptTalks(props: {
  readonly talk: Talk;
  /** The talk with what was typed last. */
  readonly now: () => Talk;
  /** Goes on with another talk, or with this one under another name; false when the browser does not keep it. */
  readonly take: (talk: Talk) => boolean;
}) {
  const [others, setOthers] = createSignal<readonly string[]>([]);
  onMount(() => setOthers(Object.keys(keptTalks())));
  const [problem, setProblem] = createSignal<string>();
  const [nameProblem, setNameProblem] = createSignal<string>();
  const [said, setSaid] = createSignal<string>();
  let saying: HTMLParagraphElement | undefined;

  /** Leaves the open talk on the shelf and opens another; true when that one is kept. */
  const change = (next: Talk, tells: string): boolean => {
    const isKept = shelveTalk(props.now());
    setProblem(isKept ? undefined : NO_ROOM);
    if (!isKept) return false;
    setNameProblem(undefined);
    setSaid(tells);
    const isNextKept = props.take(next);
    setOthers(Object.keys(keptTalks()));
    return isNextKept;
  };
  const open = (name: string) => {
    const next = decodeTalk(keptTalks()[name] ?? null);
    if (!next) return void setProblem(`${visibleName(name)} cannot be opened; it stays where it is.`);
    if (change({ ...next, name }, `${visibleName(name)} is open.`)) dropTalk(name);
    setOthers(Object.keys(keptTalks()));
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, BIGGEST_FILE, 'a talk’s file');
    const next = 'problem' in read ? read : talkOfFile(file.name, read.text);
    if ('problem' in next) return void setProblem(next.problem);
    const name = freeTalkName(next.name);
    change({ ...next, name }, `${name} is open.`);
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
            value={props.talk.name}
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
            onClick={(event) => {
              const own = props.now();
              if (own.text.trim() === '') return void setSaid('This talk is empty still.');
              const free = freeTalkName(FIRST_TALK_NAME);
              const name = free === own.name ? freeTalkName(`${FIRST_TALK_NAME} 2`) : free;
              change(
                { name, text: '', corrections: [] },
                `${name} is open; ${visibleName(own.name)} is kept.`,
              );
              focusAfter(event, () => saying);
            }}
          >
            Begin another
          </button>
        </p>
        <p role="status" tabindex="-1" ref={saying}>
          {said()}
        </p>
        <Shelf
          names={others()}
          open={open}
          remove={(other) => {
            dropTalk(other);
            setOthers(Object.keys(keptTalks()));
            setSaid(`${visibleName(other)} is removed.`);
          }}
          saying={() => saying}
        />
      </details>
    </div>
  );
}
