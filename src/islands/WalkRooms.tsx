// The rooms of a walk in their order, each with when the party is there and whether something is wrong with its time.
import { For } from 'solid-js';
import { clockOf, troubleOf, type RoomTime } from '../walk/time.ts';
import type { Walk } from '../walk/walk.ts';

export function WalkRooms(props: {
  readonly walk: Walk;
  readonly times: readonly RoomTime[];
  readonly open: number;
  readonly choose: (room: number) => void;
}) {
  return (
    <ol class="walk-list">
      <For each={props.walk.rooms}>
        {(each, i) => {
          const time = () => props.times[i()]!;
          return (
            <li>
              <button
                type="button"
                aria-current={props.open === i() ? 'true' : undefined}
                onClick={() => props.choose(i())}
              >
                <span class="at">{clockOf(time().from)}</span> <b>{each.name}</b>{' '}
                <small>
                  {each.minutes} min, {time().words} words
                  {troubleOf(each, time(), props.walk) ? ' · look' : ''}
                </small>
              </button>
            </li>
          );
        }}
      </For>
    </ol>
  );
}
