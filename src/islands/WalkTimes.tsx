// The time of a walk: its length, when it begins, where the party has to be by when, and how fast the guide speaks.
import { createSignal, For, Show } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import { clockOf, minutesOf, withLength } from '../walk/time.ts';
import { walkLengths, walkLimits, type Walk } from '../walk/walk.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import type { AloudProps } from './WalkAloud.tsx';
import { WalkField, wholeFrom } from './WalkField.tsx';

const WalkAloud = fetchedWhenWanted<AloudProps>(() =>
  import('./WalkAloud.tsx').then((come) => come.WalkAloud),
);
const NO_CLOCK = 'It can be a time of day, as 10:30.';

export function WalkTimes(props: {
  readonly walk: Walk;
  /** Takes the walk as it has become; `says` what was done, and `wayBack` what is on the button that undoes it. */
  readonly take: (walk: Walk, says: string, wayBack?: string) => void;
}) {
  const [problem, setProblem] = createSignal<string>();
  const [isOpen, setOpen] = createSignal(false);
  const share = (length: number, least = props.walk.least): string | undefined => {
    const next = withLength(props.walk, length, least);
    if (isRefusal(next)) return next.refused;
    const isOther = next.rooms.some(({ minutes }, i) => minutes !== props.walk.rooms[i]?.minutes);
    props.take(
      next,
      `${length} minutes, shared by what is said in each room.`,
      isOther ? 'Put the minutes back' : undefined,
    );
    return undefined;
  };
  const dueRoom = () => props.walk.due?.room;
  return (
    <>
      <div class="lengths" role="group" aria-label="Length of the walk">
        <For each={walkLengths}>
          {(length) => (
            <button
              type="button"
              aria-pressed={props.walk.length === length}
              onClick={() => setProblem(share(length))}
            >
              {length} min
            </button>
          )}
        </For>
      </div>
      <p class="problem" role="alert">
        {problem()}
      </p>
      <details onToggle={({ currentTarget }) => currentTarget.open && setOpen(true)}>
        <summary>
          Begins at {props.walk.begins}, {props.walk.pace} words a minute
        </summary>
        <WalkField
          id="walk-begins"
          label="Begins at"
          longest={8}
          value={props.walk.begins}
          take={(text) => {
            const minutes = minutesOf(text);
            if (minutes === undefined) return NO_CLOCK;
            props.take({ ...props.walk, begins: clockOf(minutes) }, `It begins at ${clockOf(minutes)}.`);
            return undefined;
          }}
        />
        <WalkField
          id="walk-length"
          label="Whole length"
          unit="minutes"
          longest={6}
          value={String(props.walk.length)}
          take={(text) => {
            const length = wholeFrom(text, walkLimits.length, 'Whole length');
            return typeof length === 'string' ? length : share(length);
          }}
        />
        <WalkField
          id="walk-least"
          label="At least in each room"
          unit="minutes"
          longest={6}
          value={String(props.walk.least)}
          take={(text) => {
            const least = wholeFrom(text, walkLimits.least, 'At least in each room');
            return typeof least === 'string' ? least : share(props.walk.length, least);
          }}
        />
        <div class="field">
          <label for="walk-due-room">The party has to be at</label>
          <select
            id="walk-due-room"
            autocomplete="off"
            onChange={(event) => {
              const { due, ...rest } = props.walk;
              const { value } = event.currentTarget;
              const next =
                value === '' ? rest : { ...rest, due: { room: Number(value), by: due?.by ?? '11:00' } };
              props.take(next, '');
            }}
          >
            <option value="" selected={dueRoom() === undefined}>
              no room by a set time
            </option>
            <For each={props.walk.rooms}>
              {(room, i) => (
                <option value={i()} selected={dueRoom() === i()}>
                  {room.name}
                </option>
              )}
            </For>
          </select>
        </div>
        <Show when={props.walk.due}>
          {(due) => (
            <WalkField
              id="walk-due-by"
              label="by"
              longest={8}
              value={due().by}
              take={(text) => {
                const minutes = minutesOf(text);
                if (minutes === undefined) return NO_CLOCK;
                props.take({ ...props.walk, due: { ...due(), by: clockOf(minutes) } }, '');
                return undefined;
              }}
            />
          )}
        </Show>
        <WalkField
          id="walk-pace"
          label="You say"
          unit="words a minute"
          longest={6}
          value={String(props.walk.pace)}
          take={(text) => {
            const pace = wholeFrom(text, walkLimits.pace, 'You say');
            if (typeof pace === 'string') return pace;
            props.take({ ...props.walk, pace }, `${pace} words a minute.`);
            return undefined;
          }}
        />
        <WalkAloud
          isWanted={isOpen()}
          take={(pace) => props.take({ ...props.walk, pace }, `You say ${pace} words a minute.`)}
        />
      </details>
    </>
  );
}
