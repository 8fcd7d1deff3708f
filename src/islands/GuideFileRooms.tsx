// The walk of a guide's file: each room with its minutes, what is said in short, what is forbidden and the caution.
import { For, Show } from 'solid-js';
import type { Stage } from '../house/figures.ts';
import { saidInShort, saidWhole } from '../walk/guide-file.ts';
import { clockOf, inMinutes, timesOf } from '../walk/time.ts';
import { roomBans, type Walk } from '../walk/walk.ts';

/** `isWhole`: each piece whole, a paragraph each, for paper; else the first sentence of each. */
export function RoomsPart(props: {
  readonly walk: Walk;
  readonly safety: Readonly<Record<Stage, string>>;
  readonly isWhole?: boolean;
}) {
  const times = () => timesOf(props.walk);
  return (
    <ol class="guide-rooms">
      <For each={props.walk.rooms}>
        {(room, i) => {
          const short = () => saidInShort(room, props.walk);
          const forbids = () => [...room.bans.map((ban) => roomBans[ban]), ...(room.rule ? [room.rule] : [])];
          const says = () => [...(room.line ? [room.line] : []), ...short().says];
          return (
            <li>
              <h3>{room.name}</h3>
              <p class="when">
                {clockOf(times()[i()]!.from)} to {clockOf(times()[i()]!.to)}, {inMinutes(room.minutes)}
              </p>
              <Show when={room.shows}>
                <p>Show: {room.shows}</p>
              </Show>
              <Show when={says().length > 0} fallback={<p class="meaning">Nothing is written for it yet.</p>}>
                <Show
                  when={props.isWhole}
                  fallback={
                    <p>
                      Say: {says().join(' ')}
                      {short().more > 0 ? ` And ${short().more} more in the talk.` : ''}
                    </p>
                  }
                >
                  <For each={[...(room.line ? [room.line] : []), ...saidWhole(room, props.walk)]}>
                    {(words, i) => <p>{(i() === 0 ? 'Say: ' : '') + words}</p>}
                  </For>
                </Show>
              </Show>
              <Show when={forbids().length > 0}>
                <p class="forbids">{forbids().join(' · ')}</p>
              </Show>
              <For each={[...new Set(room.stages.map((stage) => props.safety[stage]))]}>
                {(line) => <p class="safety">{line}</p>}
              </For>
            </li>
          );
        }}
      </For>
    </ol>
  );
}
