// The whole house on one sheet: every figure that it gives and how it is known; what it counted, beside what is computed.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { headOf, pathsOf, stageOf, type FigureId } from '../core/figures/index.ts';
import { countedIds, standings } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import { figuresFile } from '../house/all-figures.ts';
import { numberFigures, stages, type NumberName } from '../house/figures.ts';
import { useKnown } from '../house/known-store.ts';
import { figuresThatCount } from '../house/parts/known.ts';
import { textOfFigure } from '../house/prose.ts';
import { useHouseAtHand } from './at-hand.ts';
import { progress } from './HouseProgress.tsx';
import { saveFile } from './save-file.ts';
import { inWords, today } from './today.ts';

const FEW = 2; // figures on which one hangs that are named

const titleOf = (stage: string) => stage[0]!.toUpperCase() + stage.slice(1);

export default function HouseSheet() {
  let sheet: HTMLElement | undefined;
  const { house, line, name, mounted } = useHouseAtHand(() => sheet);
  const { standing, counted, hangsOn } = useKnown();
  const [said, setSaid] = createSignal<string>();
  const figures = createMemo(() => figuresThatCount(house()), [], {
    equals: (a, b) => a.join() === b.join(),
  });
  const computed = (id: FigureId) => numberAt(line(), pathsOf(id)[0]!)!;
  const ofStage = (ids: readonly FigureId[], stage: string) => ids.filter((id) => stageOf(id) === stage);
  /** What is said of a computed figure: how it lies to what was counted, or that it is an estimate, and what is not known of it. */
  const beside = (id: FigureId): string => {
    const own = counted(id);
    if (own !== undefined) return computedBeside(id, own, computed(id));
    if (standing(id) !== 'estimate') return '';
    const on = hangsOn(id).map((figure) => numberFigures[figure].label.toLowerCase());
    const what = on.length > FEW ? `${on.length} figures` : on.join(' and ');
    return `${standings.estimate}${what && `: ${what} not known`}`;
  };
  const save = () => {
    const file = `${name()
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')}.figures.json`;
    saveFile(file, figuresFile(name(), line(), { standing, counted }), 'application/json');
    setSaid(`All figures are saved as ${file}.`);
  };
  return (
    <section ref={sheet} class="house-sheet" aria-labelledby="house-sheet-title">
      <h2 id="house-sheet-title">Every figure of {name()}</h2>
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
                  <a href={`./${stage}/`}>{titleOf(stage)}</a>
                </th>
              </tr>
              <For each={ofStage(figures(), stage) as readonly NumberName[]}>
                {(id) => (
                  <tr classList={{ 'not-known': standing(id) === 'unknown' }}>
                    <th scope="row">
                      <Show when={standing(id) === 'unknown'} fallback={numberFigures[id].label}>
                        <a href={`./${stage}/#house-${id}`}>{numberFigures[id].label}</a>
                      </Show>
                    </th>
                    <td class="number">{textOfFigure(id, house()[id])}</td>
                    <td>{standings[standing(id)]}</td>
                  </tr>
                )}
              </For>
            </tbody>
          )}
        </For>
      </table>
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
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="foot">
        {name()}
        {mounted() && `, ${inWords(today())}`}. {progress(figures(), standing, name())}
      </p>
      <p class="actions">
        <button type="button" onClick={() => print()}>
          Print this sheet
        </button>{' '}
        <button type="button" onClick={save}>
          Save all figures
        </button>
      </p>
      <p role="status">{said()}</p>
    </section>
  );
}
