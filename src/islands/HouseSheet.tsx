// The whole house on one sheet: every figure that it gives and how it is known; what it counted, beside what is computed.
import { createEffect, createMemo, createSignal, For, Show } from 'solid-js';
import { headOf, pathsOf, stageOf, type FigureId } from '../core/figures/index.ts';
import { countedIds, standings } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import { figuresFile } from '../house/all-figures.ts';
import { numberFigures, stages, type NumberName } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { format } from '../core/format.ts';
import { figuresThatCount } from '../house/parts/known.ts';
import { textOfFigure } from '../house/prose.ts';
import type { StandingSaid } from '../house/standing-rows.ts';
import { liveParts } from '../browser/house-store.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { progressInWords } from './HouseProgress.tsx';
import { saveFile } from './save-file.ts';
import { dateInWords, today } from './today.ts';

const titleOf = (stage: string) => stage[0]!.toUpperCase() + stage.slice(1);

export default function HouseSheet() {
  let sheet: HTMLElement | undefined;
  const { house, line, name, mounted } = useHouseWhenIdle(() => sheet);
  const { standing, counted, hangsOn } = useKnown();
  const [said, setSaid] = createSignal<string>();
  /** Vessels and casks, told in words only where the house keeps some. */
  const [rows, setRows] = createSignal<readonly StandingSaid[]>();
  createEffect(() => {
    const parts = mounted() ? liveParts() : {};
    if (parts.plant === undefined && parts.stock === undefined) return void setRows(undefined);
    void import('../house/standing-rows.ts').then(
      ({ standingRows }) => setRows(standingRows(parts)),
      () => undefined,
    ); // without it, the sheet has its figures
  });
  const figures = createMemo(() => figuresThatCount(house()), [], {
    equals: (a, b) => a.join() === b.join(),
  });
  const computed = (id: FigureId) => numberAt(line(), pathsOf(id)[0]!)!;
  const ofStage = (ids: readonly FigureId[], stage: string) => ids.filter((id) => stageOf(id) === stage);
  /** What is said of a computed figure: how it lies to what was counted, or that it is an estimate. */
  const beside = (id: FigureId): string => {
    const own = counted(id);
    if (own !== undefined)
      return (
        computedBeside(id, own, computed(id)) + (hangsOn(id).length > 0 ? `; ${standings.estimate}` : '')
      );
    return standing(id) === 'estimate' ? standings.estimate : '';
  };
  /** On paper there is room for what is not known. */
  const why = (id: FigureId) => hangsOn(id).map((figure) => numberFigures[figure].label.toLowerCase()).join(', '); // prettier-ignore
  const save = () => {
    const file = `${name()
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')}.figures.json`;
    saveFile(file, figuresFile(name(), line(), { standing, counted }), 'application/json');
    setSaid(`All figures are saved as ${file}.`);
  };
  return (
    <section ref={sheet} class="house-sheet" aria-labelledby="house-sheet-title">
      <h1 id="house-sheet-title">Every figure of {name()}</h1>
      <div class="table" tabindex="0" role="group" aria-label="What the house gives">
        <table class="given">
          <thead>
            <tr>
              <th scope="col">What you give</th>
              <th scope="col" class="number">
                Figure
              </th>
              <th scope="col">How known</th>
            </tr>
          </thead>
          <For each={stages}>
            {(stage) => (
              <tbody>
                <tr>
                  <th scope="rowgroup" colspan="3" class="stage">
                    <a href={`../${stage}/`}>{titleOf(stage)}</a>
                  </th>
                </tr>
                <For each={ofStage(figures(), stage) as readonly NumberName[]}>
                  {(id) => (
                    <tr classList={{ 'not-known': standing(id) === 'unknown' }}>
                      <th scope="row">
                        <Show when={standing(id) === 'unknown'} fallback={numberFigures[id].label}>
                          <a href={`../${stage}/#house-${id}`}>{numberFigures[id].label}</a>
                        </Show>
                      </th>
                      <td class="number">{textOfFigure(id, house()[id])}</td>
                      <td>{standings[standing(id)]}</td>
                    </tr>
                  )}
                </For>
                <Show when={stage === 'maturing'}>
                  <tr classList={{ 'not-known': standing('hogsheads') === 'unknown' }}>
                    <th scope="row">Share of butts, 500 L</th>
                    <td class="number">{format(100 - house().barrels - house().hogsheads, 'percent', 0)}</td>
                    <td>the rest</td>
                  </tr>
                </Show>
              </tbody>
            )}
          </For>
        </table>
      </div>
      <div class="table" tabindex="0" role="group" aria-label="What follows from it">
        <table class="counted">
          <thead>
            <tr>
              <th scope="col">What follows</th>
              <th scope="col" class="number">
                Counted
              </th>
              <th scope="col" class="number">
                Computed
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={countedIds}>
              {(id) => (
                <tr>
                  <th scope="row">{headOf(id)}</th>
                  <td class="number">
                    <Show when={counted(id) !== undefined} fallback="–">
                      {textOfFigure(id, counted(id)!)}
                    </Show>
                  </td>
                  <td class="number">
                    {textOfFigure(id, computed(id))}
                    <Show when={beside(id)}>{(says) => <span class="beside">{says()}</span>}</Show>
                    <Show when={why(id)}>
                      {(which) => <span class="beside why">not known: {which()}</span>}
                    </Show>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={rows()?.length}>
        <div class="table" tabindex="0" role="group" aria-label="What stands in it">
          <table class="stands">
            <thead>
              <tr>
                <th scope="col" colspan="2">
                  What stands in it
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={rows()}>
                {([what, says]) => (
                  <tr>
                    <th scope="row">{what}</th>
                    <td>{says}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </Show>
      <p class="foot">
        {name()}
        {mounted() && `, ${dateInWords(today())}`}. {progressInWords(figures(), standing, name())}
        <Show when={figures().some((id) => standing(id) === 'unknown')}>
          <span class="why">Figures that are not known are left out.</span>
        </Show>
      </p>
      <p class="actions">
        <button type="button" onClick={() => print()}>
          Print this sheet
        </button>{' '}
        <button type="button" onClick={save}>
          Save all figures for a spreadsheet or slides
        </button>
      </p>
      <p role="status">{said()}</p>
    </section>
  );
}
