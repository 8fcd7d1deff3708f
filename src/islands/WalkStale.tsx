// Sentences of a walk that no longer hold since the house changed: each with a new one in the guide's own manner, taken or left. Nothing changes without a hand.
import { createEffect, createSignal, For, on, onCleanup, Show } from 'solid-js';
import { useKnown } from '../house/known-store.ts';
import { useHouse } from '../house/store.ts';
import { talkFigures } from '../talk/figures.ts';
import { heldAgainst, ofHouse } from '../talk/own-house.ts';
import type { At } from '../walk/change.ts';
import type { HouseNow, Kept, StaleSentence } from '../walk/stale.ts';
import type { Piece, Walk } from '../walk/walk.ts';
import { focusAfter } from './focus-after.ts';

const REST = 400; // ms without a change until the walk is held against the house

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
  let section: HTMLElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));

  /** What the house has of a figure now; of one that it has twice, such as hours over a weekend, the one that was said. */
  const houseOf =
    (kept: readonly Kept[]): HouseNow =>
    (figure) => {
      const own = ofHouse(figure, line());
      if (own === undefined) return undefined;
      const id = talkFigures[figure].inTable;
      if (id !== undefined && known.standing(id) === 'unknown' && !known.isBuiltIn())
        return { value: own, isKnown: false };
      const said = kept.find((each) => each.figure === figure);
      const held = said && heldAgainst({ figure, said: { as: 'rounded', value: said.value } }, line(), known);
      return { value: held?.house ?? own, isKnown: true };
    };
  const look = async () => {
    const { staleIn } = await import('../walk/stale.ts');
    const pieces = props.walk.rooms.flatMap((room, i) =>
      room.pieces.map((piece, j) => ({ at: { room: i, piece: j }, piece })),
    );
    const all = pieces
      .filter(({ piece }) => piece.figures.length > 0)
      .map(({ at, piece }) => {
        const kept = keptOf(piece);
        return { at, piece, stale: staleIn(piece.text, kept, houseOf(kept)) };
      });
    setFound(
      all.flatMap(({ at, piece, stale }) => stale.sentences.map((sentence) => ({ at, piece, sentence }))),
    );
    setTold([...new Set(all.flatMap(({ stale }) => stale.told.map(({ why }) => why)))]);
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
    const { accept } = await import('../walk/accept.ts');
    const kept = keptOf(piece);
    const after = accept(piece.text, kept, [sentence], houseOf(kept));
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
          <For each={waiting()}>
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
