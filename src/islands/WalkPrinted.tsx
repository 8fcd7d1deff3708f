// Printed cards that say otherwise than the house now: room and figures, to be printed anew or thrown away.
import { createMemo, For, Show } from 'solid-js';
import { liveHanging } from '../browser/known-store.ts';
import { useHouse } from '../browser/house-store.ts';
import * as cards from '../walk/audience-cards.ts';
import { answersMoved, movedOn, withoutPrinted, type MovedOnCard } from '../walk/printed.ts';
import type { PrintedCard, Walk } from '../walk/walk.ts';
import { focusAfter } from './focus-after.ts';
import { dateInWords } from './today.ts';
import { useCardWords, type Theirs } from './walk-card-words.ts';
import type { WalkQuestion } from './WalkDesk.tsx';

export interface PrintedProps {
  readonly walk: Walk;
  readonly questions: readonly WalkQuestion[];
  /** Prints the cards of rooms, by their numbers. */
  readonly print: (rooms: readonly number[]) => void;
  /** Takes the walk without a printed card; `says` what was done. */
  readonly drop: (walk: Walk, says: string) => void;
}

interface StaleCard {
  readonly card: PrintedCard;
  readonly moved: readonly MovedOnCard[];
  /** Questions with another answer now. */
  readonly answers: readonly string[];
  /** The number of its room; −1 for a room that is there no more. */
  readonly room: number;
}

export function WalkPrinted(props: PrintedProps) {
  const { name } = useHouse();
  let theirs: Theirs | undefined; // of the card that is looked at
  const { figure, answer } = useCardWords(() => theirs);
  const printed = createMemo(() => props.walk.printed ?? []);
  const rooms = createMemo(() => props.walk.rooms.map((room) => room.name).join('\n')); // a name has no line breaks
  const stale = createMemo(() => {
    liveHanging();
    const names = rooms().split('\n');
    return printed().flatMap((card): readonly StaleCard[] => {
      theirs = card.saidIn && { saidIn: card.saidIn, cards };
      const asked = new Map(props.questions.map((each) => [each.id, each]));
      const moved = movedOn(card.figures, figure);
      const answers = answersMoved(card, (ask) => {
        const question = asked.get(ask);
        return question && answer(question);
      }).map((ask) => asked.get(ask)!.question);
      const room = names.indexOf(card.room);
      const isStale = moved.length + answers.length > 0 || card.house !== name() || room < 0;
      return isStale ? [{ card, moved, answers, room }] : [];
    });
  });
  const again = () => stale().map(({ room }) => room).filter((room) => room >= 0); // prettier-ignore
  const toTitle = (event: Event) => focusAfter(event, () => document.getElementById('walk-printed-title') ?? document.getElementById('walk-show-title')); // prettier-ignore
  return (
    <Show when={stale().length > 0}>
      <section class="calculator walk-printed" aria-labelledby="walk-printed-title">
        <h2 id="walk-printed-title" tabindex="-1">
          Printed cards that no longer hold ({stale().length})
        </h2>
        <ol class="stale">
          <For each={stale()}>
            {({ card, moved, answers, room }) => (
              <li>
                <p>
                  <b>{card.room}</b>, printed {dateInWords(card.on)}
                  {card.house === name() ? '' : ` for ${card.house}; the house here is ${name()}`}.
                  {room < 0 ? ' The walk has no room of that name now.' : ''}
                </p>
                <Show when={moved.length + answers.length > 0}>
                  <ul>
                    <For each={moved}>
                      {({ label, was, is }) => (
                        <li>
                          {label}: was <del>{was}</del>,{' '}
                          <Show when={is} fallback={`and is not ${name()}’s own any more`}>
                            is <b>{is}</b>
                          </Show>
                        </li>
                      )}
                    </For>
                    <For each={answers}>{(question) => <li>On the back, another answer: {question}</li>}</For>
                  </ul>
                </Show>
                <p class="actions">
                  <Show when={room >= 0}>
                    <button
                      type="button"
                      aria-label={`Print it anew: ${card.room}`}
                      onClick={(event) => {
                        props.print([room]);
                        toTitle(event);
                      }}
                    >
                      Print it anew
                    </button>
                  </Show>
                  <button
                    type="button"
                    aria-label={`I have thrown it away: ${card.room}`}
                    onClick={(event) => {
                      props.drop(withoutPrinted(props.walk, card.room), `The card of ${card.room} is forgotten.`); // prettier-ignore
                      toTitle(event);
                    }}
                  >
                    I have thrown it away
                  </button>
                </p>
              </li>
            )}
          </For>
        </ol>
        <Show when={again().length > 1}>
          <p class="actions">
            <button
              type="button"
              onClick={(event) => {
                props.print(again());
                toTitle(event);
              }}
            >
              Print all {again().length} anew
            </button>
          </p>
        </Show>
      </section>
    </Show>
  );
}
