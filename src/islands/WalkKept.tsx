// The reader's walks by name: the open one is named, saved to a file or left for another; the others are opened, or removed and put back.
import { createEffect, createSignal, For, on, onCleanup, onMount } from 'solid-js';
import { visibleName } from '../house/name.ts';
import { LONGEST_WALK_TEXT, decodeWalk, encodeWalk, FIRST_WALK_NAME } from '../walk/text.ts';
import { firstWalk, type Walk } from '../walk/walk.ts';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { focusAfter } from './focus-after.ts';
import { textOfFile } from './open-file.ts';
import { saveFile } from './save-file.ts';
import {
  dropWalk,
  freeWalkName,
  keptWalks,
  NO_ROOM_FOR_WALK,
  putWalkBack,
  removedWalks,
  removeWalk,
  shelveWalk,
  walkNameProblem,
  walksAside,
} from './walk-kept.ts';
import { RemovedFold } from './RemovedFold.tsx';
import { Shelf } from './Shelf.tsx';
import { useWayBack } from './use-way-back.tsx';
import { WalkField } from './WalkField.tsx';

const NO_ROOM_TO_REMOVE =
  'This browser has no room to keep this walk so that it could be had back, so it stays. Save it to a file first.';

export function WalkKept(props: {
  readonly walk: Walk;
  /** Goes on with another walk; false when the browser does not keep it. */
  readonly open: (walk: Walk) => boolean;
  readonly rename: (name: string) => void;
}) {
  const [others, setOthers] = createSignal<readonly string[]>([]);
  const [aside, setAside] = createSignal<readonly string[]>([]);
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  const [removed, setRemoved] = createSignal<readonly string[]>([]);
  const { say, Said, saying } = useWayBack();
  const look = () => {
    setOthers(Object.keys(keptWalks()));
    setRemoved(removedWalks());
    setAside(walksAside());
  };
  onMount(() => {
    look();
    addEventListener('storage', look);
    onCleanup(() => removeEventListener('storage', look));
  });
  createEffect(on(() => props.walk.name, look, { defer: true })); // a copy may have been opened elsewhere

  /** Leaves the open walk on the shelf and opens another; true when that one is kept. */
  const change = (next: Walk, says: string, wrong: readonly string[] = []): boolean => {
    if (!shelveWalk(props.walk)) return (setProblems([NO_ROOM_FOR_WALK]), false);
    setProblems(wrong);
    say(says);
    const isKept = props.open(next);
    look();
    return isKept;
  };
  const open = (name: string) => {
    const read = decodeWalk(keptWalks()[name] ?? '');
    if ('problem' in read)
      return void setProblems([
        `${visibleName(name)} cannot be opened; it stays where it is. ${read.problem}`,
      ]);
    const isKept = change({ ...read.walk, name }, `${visibleName(name)} is open.`, read.problems);
    if (isKept && read.problems.length === 0) dropWalk(name); // one that was not read in full stays as it was
    look();
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, LONGEST_WALK_TEXT, 'a walk’s file');
    if ('problem' in read) return void setProblems([read.problem]);
    const walk = decodeWalk(read.text);
    if ('problem' in walk) return void setProblems([`${walk.problem} Nothing was changed.`]);
    const taken = walk.walk.name === props.walk.name ? `${walk.walk.name} 2` : walk.walk.name;
    const name = freeWalkName(taken);
    change({ ...walk.walk, name }, `${name} is open.`, walk.problems);
  };
  const putBack = (gone: string): string => {
    const name = putWalkBack(gone);
    look();
    return name === undefined ? NO_ROOM_FOR_WALK : `${visibleName(name)} is back among your other walks.`;
  };
  const remove = (other: string) => {
    const gone = removeWalk(other);
    look();
    if (gone === undefined) return say(NO_ROOM_TO_REMOVE);
    say(`${visibleName(other)} is removed. It can be had back, here or under “Removed walks”.`, () =>
      putBack(gone),
    );
  };
  return (
    <section class="calculator walk-kept" aria-labelledby="walk-kept-title">
      <h2 id="walk-kept-title">Keep it, hand it on</h2>
      <div class="inputs">
        <WalkField
          id="walk-name"
          label="Name of this walk"
          isWide
          value={props.walk.name}
          take={(text) => {
            const name = text.trim();
            const wrong = name === props.walk.name ? undefined : walkNameProblem(name);
            if (wrong === undefined) props.rename(name);
            return wrong;
          }}
        />
        <div class="field wide">
          <FileField
            id="walk-file"
            label="Open a walk’s file"
            accept=".json,application/json"
            saidBy="walk-kept-says"
            open={load}
          />
        </div>
      </div>
      <p class="actions">
        <button
          type="button"
          onClick={() =>
            saveFile(fileNameOf(props.walk.name, 'walk'), encodeWalk(props.walk), 'application/json')
          }
        >
          Save to a file
        </button>
        <button
          type="button"
          onClick={(event) => {
            const free = freeWalkName(FIRST_WALK_NAME);
            const name = free === props.walk.name ? freeWalkName(`${FIRST_WALK_NAME} 2`) : free;
            change(firstWalk(name), `${name} is open; ${visibleName(props.walk.name)} is kept.`);
            focusAfter(event, saying);
          }}
        >
          Begin another
        </button>
      </p>
      <div id="walk-kept-says">
        <div role="status">
          <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
        </div>
        <Said />
      </div>
      <Shelf names={others()} open={open} remove={remove} saying={saying} />
      <RemovedFold what="walks" names={removed()} putBack={(gone) => say(putBack(gone))} saying={saying} />
      <For each={aside()}>
        {(text, i) => (
          <p>
            <a
              download={`walk-set-aside-${i() + 1}.txt`}
              href={URL.createObjectURL(new Blob([text], { type: 'text/plain' }))}
            >
              Save what was set aside{i() === 0 ? '' : `, ${i() + 1}`}
            </a>
          </p>
        )}
      </For>
    </section>
  );
}
