// Gives the house at hand the figures of a talk that nobody has given it yet, by one button; says what was set, what stood before and what was left, and puts all back by one more.
import { createMemo, createSignal, Show } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { labelOf } from '../talk/labels.ts';
import { useHouse } from '../browser/house-store.ts';
import { useKnown } from '../browser/known-store.ts';
import { focusAfter } from './focus-after.ts';
import { withSmallInitial } from './ScriptAsk.tsx';
import { ScriptGiven } from './ScriptGiven.tsx';
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
      <Show when={last()}>{(done) => <ScriptGiven of={done()} putBack={putBack} />}</Show>
    </div>
  );
}
