// A new guide's file: the walk on the page, and on paper the whole file, bound: title, walk, figures, questions, blanks with a key, ten sums.
import { createMemo, For, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { stampInWords } from '../house/book.ts';
import type { Stage } from '../house/figures.ts';
import { useHouse } from '../browser/house-store.ts';
import { inMinutes } from '../walk/time.ts';
import { AskedPart } from './GuideFileAsked.tsx';
import { BlankPart } from './GuideFileBlank.tsx';
import { FiguresPart, NotOwnYet } from './GuideFileFigures.tsx';
import { RoomsPart } from './GuideFileRooms.tsx';
import { WorkedPart } from './GuideFileWorked.tsx';
import { OtherHouse, useGuideWalk, useOnPaper } from './guide-file-walk.ts';
import type { WalkQuestion } from './WalkDesk.tsx';
import { WalkCautions } from './WalkCautions.tsx';

const contents = [
  'The walk',
  'Why each figure is what it is',
  'What they ask',
  'Tell the figures',
  'Ten sums to redo',
];

const FIRST =
  'The site’s own rules, its licence and the law of the country come before all that stands here; nobody goes round alone until those who are trained for it say so.';

export default function GuideFile(props: {
  readonly questions: readonly WalkQuestion[];
  readonly safety: Readonly<Record<Stage, string>>;
}) {
  const safety = unwrap(props.safety);
  const { walk, problems, today, other } = useGuideWalk();
  const { name } = useHouse();
  const isOnPaper = useOnPaper();
  const minutes = createMemo(() => walk().rooms.reduce((sum, room) => sum + room.minutes, 0));
  return (
    <div class="guide-file">
      <div role="status">
        <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
      </div>
      <OtherHouse isWanted={other() !== undefined} other={other()!} root="../" />
      <h2>
        {walk().name}: {walk().rooms.length === 1 ? 'one room' : `${walk().rooms.length} rooms`},{' '}
        {inMinutes(minutes())}
      </h2>
      <RoomsPart walk={walk()} safety={safety} />
      <NotOwnYet walk={walk()} root="../" />
      <p>
        <a href="../walk/">Change the walk</a>
      </p>
      <p class="actions">
        <button type="button" onClick={() => print()}>
          Print the file
        </button>
      </p>
      <Show when={isOnPaper()}>
        <div class="guide-paper">
          <section class="guide-title">
            <p class="guide-of">The Malt Spirit Handbook</p>
            <h2>A new guide’s file</h2>
            <p class="guide-of">
              {name()}
              <br />
              {walk().name}
              {other() === undefined ? '' : `, written for ${other()}`}
            </p>
            <ol>
              <For each={contents}>{(part) => <li>{part}</li>}</For>
            </ol>
            <p>{FIRST}</p>
            <p>
              {today()} · {stampInWords(name())}
            </p>
          </section>
          <section>
            <h2>1. {contents[0]}</h2>
            <RoomsPart walk={walk()} safety={safety} isWhole />
            <h3>With every walk</h3>
            <WalkCautions />
          </section>
          <section>
            <h2>2. {contents[1]}</h2>
            <FiguresPart walk={walk()} under="h3" />
          </section>
          <section>
            <h2>3. {contents[2]}</h2>
            <AskedPart walk={walk()} questions={props.questions} under="h3" />
          </section>
          <section>
            <h2>4. {contents[3]}</h2>
            <BlankPart walk={walk()} />
          </section>
          <section>
            <h2>5. {contents[4]}</h2>
            <WorkedPart />
          </section>
        </div>
      </Show>
    </div>
  );
}
