// How sure the round is, when the house's figures carry a ± and vapour has two models: ten thousand rounds drawn off the main thread.
import { createMemo, createSignal, For, onCleanup, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import {
  drawnFigures,
  drawnFrom,
  unsureIn,
  unsureInPlant,
  unsureOfPlant,
  type DrawnFigure,
  type HouseFigure,
  type PlantFigure,
  type UnsureFigure,
} from '../core/line/monte-carlo.ts';
import { numberFigures } from '../house/figures.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { announce, useAnnouncement } from './announce.ts';
import { NumberField } from './NumberField.tsx';
import type { SpreadAnswer, SpreadQuestion } from './round-spread.worker.ts';

const COUNT = 10_000;
/** What a careful house might claim to know its figures to; starting values to be changed, no source. */
const START: Readonly<Record<UnsureFigure, number>> = {
  wortVolume: 50,
  originalGravity: 0.0005,
  finalGravity: 0.0005,
  washReflux: 0.02,
  washEnd: 0.1,
  spiritReflux: 0.03,
  foreshotsShare: 0.3,
  foreshotsVolume: 5,
  foreshotsMinutes: 1,
  foreshotsFlow: 10,
  foreshotsStrength: 0.2,
  heartEnd: 0.2,
  feintsEnd: 0.1,
  intermediateReflux: 0.03,
  strongFeintsEnd: 0.2,
  runAgain: 1,
};

/** The field of a figure’s ±. */
const ofHouse = (name: HouseFigure) => {
  const { label, kind, range, step } = numberFigures[name];
  return { name, label, kind, most: (range[1] - range[0]) / 10, step: step / 2 };
};
const ofStills = (name: PlantFigure) => ({ name, ...unsureOfPlant[name] });

type Finished = Extract<SpreadAnswer, { refused: number }> & { readonly from: string };

export default function RoundSpread() {
  const { house, line, mounted } = useHouse();
  const [unsure, setUnsure] = createSignal(START);
  const [done, setDone] = createSignal<number>();
  const [answer, setAnswer] = createSignal<Finished>();
  const [failed, setFailed] = createSignal(false);
  let worker: Worker | undefined;
  onCleanup(() => worker?.terminate());

  const plant = () => (mounted() ? unwrap(liveParts()).plant : undefined);
  /** What of its plant is drawn, where the house distils three times: all of it, and weak feints go back, or a part, and none do. */
  const ofPlant = (): readonly PlantFigure[] => {
    const { between } = line().round;
    return between === undefined ? [] : unsureInPlant[between.weak.volume > 0 ? 'thrice' : 'part-thrice'];
  };
  const fields = () => [...unsureIn(house()).map(ofHouse), ...ofPlant().map(ofStills)];
  const inUse = () => fields().map(({ name }) => name);
  const from = createMemo(() => drawnFrom(house(), unsure(), plant()));
  /** What is shown was drawn for other figures, or another ±, than stand there now. */
  const isStale = createMemo(() => answer() !== undefined && answer()!.from !== from());

  const fail = () => {
    worker?.terminate();
    worker = undefined;
    setDone(undefined);
    setFailed(true);
    announce('round-spread', () => FAILED);
  };
  const draw = () => {
    if (done() !== undefined) return;
    worker?.terminate();
    setFailed(false);
    setDone(0);
    const asked = from();
    try {
      worker = new Worker(new URL('./round-spread.worker.ts', import.meta.url), { type: 'module' });
    } catch {
      return fail();
    }
    worker.addEventListener('error', fail);
    worker.addEventListener('messageerror', fail);
    worker.addEventListener('message', ({ data }: MessageEvent<SpreadAnswer>) => {
      if ('done' in data) {
        setDone(data.done);
      } else {
        setAnswer({ ...data, from: asked });
        setDone(undefined);
        announce('round-spread', () => (isStale() ? STALE : said(data)));
      }
    });
    const given = Object.fromEntries(inUse().map((name) => [name, unsure()[name]]));
    worker.postMessage({
      house: { ...house() },
      unsure: given,
      plant: plant(),
      count: COUNT,
    } satisfies SpreadQuestion);
  };
  useAnnouncement('round-spread-stale', isStale, () => (isStale() ? STALE : ''));

  return (
    <section class="calculator" aria-labelledby="round-spread-title">
      <h3 id="round-spread-title">How sure the round is</h3>
      <p class="purpose">
        Give each figure its ±. Five thousand houses are drawn at random within them, and the round of each is
        worked out twice, with two formulas for the vapour: van Laar’s and Wilson’s. The answer is how far the
        heart spreads.
      </p>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={fields()}>
          {({ name, label, kind, most, step }) => (
            <NumberField
              id={`round-spread-${name}`}
              label={`${label}, ±`}
              kind={kind}
              range={[0, most]}
              step={step}
              value={unsure()[name]}
              take={(value) => void setUnsure({ ...unsure(), [name]: value })}
              plain
            />
          )}
        </For>
      </form>
      <p class="actions">
        <button type="button" onClick={draw} aria-disabled={done() !== undefined}>
          Draw {formatNumber(COUNT, 0)} rounds{isStale() ? ' again' : ''}
        </button>{' '}
        <span>
          <Show when={done() !== undefined}>
            <progress max={COUNT} value={done()} aria-label="Rounds drawn" /> {formatNumber(done()!, 0)} drawn
          </Show>
        </span>
      </p>
      <Show when={failed()}>
        <p class="problem">{FAILED}</p>
      </Show>
      <Show when={answer()}>
        {(found) => (
          <>
            <Show when={isStale()}>
              <p class="remark">{STALE}</p>
            </Show>
            <div class="table" tabindex="0" role="region" aria-label="How sure the round is, as a table">
              <table class="series" data-stale={isStale() ? '' : undefined}>
                <thead>
                  <tr>
                    <th scope="col">Figure</th>
                    <th scope="col">Mean</th>
                    <th scope="col">± from the figures</th>
                    <th scope="col">± from the model</th>
                    <th scope="col">± together</th>
                    <th scope="col">95 % between</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={Object.keys(drawnFigures) as DrawnFigure[]}>
                    {(name) => (
                      <Show when={found().summaries[name]}>
                        {(summary) => (
                          <tr>
                            <th scope="row">{drawnFigures[name]}</th>
                            <td class="number">{formatNumber(summary().mean, 1)}</td>
                            <td class="number">{formatNumber(summary().figures, 2)}</td>
                            <td class="number">{formatNumber(summary().model, 2)}</td>
                            <td class="number">{formatNumber(summary().standard, 2)}</td>
                            <td class="number">
                              {formatNumber(summary().low, 1)} and {formatNumber(summary().high, 1)}
                            </td>
                          </tr>
                        )}
                      </Show>
                    )}
                  </For>
                </tbody>
              </table>
            </div>
            <p class="remark">
              {found().refused === 0
                ? 'Every round came into balance.'
                : `${formatNumber(found().refused, 0)} of ${formatNumber(COUNT, 0)} draws had no balanced round and are left out.`}
            </p>
          </>
        )}
      </Show>
      <p class="sources">
        Sources: JCGM 101:2008, with independent, normally spread figures; de Nevers and the DECHEMA
        collection for the two formulas, which meet the measured vapour equally well. Each is taken to be as
        likely as the other, so the model’s ± is half of what lies between them.
      </p>
    </section>
  );
}

const STALE = 'Drawn for an earlier house: draw again.';
const FAILED = 'The rounds could not be drawn: the browser stopped the sum. Draw again, or reload the page.';

/** The answer in a sentence. */
const said = ({ summaries }: Pick<Finished, 'summaries'>) =>
  'Rounds drawn. ' +
  (Object.keys(drawnFigures) as DrawnFigure[])
    .flatMap((name) => {
      const summary = summaries[name];
      return summary
        ? `${drawnFigures[name]}: mean ${formatNumber(summary.mean, 1)}, 95 % between ${formatNumber(summary.low, 1)} and ${formatNumber(summary.high, 1)}.`
        : [];
    })
    .join(' ');
