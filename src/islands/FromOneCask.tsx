// How many bottles come of one barrel, one hogshead and one butt of the house, before it has a register.
import { createMemo, For } from 'solid-js';
import { formatCount } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { bottlesFromCasks } from '../core/stock/one-cask.ts';
import { useKnown } from '../browser/known-store.ts';

export function FromOneCask(props: { readonly line: Line }) {
  const { isEstimate } = useKnown();
  const casks = createMemo(() => bottlesFromCasks(props.line));
  const guessed = () => isEstimate('bottlesPerCask');
  return (
    <>
      <p class="meaning">
        One cask of yours, filled full and emptied after {formatCount(props.line.house.yearsInWood, 'year')},
        gives{guessed() ? ', as an estimate' : ''}:
      </p>
      <div class="results">
        <dl class="others">
          <For each={casks()}>
            {([name, size, bottles]) => (
              <div>
                <dt>
                  A {name} of {size} L
                </dt>
                <dd class="number">
                  {typeof bottles === 'object' && isRefusal(bottles)
                    ? bottles.refused
                    : formatCount(bottles as number, 'bottle')}
                </dd>
              </div>
            )}
          </For>
        </dl>
      </div>
    </>
  );
}
