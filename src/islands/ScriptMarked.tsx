// The talk with its figures marked, shown a few paragraphs at a time; a mark that is touched opens, under its paragraph, what it was taken for.
import { batch, createEffect, createMemo, createSignal, For, on, Show, type Accessor } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import { useHouse } from '../browser/house-store.ts';
import { quotableOf } from '../talk/labels.ts';
import { paragraphsOf, type Paragraph } from '../talk/paragraphs.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { focusAfter } from './focus-after.ts';
import { useHowKnown } from './how-known.ts';
import { heldByKnown, isNotKnown } from './script-held.ts';
import { inTurns } from './in-turns.ts';
import type { PutRight } from './script-corrections.ts';
import type { TalkRead } from './script-reading.worker.ts';
import { ScriptTaken, surenessInWords, type JudgedMark } from './ScriptTaken.tsx';

const AT_ONCE = 8; // marks that are put on the page in one task
const LETTERS = 1500; // and characters
const PANEL = 'script-taken';

export interface ScriptMarkedProps {
  readonly read: TalkRead;
  readonly held: boolean;
  /** Takes what stands at a place of the text that was read for another figure, or for none. */
  readonly settle: (read: TalkRead, start: number, end: number, figure: PutRight) => void;
}

/** Brings a mark into sight and opens it. */
export function openMark(place: number): void {
  const mark = document.querySelector<HTMLElement>(`.marked [data-at="${place}"]`);
  mark?.focus({ preventScroll: true });
  mark?.scrollIntoView({ block: 'center' });
  if (mark?.getAttribute('aria-expanded') === 'false') mark.click();
}

/** A paragraph as it stands on the page; an edit before it moves its place. */
interface Shown extends Pick<Paragraph, 'text' | 'quantities'> {
  readonly at: Accessor<number>;
  readonly move: (at: number) => void;
}
const shownAs = ({ text, quantities, at: place }: Paragraph): Shown => {
  const [at, move] = createSignal(place);
  return { text, quantities, at, move: (next) => void move(next) };
};

const UNJUDGED: JudgedMark = { taken: undefined, finding: 'not checkable', own: undefined, lacks: false };

const keyOf = ({ text, quantities }: Pick<Paragraph, 'text' | 'quantities'>) =>
  JSON.stringify([text, quantities.map(({ start, end, figure, confidence }) => [start, end, figure, surenessInWords(confidence)])]); // prettier-ignore

export function ScriptMarked(props: ScriptMarkedProps) {
  const { line } = useHouse();
  const known = useHowKnown(() => props.held);
  const [read, setRead] = createSignal(props.read);
  const [list, setList] = createSignal<readonly Shown[]>([]);
  const [open, setOpen] = createSignal<{ readonly of: ReadQuantity; readonly by: Event }>();
  const turns = inTurns();

  /** The paragraphs of what was read: those that stand on the page already stay, the others come a few at a time. */
  const show = (next: TalkRead) => {
    const there = new Map<string, Shown[]>();
    for (const each of list()) {
      const key = keyOf(each);
      there.set(key, [...(there.get(key) ?? []), each]);
    }
    const moves: (() => void)[] = [];
    const turnOf = new Map<Shown, number>();
    let [turn, room, letters] = [0, AT_ONCE, LETTERS];
    for (const paragraph of paragraphsOf(next.text, next.script.quantities)) {
      const stays = there.get(keyOf(paragraph))?.shift();
      if (stays) {
        moves.push(() => stays.move(paragraph.at));
        turnOf.set(stays, 0);
        continue;
      }
      [room, letters] = [room - paragraph.quantities.length, letters - paragraph.text.length];
      if (room < 0 || letters < 0)
        [turn, room, letters] = [
          turn + 1,
          AT_ONCE - paragraph.quantities.length,
          LETTERS - paragraph.text.length,
        ];
      turnOf.set(shownAs(paragraph), turn);
    }
    const upTo = (last: number) => [...turnOf].flatMap(([each, its]) => (its <= last ? [each] : []));
    turns(
      Array.from(
        { length: turn + 1 },
        (_, i) => () =>
          batch(() => {
            if (i === 0) {
              for (const move of moves) move();
              setRead(next);
            }
            setList(upTo(i));
          }),
      ),
    );
  };
  createEffect(on(() => props.read, show));

  const answer = () => {
    const found = read().answer;
    return found && !isRefusal(found) ? found : undefined;
  };
  const judged = createMemo<ReadonlyMap<number, JudgedMark>>(() => {
    const findings = new Map(answer()?.figures.map(({ figure, finding }) => [figure, finding]));
    return new Map(
      Object.entries(read().taken).map(([place, taken]) => {
        const own = props.held ? heldByKnown(taken, line(), known) : undefined;
        const name = quotableOf(taken.figure);
        // What the house says of a quantity goes before what the other figures say of it.
        const finding = own
          ? own.agrees
            ? 'agrees'
            : 'disagrees'
          : ((name && findings.get(name)) ?? 'not checkable');
        const lacks = props.held && isNotKnown(taken.figure, known);
        return [Number(place), { taken, finding, own, lacks }];
      }),
    );
  });
  const unsure = createMemo(() => new Set(read().unsure.map(({ start }) => start)));
  const putRight = createMemo(() => new Set(read().putRight));
  const markAt = (place: number) => () => document.querySelector<HTMLElement>(`.marked [data-at="${place}"]`);
  /** The words of the same figure where it is told otherwise. */
  const elsewhere = (place: number) => {
    const figure = read().taken[place]?.figure;
    const twice = read().twice.find((each) => figure === undefined ? each.places.includes(place) : each.figure === figure); // prettier-ignore
    return (twice?.places ?? []).flatMap((other) => {
      const quantity = read().script.quantities.find(({ start }) => start === other);
      return other === place || !quantity ? [] : [quantity.text];
    });
  };

  return (
    <div class="marked">
      <For each={list()}>
        {(paragraph) => (
          <div>
            <For each={paragraph.quantities}>
              {(quantity, i) => {
                const place = () => paragraph.at() + quantity.start;
                const of = createMemo(() => judged().get(place()) ?? UNJUDGED);
                return (
                  <>
                    {paragraph.text.slice(paragraph.quantities[i() - 1]?.end ?? 0, quantity.start)}
                    <button
                      type="button"
                      class={`mark ${of().finding.replace(' ', '-')}`}
                      classList={{
                        unsure: unsure().has(place()),
                        none: !of().taken && !unsure().has(place()),
                        'put-right': putRight().has(place()),
                      }}
                      data-at={place()}
                      aria-expanded={open()?.of === quantity}
                      aria-controls={open()?.of === quantity ? PANEL : undefined}
                      onClick={(by) => setOpen(open()?.of === quantity ? undefined : { of: quantity, by })}
                    >
                      {paragraph.text.slice(quantity.start, quantity.end)}
                    </button>
                  </>
                );
              }}
            </For>
            {paragraph.text.slice(paragraph.quantities.at(-1)?.end ?? 0)}
            <Show when={paragraph.quantities.find((quantity) => quantity === open()?.of)} keyed>
              {(quantity) => {
                const place = () => paragraph.at() + quantity.start;
                const leave = (event: Event) => {
                  setOpen(undefined);
                  focusAfter(event, markAt(place()));
                };
                return (
                  <ScriptTaken
                    id={PANEL}
                    quantity={quantity}
                    of={judged().get(place()) ?? UNJUDGED}
                    because={read().because[place()] ?? []}
                    isUnsure={unsure().has(place())}
                    elsewhere={elsewhere(place())}
                    answer={answer()}
                    settle={(event, figure) => {
                      props.settle(read(), place(), paragraph.at() + quantity.end, figure);
                      leave(event);
                    }}
                    close={leave}
                    takesFocus={(open()!.by as PointerEvent).pointerType !== 'touch'}
                  />
                );
              }}
            </Show>
          </div>
        )}
      </For>
    </div>
  );
}
