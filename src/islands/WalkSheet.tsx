// A walk on one sheet, for paper: rooms with their times, what is shown and forbidden, and the cautions that go with every walk.
import { For, Show } from 'solid-js';
import { stampInWords } from '../house/book.ts';
import { useHouse } from '../browser/house-store.ts';
import { clockOf, type RoomTime } from '../walk/time.ts';
import { roomBans, type Walk } from '../walk/walk.ts';
import { WalkCautions } from './WalkCautions.tsx';

export function WalkSheet(props: {
  readonly walk: Walk;
  readonly times: readonly RoomTime[];
  readonly whole: readonly string[];
  readonly today: string;
}) {
  const { name } = useHouse();
  return (
    <div class="walk-sheet">
      <h2>{props.walk.name}</h2>
      <p>{props.whole.join(' ')}</p>
      <table>
        <thead>
          <tr>
            <th>From</th>
            <th>Room</th>
            <th class="number">Minutes</th>
            <th class="number">Words</th>
            <th>Shown; forbidden</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.walk.rooms}>
            {(room, i) => (
              <tr>
                <td>{clockOf(props.times[i()]?.from ?? 0)}</td>
                <th scope="row">{room.name}</th>
                <td class="number">{room.minutes}</td>
                <td class="number">{props.times[i()]?.words}</td>
                <td>
                  {[room.shows, ...room.bans.map((ban) => roomBans[ban]), room.rule]
                    .filter(Boolean)
                    .join('; ')}
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <h3>With every walk</h3>
      <WalkCautions />
      <Show when={props.today}>
        <p class="foot-line">
          {stampInWords(props.walk.house ?? name())}, {props.today}.
        </p>
      </Show>
    </div>
  );
}
