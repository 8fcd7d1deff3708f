// Gives the house at hand the figures of a talk that nobody has given it yet, by one button; says what was set, what stood before and what was left, and puts all back by one more.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { labelOf } from '../talk/labels.ts';
import { useHouse } from '../browser/house-store.ts';
import { useKnown } from '../browser/known-store.ts';
import { focusAfter } from './focus-after.ts';
import { withSmallInitial } from './ScriptAsk.tsx';
import { giveToHouse, type GivenToHouse } from './script-given.ts';
import { figuresToGive } from './script-to-give.ts';
import type { TalkRead } from './script-reading.worker.ts';

const these = (many: number) => (many === 1 ? 'this figure' : `these ${many} figures`);
const figures = (many: number) => (many === 1 ? 'One figure' : `${many} figures`);

export function ScriptGive(props: {
  readonly read: TalkRead;
  /** False for a talk of another house, which the reader does not have compared with this one. */
  readonly isOfHouse: boolean;
}) {
  const { house, name, visiting } = useHouse();
  const { known } = useKnown();
  const [given, setGiven] = createSignal<GivenToHouse>();
  const [says, setSays] = createSignal('');
  let saying: HTMLParagraphElement | undefined;
  const last = () => (given()?.stands() ? given() : undefined);
  const offered = createMemo(() =>
    props.isOfHouse && !visiting() ? figuresToGive(props.read, house(), known()) : { give: [], left: [] },
  );
  /** What the house did not run with a moment ago is not offered once more. */
  const give = () => offered().give.filter((each) => !last()?.refused.some(({ name }) => name === each.name));
  const left = () => offered().left.map(({ figure, why }) => `${withSmallInitial(labelOf(figure))} (${why})`);
  const label = () =>
    name() === builtInName
      ? `Begin your own house with ${these(give().length)}`
      : `Give ${these(give().length)} to ${name()}`;
  const put = (event: Event) => {
    const done = giveToHouse(give());
    setGiven(done);
    setSays(
      done.set.length === 0 ? 'Nothing was set.' : `${figures(done.set.length)} given to ${done.house}.`,
    );
    focusAfter(event, () => saying);
  };
  const putBack = (event: Event) => {
    given()!.putBack();
    setGiven(undefined);
    setSays(`Put back: ${name()} is as it was.`);
    focusAfter(event, () => saying);
  };
  return (
    <div class="script-give" id="script-give">
      <p class="actions">
        <Show when={give().length > 0}>
          <button type="button" onClick={put}>
            {label()}
          </button>
        </Show>
        <a href="../walk/">Walk with this talk</a>
        <a href="../cards/">Pocket cards</a>
      </p>
      <Show when={left().length > 0 && (give().length > 0 || last())}>
        <p class="note">Not among them: {left().join(', ')}.</p>
      </Show>
      <p role="status" tabindex="-1" ref={saying}>
        {says()}
      </p>
      <Show when={last()}>{(done) => <GivenSaid of={done()} putBack={putBack} />}</Show>
    </div>
  );
}

/** What was set and what stood before, what was left and why, and the way back. */
function GivenSaid(props: { readonly of: GivenToHouse; readonly putBack: (event: Event) => void }) {
  return (
    <>
      <Show when={props.of.set.length > 0}>
        <details>
          <summary>What was set, and what stood before</summary>
          <dl class="results">
            <For each={props.of.set}>
              {({ label, now, before }) => (
                <div>
                  <dt>{label}</dt>
                  <dd class="number">
                    {now} <span class="spread">(before: {before})</span>
                  </dd>
                </div>
              )}
            </For>
          </dl>
          <Show when={props.of.moved.length > 0}>
            <p class="note">Moved with them, as nobody has given them: {props.of.moved.join(', ')}.</p>
          </Show>
        </details>
      </Show>
      <Show when={props.of.refused.length > 0}>
        <p>Left as they are, as the house does not run with them:</p>
        <ul class="sentences">
          <For each={props.of.refused}>{({ figure, problem }) => <li>{leftWith(figure, problem)}</li>}</For>
        </ul>
      </Show>
      <Show when={props.of.set.length > 0}>
        <p class="actions">
          <button type="button" onClick={(event) => props.putBack(event)}>
            Put all back
          </button>
          <a href="../house/">See {props.of.house}</a>
        </p>
      </Show>
    </>
  );
}

/** A figure by its name and the house’s own sentence, which may begin with that name. */
function leftWith(figure: Parameters<typeof labelOf>[0], problem: string): string {
  const label = labelOf(figure);
  return problem.startsWith(label) ? problem : `${label}: ${withSmallInitial(problem)}`;
}
