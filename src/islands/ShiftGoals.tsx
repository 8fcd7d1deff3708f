// What counts in a shift, told on its desk before it is needed.
import { For } from 'solid-js';
import type { Goal } from '../core/shift/points.ts';

export function ShiftGoals(props: {
  readonly goals: readonly Goal[];
  readonly names: Readonly<Record<string, string>>;
}) {
  return (
    <details class="shift-goals" open>
      <summary>What counts here</summary>
      <dl class="points">
        <For each={props.goals}>
          {({ id, of, goal }) => (
            <div>
              <dt>
                {props.names[id]} <b>{of}</b>
              </dt>
              <dd>{goal}</dd>
            </div>
          )}
        </For>
      </dl>
    </details>
  );
}
