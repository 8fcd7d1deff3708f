// One room of a walk: what is said there, shown, asked and forbidden, what stands in it, and what its card carries.
import { createSignal, For, lazy, Show, Suspense } from 'solid-js';
import { stages, type Stage } from '../house/figures.ts';
import { plainName } from '../house/name.ts';
import {
  roomBans,
  figuresOfCard,
  walkLimits,
  figuresForCard,
  mostInWalk,
  type Ban,
  type Room,
} from '../walk/walk.ts';
import { Tick } from './Tick.tsx';
import { WalkField, wholeFrom } from './WalkField.tsx';
import { WalkPieces, type PieceDoes } from './WalkPieces.tsx';
import type { WalkQuestion } from './WalkDesk.tsx';

const title = (stage: Stage) => stage[0]!.toUpperCase() + stage.slice(1);
const toggled = <T,>(list: readonly T[], one: T): readonly T[] =>
  list.includes(one) ? list.filter((each) => each !== one) : [...list, one];

export interface RoomDoes {
  readonly change: (change: Partial<Room>) => void;
  readonly move: (by: -1 | 1) => void;
  readonly drop: () => void;
  readonly add: () => void;
}

const WalkStanding = lazy(() => import('./WalkStanding.tsx'));

export function WalkRoom(props: {
  readonly room: Room;
  readonly number: number;
  readonly of: number;
  /** True when the walk was written for another house than the one that stands here. */
  readonly isOther: boolean;
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** What is wrong with its time, or nothing. */
  readonly trouble: string | undefined;
  readonly questions: readonly WalkQuestion[];
  readonly safety: readonly string[];
  readonly pieces: PieceDoes;
  readonly does: RoomDoes;
}) {
  const [opened, setOpened] = createSignal(false);
  const asked = () => props.questions.filter(({ stage }) => props.room.stages.includes(stage));
  const words = (text: string) => text.replace(/\s+/g, ' ').trim().slice(0, mostInWalk.words);
  return (
    <section class="walk-room" aria-labelledby="walk-room-title">
      <h3 id="walk-room-title" tabindex="-1">
        {props.room.name}
      </h3>
      <Show when={props.trouble}>
        <p class="remark">{props.trouble}</p>
      </Show>
      <WalkField
        id="walk-minutes"
        label="Time here"
        unit="minutes"
        longest={6}
        value={String(props.room.minutes)}
        take={(text) => {
          const minutes = wholeFrom(text, walkLimits.minutes, 'Time here');
          if (typeof minutes === 'string') return minutes;
          props.does.change({ minutes });
          return undefined;
        }}
      />
      <h4>What is said</h4>
      <Show when={props.room.pieces.length > 0} fallback={<p>Nothing is said here yet.</p>}>
        <WalkPieces
          pieces={props.room.pieces}
          before={props.before}
          after={props.after}
          does={props.pieces}
        />
      </Show>
      <WalkField
        id="walk-shows"
        label="What is shown"
        isWide
        longest={mostInWalk.words}
        value={props.room.shows}
        take={(text) => void props.does.change({ shows: words(text) })}
      />
      <WalkField
        id="walk-line"
        label="One line for its card"
        isWide
        longest={mostInWalk.words}
        value={props.room.line}
        take={(text) => void props.does.change({ line: words(text) })}
      />
      <details>
        <summary>
          Forbidden here ({props.room.bans.length + (props.room.rule === '' ? 0 : 1)}), and the caution
        </summary>
        <For each={Object.keys(roomBans) as Ban[]}>
          {(ban) => (
            <Tick
              checked={props.room.bans.includes(ban)}
              take={() => props.does.change({ bans: toggled(props.room.bans, ban) })}
            >
              {roomBans[ban]}
            </Tick>
          )}
        </For>
        <WalkField
          id="walk-rule"
          label="In your own words"
          isWide
          longest={mostInWalk.words}
          value={props.room.rule}
          take={(text) => void props.does.change({ rule: words(text) })}
        />
        <For each={props.safety}>{(line) => <p class="caution brief">{line}</p>}</For>
      </details>
      <Show when={asked().length > 0}>
        <details>
          <summary>
            What visitors ask ({props.room.asks.length} of {mostInWalk.asks} on the card)
          </summary>
          <For each={asked()}>
            {({ id, question }) => (
              <Tick
                checked={props.room.asks.includes(id)}
                disabled={!props.room.asks.includes(id) && props.room.asks.length >= mostInWalk.asks}
                take={() => props.does.change({ asks: toggled(props.room.asks, id) })}
              >
                {question}
              </Tick>
            )}
          </For>
        </details>
      </Show>
      <Show when={figuresForCard(props.room).length > 0}>
        <details>
          <summary>
            Figures on its card ({figuresOfCard(props.room).length} of {mostInWalk.cardFigures})
          </summary>
          <For each={figuresForCard(props.room)}>
            {({ id, label }) => {
              const chosen = () => figuresOfCard(props.room);
              return (
                <Tick
                  checked={chosen().includes(id)}
                  disabled={!chosen().includes(id) && chosen().length >= mostInWalk.cardFigures}
                  take={() => props.does.change({ figures: toggled(chosen(), id) })}
                >
                  {label}
                </Tick>
              );
            }}
          </For>
        </details>
      </Show>
      <Show when={!props.isOther}>
        <details onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}>
          <summary>What stands here</summary>
          <Show when={opened()}>
            <Suspense>
              <WalkStanding stages={props.room.stages} />
            </Suspense>
          </Show>
        </details>
      </Show>
      <details>
        <summary>Name, work and place of the room</summary>
        <WalkField
          id="walk-room-name"
          label="Name of the room"
          isWide
          value={props.room.name}
          take={(text) => {
            const name = plainName(text);
            if (name === '') return 'Give it a name of at least one letter or sign.';
            props.does.change({ name });
            return undefined;
          }}
        />
        <fieldset class="stages">
          <legend>What is done there</legend>
          <For each={stages}>
            {(stage) => (
              <Tick
                checked={props.room.stages.includes(stage)}
                take={() => props.does.change({ stages: toggled(props.room.stages, stage) })}
              >
                {title(stage)}
              </Tick>
            )}
          </For>
        </fieldset>
        <p class="actions">
          <Show when={props.number > 0}>
            <button type="button" onClick={() => props.does.move(-1)}>
              Go there before {props.before}
            </button>
          </Show>
          <Show when={props.number < props.of - 1}>
            <button type="button" onClick={() => props.does.move(1)}>
              Go there after {props.after}
            </button>
          </Show>
          <Show when={props.of < mostInWalk.rooms}>
            <button type="button" onClick={() => props.does.add()}>
              Add a room after it
            </button>
          </Show>
          <Show when={props.of > 1}>
            <button type="button" onClick={() => props.does.drop()}>
              Take it out
            </button>
          </Show>
        </p>
      </details>
    </section>
  );
}
