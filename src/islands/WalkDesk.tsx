// A walk, room by room: the talk cut into rooms by a worker, put right by hand, timed, kept, and printed as cards.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import type { Stage } from '../house/figures.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { withPiece, withRoom } from '../walk/change.ts';
import { lateFor, timesOf, troubleOf, walkTimeInWords } from '../walk/time.ts';
import { isPieceTooLong, SHORT_WALK, textOfWalk } from '../walk/walk.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { NotKept } from './NotKept.tsx';
import { dateInWords, today as now } from './today.ts';
import { useCardWords } from './walk-card-words.ts';
import { walkEdits } from './walk-edits.ts';
import { freeWalkName, NO_ROOM_FOR_WALK, shelveWalk } from './walk-kept.ts';
import { PUT_IT_BACK, useOpenWalk } from './walk-open.ts';
import { WalkAudience } from './WalkAudience.tsx';
import { WalkKept } from './WalkKept.tsx';
import { WalkOther } from './WalkOther.tsx';
import { WalkRoom } from './WalkRoom.tsx';
import { WalkRooms } from './WalkRooms.tsx';
import { WalkShow } from './WalkShow.tsx';
import { WalkStale } from './WalkStale.tsx';
import { WalkTalk } from './WalkTalk.tsx';
import { WalkTimes } from './WalkTimes.tsx';

export interface WalkQuestion extends Pick<VisitorQuestion, 'id' | 'question' | 'say'> {
  readonly stage: Stage;
}

const WalkPrinted = fetchedWhenWanted(() => import('./WalkPrinted.tsx').then((come) => come.WalkPrinted));
const WalkLeaveOut = fetchedWhenWanted(() => import('./WalkLeaveOut.tsx').then((come) => come.WalkLeaveOut));

export default function WalkDesk(props: {
  readonly questions: readonly WalkQuestion[];
  /** One line of caution for each stage. */
  readonly safety: Readonly<Record<Stage, string>>;
}) {
  const questions = unwrap(props.questions);
  const desk = useOpenWalk();
  const { walk, open, setOpen, before, said, isReady, other, take, talk } = desk;
  const edits = walkEdits(desk);
  const [today, setToday] = createSignal('');
  const printer: { print?: (rooms: readonly number[]) => void } = {};
  let section: HTMLDivElement | undefined;
  onMount(() => setToday(dateInWords(now())));

  const rooms = () => walk().rooms;
  const room = () => rooms()[open()] ?? rooms()[0]!;
  const times = createMemo(() => timesOf(walk()));
  const whole = createMemo(() => walkTimeInWords(walk()));
  const late = createMemo(() => lateFor(walk()));
  const words = () => times().reduce((sum, time) => sum + time.words, 0);
  const left = () => rooms().reduce((sum, { pieces }) => sum + pieces.filter((piece) => isPieceTooLong(piece, walk())).length, 0); // prettier-ignore
  const safetyOf = (stages: readonly Stage[]) => [...new Set(stages.map((stage) => props.safety[stage]))];
  useAnnouncement(
    'walk',
    () => [said(), whole(), late()],
    () => [said(), ...whole(), late() ?? ''].join(' ').trim(),
    () => section,
  );

  return (
    <div class="walk" ref={section}>
      <WalkTalk
        words={words()}
        text={() => textOfWalk(walk())}
        isCutting={talk.isCutting()}
        hasFailed={talk.hasFailed()}
        cuts={talk.cuts()}
        wake={talk.wake}
        cut={talk.cut}
      />
      <div role="status">
        <For each={desk.problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
        <NotKept isKept={desk.isKept()} what="your walk" />
        <WalkOther of={desk} />
      </div>
      <WalkStale
        walk={walk()}
        isReady={isReady() && other() === undefined}
        leave={take}
        put={(at, piece) => take(withPiece(walk(), at, piece), 'The new sentence is in its place.')}
      />
      <WalkPrinted
        isWanted={isReady() && other() === undefined && walk().printed !== undefined}
        walk={walk()}
        questions={questions}
        print={(rooms) => printer.print?.(rooms)}
        drop={(next, says) => take(next, says, PUT_IT_BACK)}
      />
      <section class="calculator walk-rooms" aria-labelledby="walk-rooms-title">
        <h2 id="walk-rooms-title" tabindex="-1">
          Room by room
        </h2>
        <WalkTimes walk={walk()} take={take} />
        <div class="whole">
          <For each={whole()}>{(sentence) => <p>{sentence}</p>}</For>
          <Show when={left() > 0}>
            <p>{left() === 1 ? 'One piece stays' : `${left()} pieces stay`} out of this short walk.</p>
          </Show>
          <Show when={late()}>
            <p class="remark late">{late()}</p>
          </Show>
        </div>
        <WalkLeaveOut
          isWanted={words() + left() > 0 && (walk().length < SHORT_WALK || walk().coming === 'children')}
          walk={walk()}
          take={take}
        />
        <WalkRooms walk={walk()} times={times()} open={open()} choose={setOpen} />
        <Show when={said()}>
          <p class="remark said">
            {said()}{' '}
            <Show when={before()}>
              {(old) => (
                <button
                  type="button"
                  onClick={(event) => {
                    take(old().walk, 'It is as it was.');
                    focusAfter(event, () => document.getElementById('walk-room-title'));
                  }}
                >
                  {old().label}
                </button>
              )}
            </Show>
          </p>
        </Show>
        <WalkRoom
          room={room()}
          number={open()}
          of={rooms().length}
          isOther={other() !== undefined}
          before={rooms()[open() - 1]?.name}
          after={rooms()[open() + 1]?.name}
          trouble={troubleOf(room(), times()[open()]!, walk())}
          questions={questions}
          safety={safetyOf(room().stages)}
          pieces={edits.pieces}
          does={edits.room}
        />
      </section>
      <Show when={other() === undefined}>
        <WalkAudience
          walk={walk()}
          said={useCardWords}
          choose={take}
          add={(to, piece) => {
            const { name, pieces } = rooms()[to]!;
            take(withRoom(walk(), to, { pieces: [...pieces, piece] }), `Added to the ${name}.`, PUT_IT_BACK);
            setOpen(to);
          }}
          copy={(next, says) => {
            if (!shelveWalk(walk())) return NO_ROOM_FOR_WALK;
            const { printed: _, ...copy } = next; // its cards have not been printed
            take({ ...copy, name: freeWalkName(next.name) }, says);
            return undefined;
          }}
        />
      </Show>
      <WalkShow
        walk={walk()}
        isOther={other() !== undefined}
        open={open()}
        times={times()}
        whole={whole()}
        questions={questions}
        safetyOf={safetyOf}
        today={today()}
        show={setOpen}
        printer={printer}
        printed={(cards) => {
          const many = cards.length === 1 ? 'The card is' : `${cards.length} cards are`;
          import('../walk/printed.ts').then(
            ({ withPrinted }) => take(withPrinted(walk(), cards), `${many} kept as printed.`, 'It was not printed'), // prettier-ignore
            () => undefined, // without it nothing is kept of the print, and the cards are as good
          );
        }}
      />
      <WalkKept walk={walk()} open={desk.openOther} rename={(name) => take({ ...walk(), name }, '')} />
    </div>
  );
}
