// The alcohol ledger: litres of pure alcohol at every station, always in reach.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { cautions } from '../core/line/cautions.ts';
import { ledger, mashesIn, paces, stations, type LedgerPace, type Station } from '../core/line/ledger.ts';
import type { FigureId } from '../core/figures/index.ts';
import { standings } from '../core/figures/standing.ts';
import { format, formatNumber } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import type { NumberName } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { lineOf } from '../house/line-of.ts';
import { figureText } from '../house/prose.ts';
import { lastTrial } from '../browser/house-store.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { useAnnouncement } from './announce.ts';
import { roundUp } from './plot.ts';

const litres = (value: number) => `${formatNumber(value, value < 100 ? 1 : 0)} L`;

/** The figure of a mash at each station, and the figures that a pace hangs on beside it. */
const figureAt: Readonly<Record<Station, FigureId>> = {
  malt: 'maltAlcohol',
  wash: 'washAlcohol',
  lowWines: 'lowWinesAlcohol',
  charge: 'chargeAlcohol',
  heart: 'heartAlcohol',
  casks: 'fillingAlcohol',
  bottles: 'bottlingAlcohol',
};
const paceHangsOn: Readonly<Record<LedgerPace, readonly NumberName[]>> = {
  mash: [],
  tonne: ['maltPerMash'],
  week: ['mashesPerWeek'],
  year: ['mashesPerWeek', 'weeksPerYear'],
};

const TALL = 10; // of a bar, in drawing units
const LOOP = 'M1 6 a3 3 0 1 1 3 3 m-1.6 -1.6 l1.6 1.6 l-1.6 1.6'; // an arrow that turns round

/** Litres to a scale: what is there, what goes round and round, and a mark where it stood before. */
function Bar(props: {
  readonly alcohol: number;
  readonly round: number;
  readonly was: number | undefined;
  readonly end: number;
}) {
  const at = (litres: number) => (100 * litres) / props.end;
  return (
    <svg viewBox={`0 0 100 ${TALL}`} preserveAspectRatio="none">
      <rect class="amount" width={at(props.alcohol)} height={TALL} />
      <Show when={props.round > 0}>
        <rect class="goes-round" x={at(props.alcohol)} width={at(props.round)} height={TALL} />
        <path class="loop" transform={`translate(${at(props.alcohol + props.round / 2) - 4} -1)`} d={LOOP} />
      </Show>
      <Show when={props.was}>
        {(was) => <line class="stood" x1={at(was())} x2={at(was())} y1="0" y2={TALL} />}
      </Show>
    </svg>
  );
}

export default function Ledger() {
  let sheet: HTMLDetailsElement | undefined;
  const { line, name } = useHouseWhenIdle(() => sheet);
  const [pace, setPace] = createSignal<LedgerPace>('mash');
  const amounts = createMemo(() => ledger(line(), pace()));
  /** The last change's figures before it, where they differ as they are printed. */
  const before = createMemo(() => {
    const last = lastTrial();
    return last && last.before !== last.after ? ledger(lineOf(last.before), pace()) : undefined;
  });
  const was = (station: Station) => {
    const value = before()?.[station];
    return value === undefined || litres(value) === litres(amounts()[station]) ? undefined : value;
  };
  /** A round end of the scale, so that bars move over one that stands still. */
  const end = createMemo(() =>
    roundUp(Math.max(...Object.values(amounts()), ...Object.values(before() ?? {})), 4),
  );
  const { isEstimate, counted, unknown } = useKnown();
  const isGuessed = (id: FigureId) =>
    isEstimate(id) || paceHangsOn[pace()].some((figure) => unknown().includes(figure));
  /** What was counted of a mash's alcohol at a station, at the pace shown. */
  const countedAt = (station: Station) => {
    const own = counted(figureAt[station]);
    return own === undefined ? undefined : own * mashesIn(pace(), line());
  };
  const goesRound = () => amounts().charge - amounts().lowWines;
  const bottles = (of: Line) =>
    `${figureText(of, 'bottling.bottles', pace())}${of.bottling.isMixed ? '' : ` of ${format(of.house.bottleSize, 'bottle')}`}`;
  const remarks = createMemo(() => cautions(line()));
  useAnnouncement('ledger', amounts, () =>
    [
      `Pure alcohol ${paces[pace()]}: heart ${litres(amounts().heart)}, bottles ${litres(amounts().bottles)}.`,
      ...remarks().flatMap(({ weight, says }) => (weight === 'impossible' ? [says] : [])),
    ].join(' '),
  );
  // Beside the text there is room for the whole table; over it, on a narrow screen, it opens only when asked.
  onMount(() => {
    if (sheet && matchMedia('(min-width: 72rem)').matches) sheet.open = true;
  });

  return (
    <aside class="ledger" aria-label="Alcohol ledger">
      <details
        ref={sheet}
        onToggle={(event) =>
          (document.documentElement.dataset['ledger'] = event.currentTarget.open ? 'open' : 'closed')
        }
      >
        <summary>
          <span class="ledger-title">Pure alcohol</span>{' '}
          <span class="ledger-brief">
            heart <Show when={was('heart')}>{(value) => <s>{litres(value())}</s>}</Show>{' '}
            {litres(amounts().heart)} · in bottles{' '}
            <Show when={was('bottles')}>{(value) => <s>{litres(value())}</s>}</Show>{' '}
            {litres(amounts().bottles)} {paces[pace()]}
            <Show when={isGuessed('heartAlcohol') || isGuessed('bottlingAlcohol')}> · estimate</Show>
            <Show when={remarks().some(({ weight }) => weight === 'impossible')}> · does not agree</Show>
          </span>
        </summary>
        <div class="ledger-body">
          <div class="pace" role="radiogroup" aria-label="Litres of pure alcohol for">
            <For each={Object.keys(paces) as LedgerPace[]}>
              {(choice) => (
                <label>
                  <input
                    type="radio"
                    name="ledger-pace"
                    checked={pace() === choice}
                    onChange={() => setPace(choice)}
                  />
                  <span>{paces[choice]}</span>
                </label>
              )}
            </For>
          </div>
          <table>
            <caption>
              {name()}: litres of pure alcohol at 20 °C, {paces[pace()]}
            </caption>
            <tbody>
              <For each={Object.keys(stations) as Station[]}>
                {(station) => (
                  <tr>
                    <th scope="row">{stations[station]}</th>
                    <td class="number" data-station={station}>
                      {litres(amounts()[station])}
                      <Show when={isGuessed(figureAt[station])}>
                        <span class="beside">{standings.estimate}</span>
                      </Show>
                      <Show when={countedAt(station)}>
                        {(own) => <span class="beside">counted {litres(own())}</span>}
                      </Show>
                      <Show when={was(station)}>
                        {(value) => <span class="was">was {litres(value())}</span>}
                      </Show>
                    </td>
                    <td class="bar" aria-hidden="true">
                      <Bar
                        alcohol={station === 'charge' ? amounts().lowWines : amounts()[station]}
                        round={station === 'charge' ? goesRound() : 0}
                        was={was(station)}
                        end={end()}
                      />
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <p class="bottle-count">
            Bottles: <span data-bottles>{bottles(line())}</span>
            <Show when={isGuessed('bottles')}>
              <span class="beside">{standings.estimate}</span>
            </Show>
            <Show when={before() && bottles(lineOf(lastTrial()!.before)) !== bottles(line())}>
              <span class="was">was {bottles(lineOf(lastTrial()!.before))}</span>
            </Show>
          </p>
          <p class="note">
            The loop is last round’s foreshots and feints, {litres(goesRound())}, which the charge holds as
            well as the low wines.
          </p>
          <Show when={remarks().length > 0}>
            <ul class="cautions">
              <For each={remarks()}>{({ weight, says }) => <li class={weight}>{says}</li>}</For>
            </ul>
          </Show>
        </div>
      </details>
    </aside>
  );
}
