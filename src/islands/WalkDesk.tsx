// A walk, room by room: the talk cut into rooms by a worker, put right by hand, timed, kept, and printed as cards.
import { createEffect, createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import type { Stage } from '../house/figures.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { joined, moved, split, withNewRoom, withOnlyPiece, withoutRoom, withPiece, withRoom, withRoomMoved, type Changed } from '../walk/change.ts'; // prettier-ignore
import { stillThere, withFigures, withTalk, type Found } from '../walk/pieces.ts';
import { marks } from '../walk/audience-kinds.ts';
import { clockOf, lateFor, ofLength, ofWhole, timesOf, troubleOf } from '../walk/time.ts';
import { FIRST_NAME } from '../walk/text.ts';
import { firstWalk, isTooLong, textOf, type Walk } from '../walk/walk.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { NotKept } from './NotKept.tsx';
import { printPart } from './print-part.ts';
import { talkReader } from './script-reading.ts';
import type { TalkRead } from './script-reading.worker.ts';
import { inWords, today as now } from './today.ts';
import {
  CardBack,
  CardFront,
  CardsOnPaper,
  LeftOff,
  useSaid,
  type CardOf,
  type Theirs,
} from './WalkCard.tsx';
import { freeWalkName, keepWalk, keptWalk, NO_ROOM, shelveWalk } from './walk-kept.ts';
import { WalkAudience } from './WalkAudience.tsx';
import { WalkKept } from './WalkKept.tsx';
import { WalkRoom } from './WalkRoom.tsx';
import { WalkCautions, WalkSheet } from './WalkSheet.tsx';
import { WalkStale } from './WalkStale.tsx';
import { WalkTalk } from './WalkTalk.tsx';
import { WalkTimes } from './WalkTimes.tsx';

export interface WalkQuestion extends Pick<VisitorQuestion, 'id' | 'question' | 'say'> {
  readonly stage: Stage;
}

const REREAD = 1500; // ms after an edit until the figures in it are looked for anew

/** The figures that a reading found, each as it stands in the text. */
const foundIn = ({ text, script, taken }: TalkRead): readonly Found[] =>
  script.quantities.flatMap(({ start, end }) => {
    const { figure, said } = taken[start] ?? {};
    if (!figure || !said) return [];
    const value = said.as === 'range' ? (said.low + said.high) / 2 : said.value;
    return [{ at: start, words: text.slice(start, end), figure, value }];
  });

export default function WalkDesk(props: {
  readonly questions: readonly WalkQuestion[];
  /** One line of caution for each stage. */
  readonly safety: Readonly<Record<Stage, string>>;
}) {
  const questions = unwrap(props.questions);
  const [walk, setWalk] = createSignal<Walk>(firstWalk(FIRST_NAME));
  const [open, setOpen] = createSignal(0);
  const [before, setBefore] = createSignal<Walk>();
  const [said, setSaid] = createSignal('');
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  const [isKept, setKept] = createSignal(true);
  const [isCutting, setCutting] = createSignal(false);
  const [hasFailed, setFailed] = createSignal(false);
  const [cuts, setCuts] = createSignal(0);
  const [today, setToday] = createSignal('');
  const [printed, setPrinted] = createSignal<readonly CardOf[]>([]);
  const [isBack, setBack] = createSignal(false);
  const [isReady, setReady] = createSignal(false);
  let desk: HTMLDivElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  onMount(() => {
    const { walk, problems } = keptWalk();
    setWalk(walk);
    setProblems(problems);
    setToday(inWords(now()));
    setReady(true);
  });

  /** Takes the walk as it has become and keeps it. What cannot easily be done again has a way back. */
  const take = (next: Walk, says = '', hasWayBack = false) => {
    setBefore(hasWayBack ? walk() : undefined);
    setSaid(says);
    setWalk(next);
    if (open() >= next.rooms.length) setOpen(next.rooms.length - 1);
    const kept = keepWalk(next);
    setKept(kept);
    return kept;
  };
  const reader = talkReader(
    () => [],
    (read) => {
      setFailed(false);
      if (!read.cuts) {
        if (textOf(walk()) === read.text) take(withFigures(walk(), foundIn(read)), said());
        return;
      }
      setCutting(false);
      const cut = withTalk(walk(), read.text, read.cuts, foundIn(read));
      const timed = ofLength(cut, cut.length);
      setCuts(cuts() + 1);
      setOpen(0);
      const told = new Set(read.cuts.map(({ room }) => room)).size;
      take('refused' in timed ? cut : timed, `The talk is cut into ${read.cuts.length} pieces, in ${told} of ${cut.rooms.length} rooms.`, true); // prettier-ignore
    },
    () => {
      setCutting(false);
      setFailed(true);
    },
  );
  const reread = () => {
    clearTimeout(timer);
    timer = setTimeout(
      () => !isCutting() && reader.ask({ text: textOf(walk()), corrections: [], asksAll: false }),
      REREAD,
    );
  };

  const rooms = () => walk().rooms;
  const room = () => rooms()[open()] ?? rooms()[0]!;
  const times = createMemo(() => timesOf(walk()));
  const whole = createMemo(() => ofWhole(walk()));
  const late = createMemo(() => lateFor(walk()));
  const words = () => times().reduce((sum, time) => sum + time.words, 0);
  const left = () => rooms().reduce((sum, { pieces }) => sum + pieces.filter((piece) => isTooLong(piece, walk())).length, 0); // prettier-ignore
  const safetyOf = (stages: readonly Stage[]) => [...new Set(stages.map((stage) => props.safety[stage]))];
  const [cards, setCards] = createSignal<Theirs['cards']>();
  createEffect(() => {
    if (walk().saidIn && !cards())
      import('../walk/audience-cards.ts').then(
        (come) => setCards(() => come),
        () =>
          setProblems([...problems(), 'The cards could not be put in those units: they are in your own.']),
      );
  });
  const theirs = (): Theirs | undefined => {
    const [{ saidIn }, come] = [walk(), cards()];
    return saidIn && come && { saidIn, cards: come };
  };
  const card = (i: number): CardOf => ({
    room: rooms()[i]!,
    number: i,
    of: rooms().length,
    time: times()[i]!,
    questions,
    safety: safetyOf(rooms()[i]!.stages),
    today: today(),
    theirs: theirs(),
  });
  const printCards = (numbers: readonly number[]) => {
    setPrinted(numbers.map(card));
    addEventListener('afterprint', () => setPrinted([]), { once: true });
    queueMicrotask(() => printPart('walk-cards'));
  };
  const show = (i: number) => {
    setOpen(i);
    setBack(false);
  };

  useAnnouncement(
    'walk',
    () => [said(), whole(), late()],
    () => [said(), ...whole(), late() ?? ''].join(' ').trim(),
    () => desk,
  );
  const done = (changed: Changed | undefined, says: string) => changed && take(changed.walk, says);

  return (
    <div class="walk" ref={desk}>
      <WalkTalk
        words={words()}
        text={() => textOf(walk())}
        isCutting={isCutting()}
        hasFailed={hasFailed()}
        cuts={cuts()}
        wake={() => reader.wake()}
        cut={({ text, corrections }) => {
          clearTimeout(timer);
          setFailed(false);
          setCutting(true);
          const of = rooms().map(({ name, stages }) => ({ name, stages }));
          reader.ask({ text, corrections, asksAll: false, rooms: of });
        }}
      />
      <div role="status">
        <For each={problems()}>{(problem) => <p class="problem">{problem}</p>}</For>
        <NotKept isKept={isKept()} what="your walk" />
      </div>
      <WalkStale
        walk={walk()}
        isReady={isReady()}
        put={(at, piece) => take(withPiece(walk(), at, piece), 'The new sentence is in its place.')}
      />
      <section class="calculator walk-rooms" aria-labelledby="walk-rooms-title">
        <h2 id="walk-rooms-title">Room by room</h2>
        <WalkTimes walk={walk()} take={(next, says) => take(next, says)} />
        <div class="whole">
          <For each={whole()}>{(sentence) => <p>{sentence}</p>}</For>
          <Show when={left() > 0}>
            <p>{left() === 1 ? 'One piece stays' : `${left()} pieces stay`} out of this short walk.</p>
          </Show>
          <Show when={late()}>
            <p class="remark late">{late()}</p>
          </Show>
        </div>
        <ol class="walk-list">
          <For each={rooms()}>
            {(each, i) => {
              const time = () => times()[i()]!;
              return (
                <li>
                  <button
                    type="button"
                    aria-current={open() === i() ? 'true' : undefined}
                    onClick={() => show(i())}
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
                    take(old(), 'It is as it was.');
                    focusAfter(event, () => document.getElementById('walk-room-title'));
                  }}
                >
                  Put it back as it was
                </button>
              )}
            </Show>
          </p>
        </Show>
        <WalkRoom
          room={room()}
          number={open()}
          of={rooms().length}
          before={rooms()[open() - 1]?.name}
          after={rooms()[open() + 1]?.name}
          trouble={troubleOf(room(), times()[open()]!, walk())}
          questions={questions}
          safety={safetyOf(room().stages)}
          pieces={{
            write: (piece, text) => {
              const at = { room: open(), piece };
              const old = room().pieces[piece]!;
              const figures = stillThere(old.figures, old.text, text);
              take(withPiece(walk(), at, { text, figures }), said());
              reread();
            },
            move: (piece, by) => {
              const to = rooms()[open() + by]?.name;
              done(moved(walk(), { room: open(), piece }, by), `Moved to the ${to}.`);
            },
            split: (piece, place) =>
              void done(split(walk(), { room: open(), piece }, place), 'Split in two.'),
            join: (piece) => void done(joined(walk(), { room: open(), piece }), 'Joined.'),
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
                mark ? `${marks[mark]} now.` : 'Told to all now.',
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
              take(withoutRoom(walk(), open()), `${name} is taken out; what was said there is said next to it.`, true); // prettier-ignore
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
      <WalkAudience
        walk={walk()}
        said={useSaid}
        choose={(next, says) => take(next, says)}
        add={(to, piece) => {
          const { name, pieces } = rooms()[to]!;
          take(withRoom(walk(), to, { pieces: [...pieces, piece] }), `Added to the ${name}.`, true);
          setOpen(to);
        }}
        copy={(next, says) => {
          if (!shelveWalk(walk())) return NO_ROOM;
          take({ ...next, name: freeWalkName(next.name) }, says);
          return undefined;
        }}
      />
      <section class="calculator walk-show" aria-labelledby="walk-show-title">
        <h2 id="walk-show-title">The card of the room</h2>
        <div class="walk-card">
          <Show when={isBack()} fallback={<CardFront {...card(open())} />}>
            <CardBack {...card(open())} />
          </Show>
        </div>
        <LeftOff room={room()} />
        <p class="actions">
          <button type="button" aria-pressed={isBack()} onClick={() => setBack(!isBack())}>
            Turn it over
          </button>
          <button type="button" disabled={open() === 0} onClick={() => show(open() - 1)}>
            Room before
          </button>
          <button type="button" disabled={open() === rooms().length - 1} onClick={() => show(open() + 1)}>
            Next room
          </button>
        </p>
        <p class="actions">
          <button type="button" onClick={() => printCards([open()])}>
            Print this card
          </button>
          <button type="button" onClick={() => printCards(rooms().map((_, i) => i))}>
            Print all cards
          </button>
          <button type="button" onClick={() => print()}>
            Print the walk
          </button>
        </p>
        <p class="meaning">
          Four cards to a leaf of A4: print both sides, turned on the long edge, and cut in four.
        </p>
        <details>
          <summary>With every walk: seven cautions</summary>
          <WalkCautions />
        </details>
      </section>
      <WalkKept
        walk={walk()}
        open={(next) => {
          clearTimeout(timer);
          reader.forget();
          setCutting(false);
          show(0);
          return take(next, '');
        }}
        rename={(name) => take({ ...walk(), name }, '')}
      />
      <div class="walk-cards">
        <CardsOnPaper cards={printed()} />
      </div>
      <WalkSheet walk={walk()} times={times()} whole={whole()} today={today()} />
    </div>
  );
}
