// The cautions that go with every walk.
import { For } from 'solid-js';
import { WALK_DEFERS, withEveryWalk } from '../walk/cautions.ts';

export function WalkCautions() {
  return (
    <>
      <dl class="walk-cautions">
        <For each={withEveryWalk}>
          {([of, says]) => (
            <div>
              <dt>{of}</dt>
              <dd>{says}</dd>
            </div>
          )}
        </For>
      </dl>
      <p>{WALK_DEFERS}</p>
    </>
  );
}
