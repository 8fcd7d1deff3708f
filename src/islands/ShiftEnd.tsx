// The end of a shift: what was made against the house's own run, points and why, the rounds so far, and the next charge.
import { For, Show } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import { backOf, madeOf } from '../core/shift/made.ts';
import { houseBegins, STEP, type Rig } from '../core/shift/rig.ts';
import { points, scoreOf } from '../core/shift/score.ts';
import type { ShiftState } from '../core/shift/state.ts';
import { ROUNDS } from '../shift/draw.ts';
import { linkOfShift, resultLine } from '../shift/link.ts';
import type { ChargeDone, Shift } from '../shift/shift.ts';
import { inWords, today } from './today.ts';
import { clockAt } from './shift-words.ts';

const names: Readonly<Record<keyof typeof points | 'danger', string>> = {
  strength: 'Strength of the heart',
  foreshots: 'Foreshots',
  heart: 'End of the heart',
  end: 'End of the run',
  kept: 'Spirit kept',
  readings: 'Readings',
  care: 'Care',
  danger: 'Danger',
};

export function ShiftEnd(props: {
  readonly rig: Rig;
  readonly state: ShiftState;
  readonly shift: Shift;
  readonly next: (made: ChargeDone) => void;
}) {
  const made = () => madeOf(props.state, STEP);
  const score = () => scoreOf(props.rig, props.state);
  const goal = () => props.rig.goal;
  const spirit = ({ volume, strength }: ChargeDone['heart']) => ({ volume, strength });
  const done = (): ChargeDone => {
    const { heart } = made();
    return {
      charge: props.shift.charge,
      heart: spirit(heart),
      back: spirit(backOf(props.state)),
      score: score().total,
    };
  };
  const rows = () => [...props.shift.done, done()];
  const alcohol = ({ volume, strength }: ChargeDone['heart']) => (volume * strength) / 100;
  const line = () => resultLine(props.shift, score().total, today());
  const compared = (): readonly (readonly [string, string, string])[] => [
    ['Heart, L of pure alcohol', n(made().heart.alcohol, 1), n(goal().heart.alcohol, 1)],
    ['Heart, L', n(made().heart.volume, 0), n(goal().heart.volume, 0)],
    ['Heart, % vol', n(made().heart.strength, 1), n(goal().heart.strength, 1)],
    ['Heart began at, % vol', made().began > 0 ? n(made().began, 1) : '–', n(houseBegins(props.rig), 1)],
    ['Heart ended at, % vol', made().ended > 0 ? n(made().ended, 1) : '–', n(props.rig.setup.cuts.heart, 1)],
    ['Foreshots, L', n(made().foreshots.volume, 0), n(goal().foreshots.volume, 0)],
    ['Feints, L', n(made().feints.volume, 0), n(goal().feints.volume, 0)],
    ['Minutes', n(made().minutes, 0), n((props.rig.usualSteps * STEP) / 60, 0)],
  ];
  const settled = () => Math.abs(alcohol(rows().at(-1)!.heart) / props.shift.house.settles - 1) <= 0.01;
  return (
    <div class="shift-end">
      <h2 tabindex="-1" id="shift-end-title">
        The shift is done: {score().total} of 100
      </h2>
      <div class="table" tabindex="0" role="group" aria-label="What was made">
        <table>
          <thead>
            <tr>
              <th scope="col">Charge {props.shift.done.length + 1}</th>
              <th scope="col" class="number">made</th>
              <th scope="col" class="number">the house</th>
            </tr>
          </thead>
          <tbody>
            <For each={compared()}>
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
                {names[row.id]} <b>{row.of > 0 ? `${n(row.points, 0)} of ${row.of}` : n(row.points, 0)}</b>
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
                {clockAt(step)} {isDanger ? <strong>Danger. </strong> : ''}
                {why}
              </li>
            )}
          </For>
        </ul>
      </Show>
      <h3>Round by round</h3>
      <p>
        Foreshots and feints go into the next charge. By its own cuts the house settles at{' '}
        {n(props.shift.house.settles, 1)} L of pure alcohol in the heart.{' '}
        {settled() ? 'This round is within 1 % of that.' : 'This round is not there yet.'}
      </p>
      <div class="table" tabindex="0" role="group" aria-label="Round by round">
        <table>
          <thead>
            <tr>
              <th scope="col">Round</th>
              <th scope="col" class="number">charge, L</th>
              <th scope="col" class="number">% vol</th>
              <th scope="col" class="number">heart, L pure</th>
              <th scope="col" class="number">points</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row, i) => (
                <tr>
                  <th scope="row">{i() + 1}</th>
                  <td class="number">{n(row.charge.volume, 0)}</td>
                  <td class="number">{n(row.charge.strength, 1)}</td>
                  <td class="number">{n(alcohol(row.heart), 1)}</td>
                  <td class="number">{row.score}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="actions">
        <button type="button" id="shift-next" disabled={rows().length >= ROUNDS} onClick={() => props.next(done())}>
          Next round
        </button>
        <button type="button" onClick={() => print()}>
          Print with the log
        </button>
      </p>
      <Show when={rows().length >= ROUNDS}>
        <p>Twelve rounds are done.</p>
      </Show>
      <h3>For the record</h3>
      <p>
        <output class="result-line">{line()}</output>
      </p>
      <p class="meaning">
        {inWords(today())}, {props.shift.house.name}. The line says which shift was run, on a still of which figures, and its points.
        It can be typed by anybody, so it proves nothing alone; the printed log shows what was done when. It is
        practice and no leave to run a still.{' '}
        <a href={linkOfShift(props.shift.seed)}>Link to this shift</a>: it sets the same events for everybody; with the same house, the same still.
      </p>
    </div>
  );
} // prettier-ignore
