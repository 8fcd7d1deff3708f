// The sentences of a walk that no longer hold, each with a new one in the guide's own manner, taken or left. Nothing changes without a hand.
import { createEffect, createSignal, For, lazy, on, onCleanup, Show } from 'solid-js';
import { liveHanging, useKnown } from '../browser/known-store.ts';
import { useHouse } from '../browser/house-store.ts';
import type { HowKnown } from '../talk/own-house.ts';
import { acceptStale } from '../walk/accept.ts';
import type { PiecePlace } from '../walk/change.ts';
import { houseNow } from '../walk/house-now.ts';
import { isLeft, leftAsIs, withLeft, withoutLeft } from '../walk/left-as-is.ts';
import { staleIn, type KeptQuantity, type OfferedFigure, type StaleSentence } from '../walk/stale.ts';
import type { LeftAsIs, Piece } from '../walk/walk.ts';
import { useHowKnown } from './how-known.ts';
import { inTurns } from './in-turns.ts';
import { focusAfter } from './focus-after.ts';
import type { StaleProps } from './WalkStale.tsx';

// What changes the house comes with the first figure that it may take.
const WalkOffered = lazy(() => import('./WalkOffered.tsx').then((part) => ({ default: part.WalkOffered })));

const REST = 400; // ms without a change until the walk is held against the house
const SHOWN = 4; // sentences at a time: a phone’s screen or two

interface Found {
  readonly at: PiecePlace;
  readonly piece: Piece;
  readonly sentence: StaleSentence;
  /** The sentence as it is kept when it is left. */
  readonly left: LeftAsIs;
}

const keptOf = ({ figures }: Piece): readonly KeptQuantity[] =>
  figures.map((each) => ({ ...each, chance: 1 }));

export function WalkStaleOpen(props: StaleProps) {
  const { line, name } = useHouse();
  const known = useKnown();
  const [found, setFound] = createSignal<readonly Found[]>([]);
  const [told, setTold] = createSignal<readonly string[]>([]);
  const [isOffered, setIsOffered] = createSignal(false); // from the first on, so that what was done stays said
  const [offered, setOffered] = createSignal<readonly OfferedFigure[]>([]);
  const own = useHowKnown(() => true);
  /** Of the built-in house all is known. */
  const howKnown: HowKnown = {
    counted: known.counted,
    get vessels() {
      return own.vessels ?? {};
    },
    standing: (id) => (known.isBuiltIn() && known.standing(id) === 'unknown' ? 'set' : known.standing(id)),
  };
  const turns = inTurns();
  let section: HTMLElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));

  const houseOf = (kept: readonly KeptQuantity[]) => houseNow(line(), howKnown, kept);
  const look = () => {
    const pieces = props.walk.rooms.flatMap((room, i) =>
      room.pieces.map((piece, j) => ({ at: { room: i, piece: j }, piece })),
    );
    const sentences: Found[] = [];
    const why = new Set<string>();
    const offers = new Map<string, OfferedFigure>();
    turns([
      ...pieces.map(({ at, piece }) => () => {
        if (piece.figures.length === 0) return;
        const kept = keptOf(piece);
        const house = houseOf(kept);
        const stale = staleIn(piece.text, kept, house);
        for (const sentence of stale.sentences)
          sentences.push({ at, piece, sentence, left: leftAsIs(sentence, kept, house) });
        for (const each of stale.told) why.add(each.why);
        for (const each of stale.offered) if (!offers.has(each.figure)) offers.set(each.figure, each);
      }),
      () => {
        setFound(sentences);
        setTold([...why]);
        setOffered([...offers.values()]);
        if (offers.size > 0) setIsOffered(true);
      },
    ]);
  };
  createEffect(
    on(
      () => [props.walk.rooms, line(), known.known(), known.unknown(), liveHanging(), own.vessels] as const,
      () => {
        clearTimeout(timer);
        timer = setTimeout(look, REST);
      },
    ),
  );
  const take = ({ at, piece, sentence }: Found) => {
    if (props.walk.rooms[at.room]?.pieces[at.piece] !== piece) return look(); // it was changed since
    const kept = keptOf(piece);
    const after = acceptStale(piece.text, kept, [sentence], houseOf(kept));
    const figures = after.kept
      .filter(({ at, words }) => words !== '' && after.text.startsWith(words, at))
      .map(({ chance: _, ...each }) => each);
    setFound(found().filter((each) => each.sentence !== sentence));
    props.put(at, { text: after.text, figures });
  };
  const waiting = () => found().filter(({ left }) => !isLeft(props.walk, left));
  const left = () => found().filter(({ left }) => isLeft(props.walk, left));
  const roomOf = ({ at }: Found) => props.walk.rooms[at.room]?.name;
  const toTitle = (event: Event) => focusAfter(event, () => section?.querySelector('h2'));
  return (
    <Show when={found().length + told().length + offered().length > 0}>
      <section class="calculator walk-stale" aria-labelledby="walk-stale-title" ref={section}>
        <h2 id="walk-stale-title" tabindex="-1">
          {found().length > 0
            ? `Sentences that no longer hold (${waiting().length})`
            : `Held against ${name()}: no sentence is wrong`}
        </h2>
        <Show when={waiting().length > 0}>
          <p>They were said of other figures than {name()} has now. Nothing is changed until you take it.</p>
        </Show>
        <ol class="stale">
          <For each={waiting().slice(0, SHOWN)}>
            {(each) => (
              <li>
                <p>
                  <b>{roomOf(each)}.</b> <del>{each.sentence.stood.trim()}</del>
                </p>
                <p>
                  <ins>{each.sentence.anew.trim()}</ins>
                </p>
                <p class="meaning">{each.sentence.why}</p>
                <p class="actions">
                  <button
                    type="button"
                    onClick={(event) => {
                      take(each);
                      toTitle(event);
                    }}
                  >
                    Take the new sentence
                  </button>
                  <button
                    type="button"
                    onClick={(event) => {
                      props.leave(withLeft(props.walk, each.left), 'It is left as it is.');
                      toTitle(event);
                    }}
                  >
                    Leave it
                  </button>
                </p>
              </li>
            )}
          </For>
        </ol>
        <Show when={waiting().length > SHOWN}>
          <p class="meaning">The next {waiting().length - SHOWN} come when these are taken or left.</p>
        </Show>
        <Show when={left().length > 0}>
          <details>
            <summary>Left as they are ({left().length})</summary>
            <p class="meaning">Each is asked again when the house has another figure.</p>
            <ul class="sentences">
              <For each={left()}>
                {(each) => (
                  <li>
                    <p>
                      <b>{roomOf(each)}.</b> {each.sentence.stood.trim()}
                    </p>
                    <p class="meaning">{each.sentence.why}</p>
                    <p class="actions">
                      <button
                        type="button"
                        aria-label={`Ask again: ${each.sentence.stood.trim().slice(0, 40)}`}
                        onClick={(event) => {
                          props.leave(withoutLeft(props.walk, each.left), 'It is asked again.');
                          toTitle(event);
                        }}
                      >
                        Ask again
                      </button>
                    </p>
                  </li>
                )}
              </For>
            </ul>
          </details>
        </Show>
        <Show when={isOffered()}>
          <WalkOffered offered={offered()} name={name()} />
        </Show>
        <Show when={told().length > 0}>
          <details>
            <summary>Figures that could not be held against the house ({told().length})</summary>
            <ul class="sentences">
              <For each={told()}>{(why) => <li>{why}</li>}</For>
            </ul>
          </details>
        </Show>
      </section>
    </Show>
  );
}
