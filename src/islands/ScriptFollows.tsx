// What follows from the figures of a talk, and the test behind a fold.
import { For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { plain, quotableFigures } from '../core/cross-check/quoted.ts';
import type { Reconciliation } from '../core/cross-check/reconcile.ts';
import { spokenFigure } from '../core/line/spoken.ts';
import { rangeInWords } from '../core/cross-check/verdict.ts';
import { setByTheHouse } from '../core/cross-check/set-by-the-house.ts';

/** What follows from the figures that are not in doubt, and the test behind a fold. */
export function ScriptFollows(props: { readonly of: Reconciliation }) {
  /** What a house sets is looked up, not reckoned. */
  const filled = () => props.of.filled.filter(({ figure }) => !setByTheHouse.includes(figure));
  const chance = () => Math.round(100 * props.of.overall.chance);
  return (
    <>
      <Show when={filled().length > 0}>
        <h3>What follows, though you did not say it</h3>
        <dl class="results">
          <For each={filled()}>
            {({ figure, value, low, high }) => (
              <div>
                <dt>{quotableFigures[figure].label}</dt>
                <dd class="number">
                  {spokenFigure(figure, value, [low, high])}{' '}
                  <span class="spread">({rangeInWords(figure, low, high)})</span>
                </dd>
              </div>
            )}
          </For>
        </dl>
      </Show>
      <details class="working test-behind">
        <summary>The test behind it</summary>
        <p>
          {props.of.overall.freedom === 0
            ? 'No balance ties these figures together, so there is nothing to test.'
            : `Together: chi-square ${formatNumber(props.of.overall.statistic, 1)} with ${props.of.overall.freedom} degrees of freedom. Sound figures would lie this far apart or farther ${chance() < 1 ? 'less than once in a hundred times' : `about ${chance()} times in a hundred`}.`}
        </p>
        <table class="series">
          <thead>
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Quoted</th>
              <th scope="col">Best fit, if all are slightly out</th>
              <th scope="col">Out by, in its own ±</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.of.figures}>
              {({ figure, value, finding, fits, adjusted, test }) => (
                <tr>
                  <th scope="row">{quotableFigures[figure].label}</th>
                  <td class="number">{plain(figure, value)}</td>
                  <td class="number">
                    {finding === 'cannot be' && !fits
                      ? '–'
                      : rangeInWords(figure, adjusted.low, adjusted.high)}
                  </td>
                  <td class="number">
                    {test === undefined
                      ? finding === 'cannot be'
                        ? 'cannot be'
                        : 'not checkable'
                      : formatNumber(test, 1)}
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p>
          The figures are adjusted by weighted least squares under the balances of the line. What a week and a
          year make of a mash balances exactly; the mash, Balling’s relation, the stills, the store and the
          bottles are models with a spread of their own.
        </p>
      </details>
    </>
  );
}
