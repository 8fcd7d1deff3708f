// How even the versions of a trainer's own sheet are: the hardness of each, the spread, and where numbers repeat.
import { For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { HARDNESS_IN_WORDS } from '../exercises/hardness.ts';
import { HARDNESS_SPREAD, type Evenness } from '../exercises/own/own-sheet.ts';

const percent = (part: number) => `${formatNumber(100 * part, 1)}\u202f%`;
const questions = (places: readonly number[]) =>
  places.length === 1
    ? `Question ${places[0]! + 1}`
    : `Questions ${places.map((place) => place + 1).join(', ').replace(/, (\d+)$/, ' and $1')}`; // prettier-ignore

export function OwnSheetEven(props: { readonly of: Evenness }) {
  return (
    <section class="own-even" aria-labelledby="own-even-title">
      <h2 id="own-even-title">How even the versions are</h2>
      <p role="status">
        {props.of.spread <= HARDNESS_SPREAD
          ? `The hardest version lies ${percent(props.of.spread)} of the mean above the easiest, within the stated ${percent(HARDNESS_SPREAD)}.`
          : `The hardest version lies ${percent(props.of.spread)} of the mean above the easiest, more than the stated ${percent(HARDNESS_SPREAD)}: give a question other numbers, or swap it.`}
      </p>
      <Show when={props.of.repeated.length > 0}>
        <p class="remark">
          {questions(props.of.repeated)} {props.of.repeated.length === 1 ? 'has' : 'have'} fewer different
          draws than there are versions, so some trainees get the same.
        </p>
      </Show>
      <Show when={props.of.missing.length > 0}>
        <p class="problem">
          {questions(props.of.missing)} cannot be drawn for this house and{' '}
          {props.of.missing.length === 1 ? 'is' : 'are'} left out: swap{' '}
          {props.of.missing.length === 1 ? 'it' : 'them'}.
        </p>
      </Show>
      <div
        class="table"
        tabindex="0"
        role="group"
        aria-label="Points of hardness: of each version, and of each question in it"
      >
        <table>
          <thead>
            <tr>
              <th scope="col">Version</th>
              <th scope="col">All</th>
              <For each={props.of.byQuestion[0]}>{(_, i) => <th scope="col">Q{i() + 1}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={props.of.points}>
              {(points, i) => (
                <tr>
                  <th scope="row">{i() + 1}</th>
                  <td class="number">
                    <b>{formatNumber(points, 1)}</b>
                  </td>
                  <For each={props.of.byQuestion[i()]}>
                    {(each) => <td class="number">{formatNumber(each, 1)}</td>}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="small">{HARDNESS_IN_WORDS}</p>
    </section>
  );
}
