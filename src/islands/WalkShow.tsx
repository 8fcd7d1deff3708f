// What a guide takes along: the card of the open room, both sides, and on paper the cards and the walk.
import { createEffect, createSignal, on, onCleanup, onMount, Show } from 'solid-js';
import type { Stage } from '../house/figures.ts';
import type { RoomTime } from '../walk/time.ts';
import { figuresOfCard, type PrintedCard, type Walk } from '../walk/walk.ts';
import { useHouse } from '../browser/house-store.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { printPart } from './print-part.ts';
import { dateInWords, today as now } from './today.ts';
import { CardBack, CardFront, CardsOnPaper, FiguresLeftOff, type CardOf } from './WalkCard.tsx';
import { useCardWords, type Theirs } from './walk-card-words.ts';
import type { WalkQuestion } from './WalkDesk.tsx';
import { WalkCautions } from './WalkCautions.tsx';
import { WalkSheet } from './WalkSheet.tsx';

const WalkDrawing = fetchedWhenWanted(() => import('./WalkDrawing.tsx').then((come) => come.WalkDrawing));

export function WalkShow(props: {
  readonly walk: Walk;
  /** True when the walk was written for another house than the one that stands here. */
  readonly isOther: boolean;
  /** The number of the open room. */
  readonly open: number;
  readonly times: readonly RoomTime[];
  /** What is said of the whole. */
  readonly whole: readonly string[];
  readonly questions: readonly WalkQuestion[];
  readonly safetyOf: (stages: readonly Stage[]) => readonly string[];
  readonly today: string;
  readonly show: (room: number) => void;
  /** Takes the print of cards, by the numbers of their rooms. */
  readonly printer: { print?: (rooms: readonly number[]) => void };
  /** Hears of cards as they are printed. */
  readonly printed: (cards: readonly PrintedCard[]) => void;
}) {
  const [isBack, setBack] = createSignal(false);
  const [isSeen, setSeen] = createSignal(false);
  let shown: HTMLDivElement | undefined;
  onMount(() => {
    const seeing = new IntersectionObserver(
      (all) => all.some((each) => each.isIntersecting) && setSeen(true),
    );
    seeing.observe(shown!);
    onCleanup(() => seeing.disconnect());
  });
  const [printed, setPrinted] = createSignal<readonly CardOf[]>([]);
  const [cards, setCards] = createSignal<Theirs['cards']>();
  const [hasFailed, setFailed] = createSignal(false);
  createEffect(on(() => props.open, () => setBack(false))); // prettier-ignore
  createEffect(() => {
    if (props.walk.saidIn && !cards())
      import('../walk/audience-cards.ts').then((come) => setCards(() => come), () => setFailed(true)); // prettier-ignore
  });
  const theirs = (): Theirs | undefined => {
    const [{ saidIn }, come] = [props.walk, cards()];
    return saidIn && come && { saidIn, cards: come };
  };
  const { name } = useHouse();
  const said = useCardWords(theirs);
  const last = () => props.walk.rooms.length - 1;
  const open = () => Math.min(props.open, last()); // a room may have just been taken out
  const card = (i: number): CardOf => ({
    room: props.walk.rooms[i]!,
    number: i,
    of: last() + 1,
    time: props.times[i]!,
    questions: props.questions,
    safety: props.safetyOf(props.walk.rooms[i]!.stages),
    today: props.today,
    theirs: theirs(),
    whose: props.isOther ? props.walk.house : undefined,
  });
  /** A card as it is printed now, to be held against the house later. */
  const asPrinted = (i: number): PrintedCard => {
    const { room, theirs } = card(i);
    return {
      room: room.name,
      on: now(),
      house: name(),
      ...(theirs ? { saidIn: theirs.saidIn } : {}),
      figures: figuresOfCard(room).flatMap((figure) => {
        const { value, says, mark } = said.figure(figure) ?? {};
        return says === undefined ? [] : [{ figure, value: value!, says, ...(mark ? { mark } : {}) }];
      }),
      answers: props.questions
        .filter(({ id }) => room.asks.includes(id))
        .map((question) => ({ ask: question.id, says: said.answer(question) })),
    };
  };
  const printCards = (numbers: readonly number[]) => {
    const cards = numbers.map(asPrinted);
    setPrinted(numbers.map(card));
    addEventListener('afterprint', () => setPrinted([]), { once: true });
    queueMicrotask(() => {
      printPart('walk-cards');
      if (!props.isOther) props.printed(cards);
    });
  };
  props.printer.print = printCards;
  const ofPrinted = () => {
    const { printed = [], rooms } = props.walk;
    const many = rooms.filter(({ name }) => printed.some(({ room }) => room === name)).length;
    if (many === 0) return 'No card of this walk has been printed yet. Once one is, you are told here when the house makes it stale.'; // prettier-ignore
    const on = printed.map(({ on }) => on).sort().at(-1)!; // prettier-ignore
    return `Cards printed of ${many} of ${rooms.length} rooms, last on ${dateInWords(on)}. Those that the house makes stale are told of above.`;
  };
  return (
    <>
      <section class="calculator walk-show" aria-labelledby="walk-show-title">
        <h2 id="walk-show-title" tabindex="-1">
          The card of the room
        </h2>
        <div role="status">
          <Show when={hasFailed()}>
            <p class="problem">The cards could not be put in those units: they are in your own.</p>
          </Show>
        </div>
        <div class="walk-card" ref={shown}>
          <WalkDrawing isWanted={isSeen() && !isBack()} stages={props.walk.rooms[open()]!.stages} />
          <Show when={isBack()} fallback={<CardFront {...card(open())} />}>
            <CardBack {...card(open())} />
          </Show>
        </div>
        <Show when={props.isOther} fallback={<FiguresLeftOff room={props.walk.rooms[open()]!} />}>
          <p class="meaning">
            Its figures and answers are left off: they are of {props.walk.house}, which is not here.
          </p>
        </Show>
        <p class="actions">
          <button type="button" aria-pressed={isBack()} onClick={() => setBack(!isBack())}>
            Turn it over
          </button>
          <button type="button" disabled={open() === 0} onClick={() => props.show(open() - 1)}>
            Room before
          </button>
          <button type="button" disabled={open() === last()} onClick={() => props.show(open() + 1)}>
            Next room
          </button>
        </p>
        <p class="actions">
          <button type="button" onClick={() => printCards([open()])}>
            Print this card
          </button>
          <button type="button" onClick={() => printCards(props.walk.rooms.map((_, i) => i))}>
            Print all cards
          </button>
          <button type="button" onClick={() => print()}>
            Print the walk
          </button>
        </p>
        <p class="meaning">
          {ofPrinted()} Four cards to a leaf of A4: print both sides, turned on the long edge, and cut in
          four.
        </p>
        <details>
          <summary>With every walk: seven cautions</summary>
          <WalkCautions />
        </details>
      </section>
      <div class="walk-cards">
        <CardsOnPaper cards={printed()} />
      </div>
      <WalkSheet walk={props.walk} times={props.times} whole={props.whole} today={props.today} />
    </>
  );
}
