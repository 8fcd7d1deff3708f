// The line from malt to bottle, live: vessels that fill, handles on them, and the alcohol as one ribbon.
import { createMemo, For, Show, type JSX } from 'solid-js';
import { standings } from '../core/figures/standing.ts';
import { formatNumber as n } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { choiceFigures, numberFigures } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { lineOf } from '../house/line-of.ts';
import { changeFigure, takeChangeBack } from '../browser/change-figure.ts';
import { lastTrial } from '../browser/house-store.ts';
import { figureInWords, waysOut, type Trial } from '../house/trial.ts';
import { useAnnouncement } from './announce.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { flowsOfLine, roomOf, type LineFlows } from './line-flows.ts';
import { lineHandles, type HandleId, type LineHandle } from './line-handles.ts';
import { levelsOf, type LineVesselName } from './line-levels.ts';
import { LineKnob, LineSteps, type RailPlace } from './LineHandle.tsx';
import { LineRibbon } from './LineRibbon.tsx';
import { LineVessel } from './LineVessel.tsx';

interface Station {
  readonly id: LineVesselName;
  readonly name: string;
  readonly chapter: string;
  readonly rails?: Partial<Readonly<Record<HandleId, RailPlace>>>;
  /** What of the alcohol, or before it is any, of the liquid, is here; and what leaves. */
  readonly says: (line: Line, flows: LineFlows) => string;
}

const litres = (value: number) => `${n(value, value < 99.95 ? 1 : 0)}\u00a0L`;

const stations: readonly Station[] = [
  {
    id: 'malt',
    name: 'Malt',
    chapter: 'malting',
    rails: { malt: [65, 40, 130] },
    says: (_line, { promise }) => `could give ${litres(promise)}`,
  },
  {
    id: 'mash-tun',
    name: 'Mash tun',
    chapter: 'mashing',
    says: ({ wort }) => `${litres(wort.volume)} of wort`,
  },
  {
    id: 'washback',
    name: 'Washback',
    chapter: 'fermenting',
    rails: { gravity: [66, 14, 140] },
    says: (_line, { wash }) => `${litres(wash)} of alcohol`,
  },
  {
    id: 'wash-still',
    name: 'Wash still',
    chapter: 'distilling',
    says: (_line, { lost }) => `pot ale takes ${litres(lost.potAle)}`,
  },
  {
    id: 'spirit-still',
    name: 'Spirit still',
    chapter: 'distilling',
    rails: { 'heart-begins': [40, 20, 132], 'heart-ends': [106, 20, 132] },
    says: ({ heart }, { round }) => `heart ${n(heart.alcohol, 0)}, loop ${litres(round)}`,
  },
  {
    id: 'cask',
    name: 'Cask',
    chapter: 'maturing',
    rails: { years: [30, 40, 140], loss: [100, 40, 140] },
    says: (_line, { lost }) => `air takes ${litres(lost.air)}, cask ${litres(lost.wood + lost.inCasks)}`,
  },
  {
    id: 'bottle',
    name: 'Bottle',
    chapter: 'maturing',
    says: (_line, { bottles, lost }) => `${litres(bottles)}, filters ${litres(lost.filters)}`,
  },
];
const holds = choiceFigures.holds;
const HINT =
  'Drag a knob. The ribbon is as wide as the pure alcohol of one mash; the loop is foreshots and feints going round.';
const CUT =
  'The alcohol hardly changes: what the heart leaves comes back in the feints. The loop, and the litres through the still, do.';
const cuts: readonly string[] = ['foreshotsShare', 'foreshotsVolume', 'foreshotsMinutes', 'foreshotsStrength', 'heartEnd']; // prettier-ignore
const HARDLY = 0.005; // of the heart's alcohol

/** The line; what stands inside it comes between the drawing and the choice of what is held. */
export default function LiveLine(props: { readonly children?: JSX.Element }) {
  let island: HTMLElement | undefined;
  const { line, house } = useHouseWhenIdle(() => island);
  const { isEstimate } = useKnown();
  /** The change that brought the house to where it is drawn; while the drawing has yet to catch up with another, the one before. */
  const trial = createMemo<Trial | undefined>((drawn) => {
    const last = lastTrial();
    const shown = last && last.after !== house() ? drawn : last;
    return shown?.after === house() && shown.before !== shown.after ? shown : undefined;
  });
  const problem = () => lastTrial()?.problem;
  const before = createMemo(() => (trial() ? lineOf(trial()!.before) : line()));
  const hasMoved = () => trial() !== undefined;
  /** The line that scales, rails and full vessels are made for: the one before the first of several moves, so that they stand still under the hand. */
  const frame = createMemo<Line | undefined>((held) => (hasMoved() && held ? held : before()));
  const flows = createMemo(() => flowsOfLine(line()));
  const flowsBefore = createMemo(() => flowsOfLine(before()));
  const room = createMemo(() => roomOf(flowsOfLine(frame()!), flows()));
  const levels = createMemo(() => levelsOf(line(), frame()!, line()));
  const levelsBefore = createMemo(() => levelsOf(before(), frame()!, line()));
  const handles = createMemo(() => lineHandles(line(), frame()!, line()));
  const handlesBefore = createMemo(() => lineHandles(before(), frame()!, line()));
  const of = (all: readonly LineHandle[], id: HandleId) => all.find((each) => each.id === id)!;
  const partBefore = (id: HandleId) => {
    const [was, is] = [of(handlesBefore(), id).part, of(handles(), id).part];
    return hasMoved() && was !== is ? was : undefined;
  };
  const levelBefore = (id: LineVesselName) => (hasMoved() ? levelsBefore()[id] : undefined);
  const move = (handle: LineHandle, value: number) =>
    void changeFigure(handle.figure, value, undefined, true);
  const bottles = (line: Line) => n(Math.floor(line.bottling.bottlesPerYear), 0);
  const gave = () =>
    (trial()?.gave ?? [])
      .map(
        ({ figure, from, to }) => [figure, figureInWords(figure, from), figureInWords(figure, to)] as const,
      )
      .filter(([, from, to]) => from !== to)
      .map(([figure, from, to]) => `${numberFigures[figure].label}: ${from} → ${to}`)
      .join('; ');
  const otherWay = createMemo(() => {
    const last = trial();
    return last && waysOut(last).find(({ taken }) => !taken);
  });
  useAnnouncement(
    'line',
    () => [house(), problem()],
    () => problem() ?? `${bottles(line())} bottles a year.${gave() ? ` Changes with it: ${gave()}.` : ''}`,
    () => island,
  );

  /** True once a cut was moved and the heart's alcohol hardly was. */
  const isStillCut = () => {
    const last = trial();
    if (!last || last.before === last.after || !cuts.includes(last.figure)) return false;
    return Math.abs(lineOf(last.after).heart.alcohol / lineOf(last.before).heart.alcohol - 1) < HARDLY;
  };
  return (
    <section ref={island} class="live-line" aria-label="The line from malt to bottle">
      <a class="skip" href="#ways-in">
        Skip the drawing
      </a>
      <p class="bottles-a-year">
        <span class="count">
          <Show when={hasMoved() && bottles(before()) !== bottles(line())}>
            <s>
              <span class="visually-hidden">before: </span>
              {bottles(before())}
            </s>{' '}
            <span aria-hidden="true">→</span>{' '}
          </Show>
          <b>{bottles(line())}</b>
        </span>{' '}
        <span>
          bottles a year<Show when={isEstimate('bottlesPerYear')}>, {standings.estimate}</Show>
        </span>
      </p>
      <Show when={hasMoved()}>
        <button type="button" class="take-back" onClick={takeChangeBack}>
          Undo
        </button>
      </Show>
      <div class="line">
        <ol>
          <For each={stations}>
            {(station) => {
              const ids = Object.keys(station.rails ?? {}) as HandleId[];
              return (
                <li class={station.id}>
                  <LineVessel
                    of={station.id}
                    level={levels()[station.id]}
                    before={levelBefore(station.id)}
                    isHeld={ids.length > 0}
                  >
                    <For each={ids}>
                      {(id) => (
                        <LineKnob
                          handle={of(handles(), id)}
                          before={partBefore(id)}
                          rail={station.rails![id]!}
                          move={move}
                        />
                      )}
                    </For>
                  </LineVessel>
                  <div class="words">
                    <p class="station">
                      <a href={`/${station.chapter}/`}>{station.name}</a>{' '}
                      <span>{station.says(line(), flows())}</span>
                    </p>
                    <For each={ids}>{(id) => <LineSteps handle={of(handles(), id)} move={move} />}</For>
                  </div>
                </li>
              );
            }}
          </For>
        </ol>
        <LineRibbon flows={flows()} before={hasMoved() ? flowsBefore() : undefined} room={room()} />
      </div>
      <div class="gave">
        <p classList={{ problem: problem() !== undefined }}>
          <Show
            when={problem()}
            fallback={gave() ? `Changes with it: ${gave()}.` : isStillCut() ? CUT : HINT}
          >
            {problem()}
          </Show>
        </p>
        <Show when={otherWay()}>
          {(way) => (
            <button
              type="button"
              onClick={() => void changeFigure(trial()!.figure, trial()!.value, way().gives)}
            >
              {way().says}
            </button>
          )}
        </Show>
      </div>
      {props.children}
      <label class="held">
        <span>{holds.label}</span>{' '}
        <select
          autocomplete="off"
          onChange={(event) => void changeFigure('holds', event.currentTarget.value)}
        >
          <For each={Object.entries(holds.options)}>
            {([value, wording]) => (
              <option value={value} selected={house().holds === value}>
                {wording}
              </option>
            )}
          </For>
        </select>
      </label>
    </section>
  );
}
