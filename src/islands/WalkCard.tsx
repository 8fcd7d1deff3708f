// The card of one room: what the guide needs there on the front, what is asked and the caution on the back.
import { For, Show } from 'solid-js';
import { cardFigures } from '../house/card-figures.ts';
import { stampInWords } from '../house/book.ts';
import { useHouse } from '../browser/house-store.ts';
import { clockOf, inMinutes, type RoomTime } from '../walk/time.ts';
import { roomBans, figuresOfCard, type Room } from '../walk/walk.ts';
import type { WalkQuestion } from './WalkDesk.tsx';
import { useCardWords, type Theirs } from './walk-card-words.ts';

const labels = new Map(cardFigures.map(({ id, label }) => [id, label]));

export interface CardOf {
  readonly room: Room;
  readonly number: number;
  readonly of: number;
  readonly time: RoomTime;
  readonly questions: readonly WalkQuestion[];
  readonly safety: readonly string[];
  readonly today: string;
  /** The units of those who come; nothing for the reader's own. */
  readonly theirs?: Theirs | undefined;
  /** The house that it was written for, where another stands here: no figure of that one is then on it. */
  readonly whose?: string | undefined;
}

export function CardFront(props: CardOf) {
  const { figure } = useCardWords(() => props.theirs);
  const { name } = useHouse();
  const figures = () => (props.whose === undefined ? figuresOfCard(props.room).flatMap((id) => figure(id) ?? []) : []); // prettier-ignore
  const forbids = () => [...props.room.bans.map((ban) => roomBans[ban]), ...(props.room.rule ? [props.room.rule] : [])]; // prettier-ignore
  const asked = () => props.questions.flatMap(({ id, question }) => (props.room.asks.includes(id) ? [question] : [])); // prettier-ignore
  return (
    <div class="walk-side front">
      <h3>{props.room.name}</h3>
      <p class="when">
        {props.number + 1} of {props.of} · {clockOf(props.time.from)} to {clockOf(props.time.to)} ·{' '}
        {inMinutes(props.room.minutes)}
      </p>
      <dl>
        <For each={figures()}>
          {({ label, says, mark }) => (
            <div>
              <dt>{label}</dt>
              <dd>
                {says}
                <Show when={mark}>
                  <small>{mark}</small>
                </Show>
              </dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={props.room.line}>
        <p class="line">{props.room.line}</p>
      </Show>
      <Show when={props.room.shows}>
        <p>Show: {props.room.shows}</p>
      </Show>
      <Show when={asked().length > 0}>
        <p class="may-ask">They may ask: {asked().join(' ')}</p>
      </Show>
      <Show when={forbids().length > 0}>
        <p class="forbids">{forbids().join(' · ')}</p>
      </Show>
      <p class="card-foot">
        {stampInWords(props.whose ?? name())}, {props.today}.
        {figures().length > 0
          ? ' Figures are computed, or set by the house, where nothing stands beside them.'
          : ''}
      </p>
    </div>
  );
}

export function CardBack(props: CardOf) {
  const { answer } = useCardWords(() => props.theirs);
  const { name } = useHouse();
  const asked = () => props.questions.filter(({ id }) => props.room.asks.includes(id));
  return (
    <div class="walk-side back">
      <h3>{props.room.name}: what they ask</h3>
      <Show when={asked().length > 0} fallback={<p>No question is ticked for this card.</p>}>
        <dl class="asked">
          <For each={asked()}>
            {(question) => (
              <div>
                <dt>{question.question}</dt>
                <dd>{props.whose === undefined ? answer(question) : ''}</dd>
              </div>
            )}
          </For>
        </dl>
      </Show>
      <For each={props.safety}>{(line) => <p class="safety">{line}</p>}</For>
      <p class="card-foot">
        {stampInWords(props.whose ?? name())}, {props.today}.
      </p>
    </div>
  );
}

/** The figures that are left off a card, as the house has not given them yet. */
export function FiguresLeftOff(props: { readonly room: Room }) {
  const { figure } = useCardWords(() => undefined);
  const { name } = useHouse();
  const left = () =>
    figuresOfCard(props.room)
      .filter((id) => figure(id) === undefined)
      .map((id) => labels.get(id)!)
      .map((label) => label[0]!.toLowerCase() + label.slice(1));
  return (
    <Show when={left().length > 0}>
      <p class="meaning">
        Left off, as they are not {name()}’s own yet: {left().join(', ')}.{' '}
        <a href="../house/">Fill them in</a>
      </p>
    </Show>
  );
}

/** Cards to print: four fronts to a leaf, and their backs on its other side, turned on the long edge. */
export function CardsOnPaper(props: { readonly cards: readonly CardOf[] }) {
  const leaves = () =>
    Array.from({ length: Math.ceil(props.cards.length / 4) }, (_, i) => props.cards.slice(4 * i, 4 * i + 4));
  /** Each pair the other way round, so that a back lies behind its front. */
  const turned = (cards: readonly CardOf[]) =>
    [1, 0, 3, 2].map((i) => cards[i]).slice(0, cards.length > 2 ? 4 : 2);
  return (
    <For each={leaves()}>
      {(cards) => (
        <>
          <div class="leaf">
            <For each={cards}>{(card) => <CardFront {...card} />}</For>
          </div>
          <div class="leaf">
            <For each={turned(cards)}>
              {(card) => (
                <Show when={card} fallback={<div class="walk-side" />}>
                  {(here) => <CardBack {...here()} />}
                </Show>
              )}
            </For>
          </div>
        </>
      )}
    </For>
  );
}
