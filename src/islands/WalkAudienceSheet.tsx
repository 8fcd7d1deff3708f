// A sheet for whoever puts the walk into another language: figures by room and the trade's words, each with a space to write in.
import { For, onMount, createSignal, Show } from 'solid-js';
import { stampInWords } from '../house/book.ts';
import { useHouse } from '../browser/house-store.ts';
import * as cards from '../walk/audience-cards.ts';
import type { WalkAbroad } from '../walk/audience-pieces.ts';
import { figuresOfCard, type Walk } from '../walk/walk.ts';
import { dateInWords, today as now } from './today.ts';
import type { useCardWords } from './walk-card-words.ts';

export function WalkAudienceSheet(props: {
  readonly walk: Walk;
  readonly said: typeof useCardWords;
  readonly words: WalkAbroad['words'];
}) {
  const { figure } = props.said(() => ({ saidIn: props.walk.saidIn ?? 'metric', cards }));
  const { name } = useHouse();
  const [today, setToday] = createSignal('');
  onMount(() => setToday(dateInWords(now())));
  return (
    <div class="walk-abroad">
      <h2>{props.walk.name}: for another language</h2>
      <p>Language: ______________________________ Written by: ______________________________</p>
      <table>
        <thead>
          <tr>
            <th>Figure</th>
            <th>In figures</th>
            <th class="space">In the other language</th>
          </tr>
        </thead>
        <For each={props.walk.rooms}>
          {(room) => (
            <tbody>
              <tr>
                <th scope="rowgroup" colspan={3}>
                  {room.name}
                </th>
              </tr>
              <For each={figuresOfCard(room).flatMap((id) => figure(id) ?? [])}>
                {({ label, says, mark }) => (
                  <tr>
                    <td>{label}</td>
                    <td>
                      {says}
                      {mark ? ` (${mark})` : ''}
                    </td>
                    <td class="space" />
                  </tr>
                )}
              </For>
            </tbody>
          )}
        </For>
      </table>
      <Show when={props.words.length > 0}>
        <h3>Words of the trade</h3>
        <dl class="words-to-write">
          <For each={props.words}>
            {({ english }) => (
              <div>
                <dt>{english}</dt>
                <dd />
              </div>
            )}
          </For>
        </dl>
      </Show>
      <p>Have a native reader see it before it hangs on a wall; the words of danger above all.</p>
      <p class="foot-line">
        {stampInWords(name())}, {today()}.
      </p>
    </div>
  );
}
