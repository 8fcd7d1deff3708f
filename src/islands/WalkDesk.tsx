// A walk, room by room: the talk cut into rooms by a worker, put right by hand, timed, kept, and printed as cards.
import { batch, createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import type { Stage } from '../house/figures.ts';
import { useHouse } from '../browser/house-store.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { withPiecesJoined, withPieceMoved, withPieceMovedWithin, withPieceSplit, withNewRoom, withOnlyPiece, withoutRoom, withPiece, withRoom, withRoomMoved, type ChangedWalk } from '../walk/change.ts'; // prettier-ignore
import { figuresStillThere } from '../walk/pieces.ts';
import { audienceMarks } from '../walk/audience-kinds.ts';
import { clockOf, lateFor, walkTimeInWords, timesOf, troubleOf } from '../walk/time.ts';
import { FIRST_WALK_NAME } from '../walk/text.ts';
import { roomOpen, withTyping } from '../walk/two-tabs.ts';
import { firstWalk, isPieceTooLong, SHORT_WALK, textOfWalk, type Walk } from '../walk/walk.ts';
import { forHouse, notOfHere, otherHouse, withHouseOf } from '../walk/house-of-walk.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { NotKept } from './NotKept.tsx';
import { dateInWords, today as now } from './today.ts';
import { useCardWords } from './walk-card-words.ts';
import { useWalkReading } from './walk-reading.ts';
import {
  freeWalkName,
  keepWalk,
  keptWalk,
  NO_ROOM_FOR_WALK,
  onWalkChanged,
  shelveWalk,
} from './walk-kept.ts';
import { WalkAudience } from './WalkAudience.tsx';
import { WalkKept } from './WalkKept.tsx';
import type { PieceDoes } from './WalkPieces.tsx';
import { WalkRoom } from './WalkRoom.tsx';
import { WalkShow } from './WalkShow.tsx';
import { WalkStale } from './WalkStale.tsx';
import { WalkTalk } from './WalkTalk.tsx';
import { WalkTimes } from './WalkTimes.tsx';

export interface WalkQuestion extends Pick<VisitorQuestion, 'id' | 'question' | 'say'> {
  readonly stage: Stage;
}

const OpenHouse = fetchedWhenWanted(() => import('./OpenHouse.tsx').then((come) => come.OpenHouse));
const WalkPrinted = fetchedWhenWanted(() => import('./WalkPrinted.tsx').then((come) => come.WalkPrinted));
const WalkLeaveOut = fetchedWhenWanted(() => import('./WalkLeaveOut.tsx').then((come) => come.WalkLeaveOut));
const BACK = 'Put it back as it was';

export default function WalkDesk(props: {
  readonly questions: readonly WalkQuestion[];
  /** One line of caution for each stage. */
  readonly safety: Readonly<Record<Stage, string>>;
}) {
  const questions = unwrap(props.questions);
  const [walk, setWalk] = createSignal<Walk>(firstWalk(FIRST_WALK_NAME));
  const [open, setOpen] = createSignal(0);
  const [before, setBefore] = createSignal<{ readonly walk: Walk; readonly label: string }>();
  const [said, setSaid] = createSignal('');
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  const [isKept, setKept] = createSignal(true);
  const [today, setToday] = createSignal('');
  const [isReady, setReady] = createSignal(false);
  const house = useHouse();
  /** The words of a piece that are being typed and not yet taken. */
  const typing: PieceDoes['typing'] = {};
  const printer: { print?: (rooms: readonly number[]) => void } = {};
  let desk: HTMLDivElement | undefined;

  onMount(() => {
    const { walk, problems } = keptWalk();
    setWalk(walk);
    setProblems(problems);
    setToday(dateInWords(now()));
    setReady(true);
  });

  /** Keeps the walk as it has become; false when the browser does not let it. */
  const put = (next: Walk) => {
    batch(() => {
      setWalk(next);
      if (open() >= next.rooms.length) setOpen(next.rooms.length - 1);
    });
    const kept = keepWalk(next);
    setKept(kept);
    return kept;
  };
  /** Takes the walk as it has become and keeps it, as one of the house that stands here where it has none. What cannot easily be done again has a way back, by this button. */
  const take = (next: Walk, says = '', wayBack?: string) => {
    setBefore(wayBack === undefined ? undefined : { walk: walk(), label: wayBack });
    setSaid(says);
    return put(house.mounted() ? withHouseOf(next, house.name()) : next);
  };
  /** The house that the walk was written for, where another stands here: nothing is held against that one. */
  const other = createMemo(() => (isReady() && house.mounted() ? otherHouse(walk(), house.name()) : undefined)); // prettier-ignore
  onMount(() =>
    onCleanup(
      onWalkChanged(
        (theirs) => {
          const [mine, now] = [walk(), typing.now];
          delete typing.now;
          const at = now && { room: open(), ...now };
          const isSame = theirs.name === mine.name;
          if (at && !isSame) shelveWalk(withTyping(mine, mine, at)); // another walk is open there
          const next = at && isSame ? withTyping(theirs, mine, at) : theirs;
          batch(() => {
            setOpen(roomOpen(theirs, mine, open()));
            setWalk(next);
            setBefore(undefined);
            setSaid('This walk was changed in another tab, and stands here as it does there.');
            setProblems([]);
          });
          if (next === theirs) return;
          put(next);
          talk.lookAgain();
        },
        (problems) => setProblems(problems),
      ),
    ),
  );
  const talk = useWalkReading(
    walk,
    (next, says) => {
      setOpen(0);
      take(forHouse(next, house.name()), says, BACK);
    },
    (next) => {
      setBefore(undefined);
      put(next);
    },
  );

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
    () => desk,
  );
  const done = (changed: ChangedWalk | undefined, says: string, wayBack?: string) => changed && take(changed.walk, says, wayBack); // prettier-ignore

  return (
    <div class="walk" ref={desk}>
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
        <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
        <NotKept isKept={isKept()} what="your walk" />
        <Show when={other()}>
          {(name) => (
            <div class="remark walk-other">
              <p>
                {notOfHere(name(), house.name())} Open its house too, or hold it against {house.name()}.
              </p>
              <p class="actions">
                <OpenHouse isWanted wanted={name()} root="../" />{' '}
                <button
                  type="button"
                  onClick={(event) => {
                    take(forHouse(walk(), house.name()), `It is held against ${house.name()} now.`, BACK);
                    focusAfter(event, () => document.getElementById('walk-rooms-title'));
                  }}
                >
                  Hold it against {house.name()}
                </button>
              </p>
            </div>
          )}
        </Show>
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
        drop={(next, says) => take(next, says, BACK)}
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
        <ol class="walk-list">
          <For each={rooms()}>
            {(each, i) => {
              const time = () => times()[i()]!;
              return (
                <li>
                  <button
                    type="button"
                    aria-current={open() === i() ? 'true' : undefined}
                    onClick={() => setOpen(i())}
                  >
                    <span class="at">{clockOf(time().from)}</span> <b>{each.name}</b>{' '}
                    <small>
                      {each.minutes} min, {time().words} words
                      {troubleOf(each, time(), walk()) ? ' · look' : ''}
                    </small>
                  </button>
                </li>
              );
            }}
          </For>
        </ol>
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
          pieces={{
            typing,
            write: (piece, text) => {
              const at = { room: open(), piece };
              const old = room().pieces[piece]!;
              const figures = figuresStillThere(old.figures, old.text, text);
              take(withPiece(walk(), at, { text, figures }), said());
              talk.lookAgain();
            },
            move: (piece, by) => {
              const to = rooms()[open() + by]?.name;
              done(withPieceMoved(walk(), { room: open(), piece }, by), `Moved to the ${to}.`, 'Put it back');
            },
            shift: (piece, by) =>
              void done(
                withPieceMovedWithin(walk(), { room: open(), piece }, by),
                `It is piece ${piece + by + 1} of the room now.`,
                'Put it back',
              ),
            split: (piece, place) =>
              void done(withPieceSplit(walk(), { room: open(), piece }, place), 'Split in two.'),
            join: (piece) => void done(withPiecesJoined(walk(), { room: open(), piece }), 'Joined.'),
            long: (piece, long) =>
              void take(
                withPiece(walk(), { room: open(), piece }, { long }),
                long ? 'Only in long walks now.' : 'In every walk now.',
              ),
            whom: (piece, mark) => {
              const at = { room: open(), piece };
              const { whom: _, ...rest } = room().pieces[piece]!;
              take(
                withOnlyPiece(walk(), at, mark ? { ...rest, whom: mark } : rest),
                mark ? `${audienceMarks[mark]} now.` : 'Told to all now.',
              );
            },
          }}
          does={{
            change: (change) => {
              take(withRoom(walk(), open(), change), said());
            },
            move: (by) => {
              const { name } = room();
              setOpen(open() + by);
              take(withRoomMoved(walk(), open() - by, by), `${name} is room ${open() + 1} now.`);
            },
            drop: () => {
              const { name } = room();
              take(withoutRoom(walk(), open()), `${name} is taken out; what was said there is said next to it.`, BACK); // prettier-ignore
              document.getElementById('walk-room-title')?.focus();
            },
            add: () => {
              take(withNewRoom(walk(), open() + 1, 'New room'), 'A room is put in.');
              setOpen(open() + 1);
              document.getElementById('walk-room-title')?.focus();
            },
          }}
        />
      </section>
      <Show when={other() === undefined}>
        <WalkAudience
          walk={walk()}
          said={useCardWords}
          choose={take}
          add={(to, piece) => {
            const { name, pieces } = rooms()[to]!;
            take(withRoom(walk(), to, { pieces: [...pieces, piece] }), `Added to the ${name}.`, BACK);
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
      <WalkKept
        walk={walk()}
        open={(next) => {
          talk.drop();
          setOpen(0);
          setBefore(undefined);
          setSaid('');
          return put(next);
        }}
        rename={(name) => take({ ...walk(), name }, '')}
      />
    </div>
  );
}
