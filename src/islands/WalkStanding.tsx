// What stands in a room of the walk, fetched once somebody asks.
import { For, Show } from 'solid-js';
import type { Stage } from '../house/figures.ts';
import { partGiven } from '../house/parts/built-in.ts';
import { standingRowsOf } from '../house/standing-rows.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';

export default function WalkStanding(props: { readonly stages: readonly Stage[] }) {
  const { name } = useHouse();
  const standing = () => {
    const parts = liveParts();
    const given = { plant: partGiven('plant', name(), parts), stock: partGiven('stock', name(), parts) };
    return standingRowsOf(given, props.stages);
  };
  return (
    <Show when={standing().length > 0} fallback={<p>Nothing that the house has put down.</p>}>
      <dl class="standing">
        <For each={standing()}>
          {([what, says]) => (
            <div>
              <dt>{what}</dt>
              <dd>{says}</dd>
            </div>
          )}
        </For>
      </dl>
    </Show>
  );
}
