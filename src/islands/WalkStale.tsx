// Sentences of a walk that no longer hold since the house changed: each with a new one in the guide's own manner, taken or left. Nothing changes without a hand.
import { createEffect, createSignal, For, on, onCleanup, Show } from 'solid-js';
import { useKnown } from '../house/known-store.ts';
import { useHouse } from '../house/store.ts';
import type { HowKnown } from '../talk/own-house.ts';
import type { At } from '../walk/change.ts';
import type { Kept, StaleSentence } from '../walk/stale.ts';
import type { Piece, Walk } from '../walk/walk.ts';
import { inTurns } from './in-turns.ts';
import { focusAfter } from './focus-after.ts';

/** What judges a sentence comes once there is one. */
const judges = () =>
  Promise.all([import('../walk/stale.ts'), import('../walk/house-now.ts'), import('../walk/accept.ts')]);

const REST = 400; // ms without a change until the walk is held against the house

const SHOWN = 4; // sentences at a time: a phone’s screen or two

interface Found {
  readonly at: At;
  readonly piece: Piece;
  readonly sentence: StaleSentence;
}

const keptOf = ({ figures }: Piece): readonly Kept[] => figures.map((each) => ({ ...each, chance: 1 }));
const nameOf = ({ sentence: { stood, anew } }: Found) => `${stood}\n${anew}`;

export function WalkStale(props: {
  readonly walk: Walk;
  readonly isReady: boolean;
  /** Puts a piece as it has become in the place of one. */
  readonly put: (at: At, piece: Partial<Piece>) => void;
}) {
  const { line, name } = useHouse();
  const known = useKnown();
  const [found, setFound] = createSignal<readonly Found[]>([]);
  const [told, setTold] = createSignal<readonly string[]>([]);
  const [left, setLeft] = createSignal<ReadonlySet<string>>(new Set());
  /** Of the built-in house all is known. */
  const howKnown: HowKnown = {
    counted: known.counted,
    standing: (id) => (known.isBuiltIn() && known.standing(id) === 'unknown' ? 'set' : known.standing(id)),
  };
  const turns = inTurns();
  let section: HTMLElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));

  const look = async () => {
    const [{ staleIn }, { houseNow }] = await judges();
    const pieces = props.walk.rooms.flatMap((room, i) =>
      room.pieces.map((piece, j) => ({ at: { room: i, piece: j }, piece })),
    );
    const sentences: Found[] = [];
    const why = new Set<string>();
    turns([
      ...pieces.map(({ at, piece }) => () => {
        if (piece.figures.length === 0) return;
        const kept = keptOf(piece);
        const stale = staleIn(piece.text, kept, houseNow(line(), howKnown, kept));
        sentences.push(...stale.sentences.map((sentence) => ({ at, piece, sentence })));
        for (const each of stale.told) why.add(each.why);
      }),
      () => {
        setFound(sentences);
        setTold([...why]);
      },
    ]);
  };
  createEffect(
    on(
      () => [props.walk.rooms, props.isReady, line(), known.known(), known.unknown()] as const,
      ([rooms, isReady]) => {
        clearTimeout(timer);
        if (!isReady) return;
        if (rooms.every(({ pieces }) => pieces.every(({ figures }) => figures.length === 0))) {
          setFound([]);
          return void setTold([]);
        }
        timer = setTimeout(() => void look().catch(() => undefined), REST); // without it a walk is as good, and its sentences stay
      },
    ),
  );
  const take = async ({ at, piece, sentence }: Found) => {
    if (props.walk.rooms[at.room]?.pieces[at.piece] !== piece) return look(); // it was changed since
    const [, { houseNow }, { accept }] = await judges();
    const kept = keptOf(piece);
    const after = accept(piece.text, kept, [sentence], houseNow(line(), howKnown, kept));
    const figures = after.kept
      .filter(({ at, words }) => words !== '' && after.text.startsWith(words, at))
      .map(({ chance: _, ...each }) => each);
    setFound(found().filter((each) => each.sentence !== sentence));
    props.put(at, { text: after.text, figures });
  };
  const waiting = () => found().filter((each) => !left().has(nameOf(each)));
  return (
    <Show when={waiting().length > 0 || told().length > 0}>
      <section class="calculator walk-stale" aria-labelledby="walk-stale-title" ref={section}>
        <h2 id="walk-stale-title" tabindex="-1">
          Sentences that no longer hold ({waiting().length})
        </h2>
        <Show when={waiting().length > 0}>
          <p>They were said of other figures than {name()} has now. Nothing is changed until you take it.</p>
        </Show>
        <ol class="stale">
          <For each={waiting().slice(0, SHOWN)}>
            {(each) => (
              <li>
                <p>
                  <b>{props.walk.rooms[each.at.room]?.name}.</b> <del>{each.sentence.stood.trim()}</del>
                </p>
                <p>
                  <ins>{each.sentence.anew.trim()}</ins>
                </p>
                <p class="meaning">{each.sentence.why}</p>
                <p class="actions">
                  <button
                    type="button"
                    onClick={(event) => {
                      void take(each);
                      focusAfter(event, () => section?.querySelector('h2'));
                    }}
                  >
                    Take the new sentence
                  </button>
                  <button
                    type="button"
                    onClick={(event) => {
                      setLeft(new Set([...left(), nameOf(each)]));
                      focusAfter(event, () => section?.querySelector('h2'));
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
