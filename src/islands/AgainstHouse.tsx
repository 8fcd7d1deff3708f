// The choice to hold what is said against the reader's own house, and where the two part.
import { For, Show } from 'solid-js';
import { useHouse } from '../browser/house-store.ts';
import { isNumberName } from '../house/figures.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { labelOf } from '../talk/labels.ts';
import { disagreement, type HeldFigure } from '../talk/own-house.ts';
import { useAnnouncement } from './announce.ts';
import { withSmallInitial } from './ScriptAsk.tsx';

const NAMED = 8; // figures that are named; one reads no more
const isGivenByHouses = (figure: TalkFigureId) => isNumberName(talkFigures[figure].inTable ?? '');

/** How many figures are as a house has them, in a sentence. */
export function asAtHouse(found: readonly HeldFigure[], name: string): string {
  if (found.length === 0) return `Nothing said so far is a figure that ${name} has given.`;
  const alike = found.filter(({ agrees }) => agrees).length;
  if (found.length === 1) return `One figure is ${alike === 1 ? '' : 'not '}as at ${name}.`;
  return `${alike === found.length ? `All ${alike}` : `${alike} of ${found.length}`} figures are as at ${name}.`;
}

/** What a house does not have of its own, named as far as one reads on. */
function notKnownSentence(figures: readonly TalkFigureId[], name: string): string {
  const [first, rest] = [figures.slice(0, NAMED), figures.length - NAMED];
  const labels = first.map((figure) => withSmallInitial(labelOf(figure))).join(', ');
  return `${name} has no figure of its own yet for ${labels}${rest > 0 ? ` and ${rest} more` : ''}, so nothing is held against it there.`;
}

export function AgainstHouse(props: {
  readonly id: string;
  /** What was said, held against the house. */
  readonly found: readonly HeldFigure[];
  /** What was said, of which the house has no figure that is known. */
  readonly notKnown: readonly TalkFigureId[];
  /** Where on the page the house can be given such figures, if it can. */
  readonly giveAt?: string | undefined;
  readonly held: boolean;
  readonly hold: (held: boolean) => void;
}) {
  const { name } = useHouse();
  const apart = () => props.found.filter(({ agrees }) => !agrees);
  let part: HTMLDivElement | undefined;
  useAnnouncement(
    'against-house',
    () => props.held,
    () => (props.held ? asAtHouse(props.found, name()) : ''),
    () => part,
  );
  return (
    <div class="against-house" ref={part}>
      <label class="tick" for={props.id}>
        <input
          id={props.id}
          type="checkbox"
          autocomplete="off"
          checked={props.held}
          onChange={(event) => props.hold(event.currentTarget.checked)}
        />
        <span>Compare with {name()}</span>
      </label>
      <Show when={props.held}>
        <p>{asAtHouse(props.found, name())}</p>
        <Show when={apart().length > 0}>
          <h3>Not as at {name()}</h3>
          <ul class="sentences">
            <For each={apart()}>{(each) => <li>{disagreement(each, name())}</li>}</For>
          </ul>
        </Show>
        <Show when={props.notKnown.length > 0}>
          <p>
            {notKnownSentence(props.notKnown, name())}{' '}
            <Show when={props.notKnown.some(isGivenByHouses) && props.giveAt}>
              {(at) => (
                <a class="on-screen" href={at()}>
                  Give it yours
                </a>
              )}
            </Show>
          </p>
        </Show>
      </Show>
    </div>
  );
}
