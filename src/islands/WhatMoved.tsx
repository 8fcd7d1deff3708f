// Beside a figure of the house that was just changed: what gave way to it, what else could, and what it moved.
import { createEffect, createMemo, createSignal, For, on, Show, untrack } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { ledger, type Station } from '../core/line/ledger.ts';
import type { RunParts } from '../core/distilling/cuts.ts';
import { nextRun } from '../core/line/next-run.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Portion } from '../core/quantity.ts';
import { isRefusal } from '../core/refusal.ts';
import { insteadOf, numberFigures, type FigureName } from '../house/figures.ts';
import { whenIdle } from '../browser/defer.ts';
import { lineOf } from '../house/line-of.ts';
import { movedBetween } from '../house/moved.ts';
import { changeFigure, takeChangeBack } from '../browser/change-figure.ts';
import { lastTrial } from '../browser/house-store.ts';
import { figureInWords, waysOut, type Trial, unusualSentences } from '../house/trial.ts';

const FIRST = 4; // moved figures that are shown at once
const cuts: readonly FigureName[] = ['foreshotsBy', 'foreshotsShare', 'foreshotsVolume', 'foreshotsMinutes', 'foreshotsFlow', 'foreshotsStrength', 'heartEnd', 'feintsEnd']; // prettier-ignore

/** What a cut is moved for; told first, though in a balanced round it moves least. */
const MADE = ['heart.volume', 'heart.strength', 'heart.alcohol', 'bottling.bottlesPerYear'];
const MANY_FORESHOTS = 15; // % of the alcohol; a few are common practice, no source
const HARDLY = 0.005; // of the alcohol: less than half a hundredth

export function WhatMoved(props: {
  readonly of: FigureName | readonly FigureName[];
  /** Where the first of what moved stands above already. */
  readonly brief?: boolean;
}) {
  const first = () => (props.brief ? 0 : FIRST);
  const [told, tell] = createSignal(untrack(lastTrial));
  const follow = () => void tell(lastTrial());
  const isOfThis = (trial: Trial | undefined) =>
    trial !== undefined && [props.of].flat().includes(trial.figure);
  createEffect(
    on(lastTrial, () => (isOfThis(lastTrial()) || isOfThis(told())) && whenIdle(follow), {
      defer: true,
    }),
  );
  /** What is told: it follows once the hand rests. */
  const trial = createMemo(() => {
    const last = told();
    if (!last || !isOfThis(last)) return undefined;
    const isBack = last.gave.length === 0 && last.before[last.figure] === last.after[last.figure];
    return last.problem !== undefined || !isBack ? last : undefined;
  });
  const ways = createMemo(() => (trial() ? waysOut(trial()!) : []));
  const isCut = () => trial() !== undefined && cuts.includes(trial()!.figure);
  const lines = createMemo(() => {
    const last = trial();
    return last && { before: lineOf(last.before), after: lineOf(last.after), house: last.after };
  });
  const moved = createMemo(() =>
    lines() ? movedBetween(lines()!.before, lines()!.after, isCut() ? MADE : []) : [],
  );
  /** What a cut makes of the charge that stands, while feints of the old cut are still in it. */
  const next = createMemo(() => {
    if (!trial() || !lines() || !cuts.includes(trial()!.figure)) return undefined;
    const run = nextRun(lines()!.before, lines()!.house);
    return isRefusal(run) ? undefined : run;
  });
  /** What a figure moves in place of alcohol, when none has moved. */
  const instead = () => {
    const both = lines();
    if (!both) return undefined;
    const [was, now] = [ledger(both.before, 'year'), ledger(both.after, 'year')];
    const hasMoved = Object.entries(was).some(([at, litres]) => now[at as Station] !== litres);
    return hasMoved ? undefined : insteadOf(trial()!.figure);
  };
  const hardlyMoved = () => {
    const both = lines();
    if (!both) return false;
    const [was, now] = [both.before.heart.alcohol, both.after.heart.alcohol];
    return Math.abs(now / was - 1) < HARDLY;
  };
  /** What cannot be meant, or hardly, of the house as it now stands. */
  const doubts = (): readonly string[] => {
    const now = lines()?.after;
    if (!now) return [];
    const { house, charge, foreshots, heart } = now;
    const share = (100 * foreshots.alcohol) / charge.alcohol;
    return [
      ...(isCut() && share > MANY_FORESHOTS
        ? [
            `The foreshots now carry ${n(share, 0)} % of the alcohol that was charged; a few per cent are common.`,
          ]
        : []),
      ...(heart.strength < house.fillingStrength - 0.05
        ? [
            `The new spirit is ${n(heart.strength, 1)} % vol, weaker than the filling strength of ${n(house.fillingStrength, 1)} % vol: it goes into the cask as it comes.`,
          ]
        : []),
    ];
  };
  const gave = () =>
    trial()!
      .gave.map(
        ({ figure, from, to }) => [figure, figureInWords(figure, from), figureInWords(figure, to)] as const,
      )
      .filter(([, from, to]) => from !== to)
      .map(([figure, from, to]) => `${numberFigures[figure].label} changes with it: ${from} → ${to}.`)
      .join(' ');
  return (
    <Show when={trial()}>
      {(last) => (
        <div class="what-moved">
          <Show when={last().gave.length > 0}>
            <p>{gave()}</p>
          </Show>
          <Show when={ways().length > 1}>
            <p class="ways" role="group" aria-label="What stays as it is">
              <For each={ways()}>
                {({ gives, says, taken }) => (
                  <button
                    type="button"
                    aria-pressed={taken}
                    onClick={() => changeFigure(last().figure, last().value, gives)}
                  >
                    {says}
                  </button>
                )}
              </For>
            </p>
          </Show>
          <Show when={last().problem === undefined}>
            <For each={[...unusualSentences(last().gave), ...doubts()]}>
              {(says) => <p class="remark">{says}</p>}
            </For>
            <Show when={instead()}>{(what) => <p>No change in the alcohol: {what()}.</p>}</Show>
            <Show when={isCut() && hardlyMoved()}>
              <p>
                The alcohol hardly changes: what the heart leaves comes back in the feints, and ends up in a
                later heart.
              </p>
            </Show>
            <Show when={next()}>
              {(run) => (
                <p>
                  The next run: {twoParts(run())}. Some rounds later: {twoParts(lines()!.after)}.
                </p>
              )}
            </Show>
            <Show when={moved().length > 0}>
              <Show when={!props.brief}>
                <MovedTable rows={moved().slice(0, FIRST)} />
              </Show>
              <Show when={moved().length > first()}>
                <details>
                  <summary>All that changed</summary>
                  <MovedTable rows={moved().slice(first())} />
                </details>
              </Show>
            </Show>
            <p class="actions">
              <button type="button" class="reset" onClick={takeChangeBack}>
                Undo
              </button>
            </p>
          </Show>
        </div>
      )}
    </Show>
  );
}

const portion = ({ volume, strength }: Portion) =>
  keepTogether(`${n(volume, 0)} L at ${n(strength, 1)} % vol`);
const twoParts = ({ heart, feints }: Pick<RunParts<Portion>, 'heart' | 'feints'>) => `heart ${portion(heart)}, feints ${portion(feints)}`; // prettier-ignore

function MovedTable(props: {
  readonly rows: readonly { readonly what: string; readonly was: string; readonly now: string }[];
}) {
  return (
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col" class="number">
            was
          </th>
          <th scope="col" class="number">
            now
          </th>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {({ what, was, now }) => (
            <tr>
              <th scope="row">{what}</th>
              <td class="number">{was}</td>
              <td class="number">{now}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
