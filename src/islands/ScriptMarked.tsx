// The script with its figures marked, shown a few paragraphs at a time; a mark that is touched opens what it was taken for, how surely, and what else it might be.
import { batch, createEffect, createMemo, createSignal, For, on, Show, type Accessor } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import type { Finding } from '../core/line/reconcile.ts';
import { useKnown } from '../house/known-store.ts';
import { useHouse } from '../house/store.ts';
import { figureIds, talkFigures, type FigureId } from '../talk/figures.ts';
import { labelOf, numberOf, quotableOf } from '../talk/labels.ts';
import { heldAgainst, type Held } from '../talk/own-house.ts';
import { paragraphsOf, type Paragraph } from '../talk/paragraphs.ts';
import { figureIn, saidIn } from '../talk/quoted-in.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { NOT_OURS } from '../talk/settled.ts';
import { inTurns } from './in-turns.ts';
import type { TalkRead } from './script-reading.worker.ts';

const NEAR = 3; // other figures that are offered at once
const AT_ONCE = 8; // marks that are put on the page in one task
const LETTERS = 1500; // and characters

export interface ScriptMarkedProps {
  readonly read: TalkRead;
  readonly held: boolean;
  /** Takes the quantity at a place of a text for another figure, or for none. */
  readonly settle: (text: string, place: number, figure: FigureId | typeof NOT_OURS) => void;
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

/** What is found of a mark. */
interface Judged {
  readonly figure: FigureId | undefined;
  readonly finding: Finding;
  /** What the house has, where what was said is held against it. */
  readonly own: Held | undefined;
}
const UNJUDGED: Judged = { figure: undefined, finding: 'not checkable', own: undefined };

const sureness = (confidence: number) => (confidence >= 0.8 ? 'fairly sure' : confidence >= 0.5 ? 'not sure' : 'a guess'); // prettier-ignore
const keyOf = ({ text, quantities }: Pick<Paragraph, 'text' | 'quantities'>) =>
  JSON.stringify([text, quantities.map(({ start, end, figure, confidence }) => [start, end, figure, sureness(confidence)])]); // prettier-ignore

export function ScriptMarked(props: ScriptMarkedProps) {
  const { line } = useHouse();
  const known = useKnown();
  const [read, setRead] = createSignal(props.read);
  const [list, setList] = createSignal<readonly Shown[]>([]);
  const [open, setOpen] = createSignal<ReadQuantity>();
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

  const judged = createMemo<ReadonlyMap<number, Judged>>(() => {
    const { script, settled, answer } = read();
    const findings = new Map(
      answer && !isRefusal(answer) ? answer.figures.map(({ figure, finding }) => [figure, finding]) : [],
    );
    return new Map(
      script.quantities.map((quantity) => {
        const [figure, said] = [figureIn(quantity, settled), saidIn(quantity)];
        const own = props.held && figure && said ? heldAgainst({ figure, said }, line(), known) : undefined;
        const name = figure && quotableOf(figure);
        // What the house says of a quantity goes before what the other figures say of it.
        const finding = own
          ? own.agrees
            ? 'agrees'
            : own.isEstimate
              ? 'doubtful'
              : 'disagrees'
          : ((name && findings.get(name)) ?? 'not checkable');
        return [quantity.start, { figure, finding, own }];
      }),
    );
  });

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
                      aria-expanded={open() === quantity}
                      onClick={() => setOpen(open() === quantity ? undefined : quantity)}
                    >
                      {paragraph.text.slice(quantity.start, quantity.end)}
                    </button>
                    <Show when={open() === quantity}>
                      <Panel
                        quantity={quantity}
                        of={of()}
                        settle={(to) => {
                          props.settle(read().text, place(), to);
                          setOpen(undefined);
                        }}
                      />
                    </Show>
                  </>
                );
              }}
            </For>
            {paragraph.text.slice(paragraph.quantities.at(-1)?.end ?? 0)}
          </div>
        )}
      </For>
    </div>
  );
}

function Panel(props: {
  readonly quantity: ReadQuantity;
  readonly of: Judged;
  readonly settle: (to: FigureId | typeof NOT_OURS) => void;
}) {
  const { name } = useHouse();
  const figure = () => props.of.figure;
  const tells = () => {
    const { own, finding } = props.of;
    return own && !own.agrees ? `${name()} has ${numberOf(own.figure, own.house)}` : finding;
  };
  const others = () => props.quantity.runnersUp.filter((other) => other !== figure()).slice(0, NEAR);
  const isProposed = () => figure() !== undefined && figure() === props.quantity.figure;
  return (
    <span class="taken" role="group" aria-label={`What ${props.quantity.text} is taken for`}>
      <span class="taken-for">
        <b>{figure() ? labelOf(figure()!) : 'No figure of the house'}</b>
        <Show when={isProposed()}> ({sureness(props.quantity.confidence)})</Show>: {tells()}.
      </span>
      <For each={others()}>
        {(other) => (
          <button type="button" onClick={() => props.settle(other)}>
            {labelOf(other)}
          </button>
        )}
      </For>
      <Show when={figure()}>
        <button type="button" onClick={() => props.settle(NOT_OURS)}>
          Not ours
        </button>
      </Show>
      <label>
        Something else{' '}
        <select autocomplete="off" onChange={(event) => props.settle(event.currentTarget.value as FigureId)}>
          <option value="">Choose …</option>
          <For each={figureIds.filter((id) => id !== figure() && Object.hasOwn(talkFigures, id))}>
            {(id) => <option value={id}>{labelOf(id)}</option>}
          </For>
        </select>
      </label>
    </span>
  );
}
