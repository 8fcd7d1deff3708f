// What a house was given out of a talk and what stood before, what was left and why, and the way back.
import { For, Show } from 'solid-js';
import { numberFigures } from '../house/figures.ts';
import { labelOf } from '../talk/labels.ts';
import { withSmallInitial } from './ScriptAsk.tsx';
import type { GivenToHouse } from './script-given.ts';

/** What was set and what stood before, what was left and why, and the way back. */
export function ScriptGiven(props: { readonly of: GivenToHouse; readonly putBack: (event: Event) => void }) {
  return (
    <>
      <Show when={props.of.set.length > 0}>
        <details>
          <summary>What was set, and what stood before</summary>
          <dl class="results">
            <For each={props.of.set}>
              {({ label, now, before }) => (
                <div>
                  <dt>{label}</dt>
                  <dd class="number">
                    {now} <span class="spread">(before: {before})</span>
                  </dd>
                </div>
              )}
            </For>
          </dl>
          <Show when={props.of.moved.length > 0}>
            <p class="note">Moved with them, as nobody has given them: {props.of.moved.join(', ')}.</p>
          </Show>
        </details>
      </Show>
      <Show when={props.of.refused.length > 0}>
        <p>Left as they are, as the house does not run with them:</p>
        <ul class="sentences">
          <For each={props.of.refused}>{(each) => <li>{leftWith(each)}</li>}</For>
        </ul>
      </Show>
      <Show when={props.of.set.length > 0}>
        <p class="actions">
          <button type="button" onClick={(event) => props.putBack(event)}>
            Put all back
          </button>
          <a href="../house/">See {props.of.house}</a>
        </p>
      </Show>
    </>
  );
}

/** A figure by its name and the house’s own sentence, which may begin with the name that the house has for it. */
function leftWith({ figure, name, problem }: GivenToHouse['refused'][number]): string {
  return problem.startsWith(numberFigures[name].label)
    ? problem
    : `${labelOf(figure)}: ${withSmallInitial(problem)}`;
}
