// Why each figure of the walk is what it is: by room, as it is said, and where it comes from.
import { createMemo, For, Show } from 'solid-js';
import { headOf } from '../core/figures/index.ts';
import { useHouse } from '../browser/house-store.ts';
import { figuresByRoom } from '../walk/guide-file.ts';
import type { Walk } from '../walk/walk.ts';
import { OtherHouse, useGuideWalk } from './guide-file-walk.ts';
import { useWhy } from './guide-file-why.ts';
import { RoomName } from './RoomName.tsx';

export function FiguresPart(props: { readonly walk: Walk; readonly under: 'h2' | 'h3' }) {
  const why = useWhy();
  const rooms = createMemo(() =>
    figuresByRoom(props.walk).map((ids, i) => ({
      name: props.walk.rooms[i]!.name,
      figures: ids.flatMap((id) => why(id) ?? []),
    })),
  );
  return (
    <For each={rooms().filter(({ figures }) => figures.length > 0)}>
      {({ name, figures }) => (
        <section class="guide-room">
          <RoomName under={props.under} name={name} />
          <dl class="guide-why">
            <For each={figures}>
              {({ label, says, mark, lines }) => (
                <div>
                  <dt>
                    {label}: <b>{says}</b>
                    <Show when={mark}>
                      <small> ({mark})</small>
                    </Show>
                  </dt>
                  <For each={lines}>{(line) => <dd>{line}</dd>}</For>
                </div>
              )}
            </For>
          </dl>
        </section>
      )}
    </For>
  );
}

/** What is left off, as the house has not given it yet. */
export function NotOwnYet(props: { readonly walk: Walk; readonly root: string }) {
  const why = useWhy();
  const { name } = useHouse();
  const left = createMemo(() =>
    figuresByRoom(props.walk)
      .flat()
      .filter((id) => why(id) === undefined)
      .map((id) => headOf(id))
      .map((label) => label[0]!.toLowerCase() + label.slice(1)),
  );
  return (
    <Show when={left().length > 0}>
      <p class="meaning">
        Left off, as they are not {name()}’s own yet: {left().join(', ')}.{' '}
        <a href={`${props.root}house/`}>Fill them in</a>
      </p>
    </Show>
  );
}

export default function GuideFileFigures() {
  const { walk, other } = useGuideWalk();
  return (
    <div class="guide-file">
      <OtherHouse isWanted={other() !== undefined} other={other()!} root="../../" />
      <FiguresPart walk={walk()} under="h2" />
      <NotOwnYet walk={walk()} root="../../" />
      <p class="meaning">
        The numbers of a sum are rounded as they stand, so its result may differ a little from the figure
        said.
      </p>
    </div>
  );
}
