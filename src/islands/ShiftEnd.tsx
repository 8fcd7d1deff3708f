// The end of a round: what was made against what the house makes, points and why, the rounds so far, and the next.
import { createMemo, For, onMount, Show } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import type { Moment } from '../core/shift/course.ts';
import { linkOfShift, resultLine } from '../shift/link.ts';
import type { KeptShift } from '../shift/kept.ts';
import { ROUNDS_OF_SHIFT } from '../shift/seed.ts';
import type { Post } from './shift-post.ts';
import { dateInWords, today } from './today.ts';

export function ShiftEnd<R, S extends Moment, A extends { readonly do: string }, D, K extends KeptShift<{ readonly name: string }, D, A>>(props: {
  readonly post: Post<R, S, A, D, K>;
  readonly rig: R;
  readonly state: S;
  readonly shift: K;
  readonly next: (made: D) => void;
}) {
  const told = createMemo(() => props.post.end(props.rig, props.state, props.shift));
  const score = () => told().score;
  const line = () => resultLine(props.shift, props.post.words, score().total, today());
  const isLast = () => props.shift.done.length + 1 >= ROUNDS_OF_SHIFT;
  /** Told to the page, where the shift may be a step of a lesson. */
  onMount(() => {
    const rows = score().rows.map(({ id, points, of, why }) => ({ name: props.post.names[id]!, points, of, why }));
    dispatchEvent(new CustomEvent('shift-over', { detail: { total: score().total, rows } }));
  });
  return (
    <div class="shift-end">
      <h2 tabindex="-1" id="shift-end-title">
        The shift is done: {score().total} of 100
      </h2>
      <div class="table" tabindex="0" role="group" aria-label="What was made">
        <table>
          <thead>
            <tr>
              <th scope="col">{told().made}</th>
              <th scope="col" class="number">made</th>
              <th scope="col" class="number">the house</th>
            </tr>
          </thead>
          <tbody>
            <For each={told().compared}>
              {([name, own, house]) => (
                <tr>
                  <th scope="row">{name}</th>
                  <td class="number">{own}</td>
                  <td class="number">{house}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <h3>Points</h3>
      <dl class="points">
        <For each={score().rows}>
          {(row) => (
            <div>
              <dt>
                {props.post.names[row.id]} <b>{row.of > 0 ? `${n(row.points, 0)} of ${row.of}` : n(row.points, 0)}</b>
              </dt>
              <dd>{row.why}</dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={score().wrong.length > 0}>
        <h3>What went wrong</h3>
        <ul>
          <For each={score().wrong}>
            {({ step, isDanger, why }) => (
              <li>
                {props.post.clock(step)} {isDanger ? <strong>Danger. </strong> : ''}
                {why}
              </li>
            )}
          </For>
        </ul>
      </Show>
      <h3>Round by round</h3>
      <p>{told().rounds}</p>
      <div class="table" tabindex="0" role="group" aria-label="Round by round">
        <table>
          <thead>
            <tr>
              <For each={told().heads}>
                {(head, i) => (
                  <th scope="col" class={i() > 0 ? 'number' : ''}>
                    {head}
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <tbody>
            <For each={told().rows}>
              {([first, ...others]) => (
                <tr>
                  <th scope="row">{first}</th>
                  <For each={others}>{(cell) => <td class="number">{cell}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="actions">
        <button type="button" id="shift-next" disabled={isLast()} onClick={() => props.next(told().done)}>
          Next round
        </button>
        <button type="button" onClick={() => print()}>
          Print with the log
        </button>
      </p>
      <Show when={isLast()}>
        <p>Twelve rounds are done.</p>
      </Show>
      <h3>For the record</h3>
      <p>
        <output class="result-line">{line()}</output>
      </p>
      <p class="meaning">
        {dateInWords(today())}, {props.shift.house.name}. The line says which shift was run, by which figures, and its points.
        It can be typed by anybody, so it proves nothing alone; the printed log shows what was done when. It is
        practice and no leave to do the work.{' '}
        <a href={linkOfShift(props.shift.seed)}>Link to this shift</a>: it sets the same events for everybody; with the same house, the same plant.
      </p>
    </div>
  );
} // prettier-ignore
