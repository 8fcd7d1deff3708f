// Figures that a walk says and the house has not of its own: no sentence is held against an estimate, and the house may take what is said.
import { createMemo, For, Show } from 'solid-js';
import { changeFigure, countFigure, keepFigures } from '../browser/change-figure.ts';
import { countedIds } from '../core/figures/standing.ts';
import { isNumberName } from '../house/figures.ts';
import { talkFigures } from '../talk/figures.ts';
import { labelOf, numberOf } from '../talk/labels.ts';
import type { OfferedFigure } from '../walk/stale.ts';
import { focusAfter } from './focus-after.ts';
import { useWayBack } from './use-way-back.tsx';

/** Whether the house takes the figure: one that it gives, or one computed that can be counted. */
const isTaken = ({ figure }: OfferedFigure): boolean => {
  const id = talkFigures[figure].inTable;
  return id !== undefined && (isNumberName(id) || countedIds.includes(id));
};
/** Puts what is said where the house has the figure: as given, or as counted of one that is computed. What is wrong, or nothing. */
function takeFromTalk({ figure, says }: OfferedFigure): string | undefined {
  const id = talkFigures[figure].inTable!;
  return isNumberName(id) ? changeFigure(id, says) : countFigure(id, says);
}

export function WalkOffered(props: { readonly offered: readonly OfferedFigure[]; readonly name: string }) {
  const { say, Said, saying } = useWayBack(true);
  const bySentence = createMemo(() => {
    const all = new Map<string, OfferedFigure[]>();
    for (const each of props.offered) all.set(each.sentence, [...(all.get(each.sentence) ?? []), each]);
    return all;
  });
  const take = (each: OfferedFigure, event: Event) => {
    const [house, before] = [props.name, keepFigures()];
    const problem = takeFromTalk(each);
    if (problem !== undefined) say(problem);
    else
      say(`${labelOf(each.figure)}: ${house} has ${numberOf(each.figure, each.says)} now.`, () => {
        before();
        return `${labelOf(each.figure)}: ${house} has it as before.`;
      });
    focusAfter(event, saying);
  };
  return (
    <>
      <Said />
      <Show when={props.offered.length > 0}>
        <details class="walk-offered">
          <summary>
            Said here, and not given to {props.name} yet ({props.offered.length})
          </summary>
          <p class="meaning">
            {props.name} has no figure of its own there, so nothing is held against what you say. It can take
            it from you.
          </p>
          <ul class="sentences">
            <For each={[...bySentence()]}>
              {([sentence, figures]) => (
                <li>
                  <p>{sentence.trim()}</p>
                  <For each={figures}>
                    {(each) => (
                      <p class="actions">
                        <span class="meaning">
                          {labelOf(each.figure)}
                          {each.estimate === undefined
                            ? ': nothing is given.'
                            : `: an estimate alone, ${numberOf(each.figure, each.estimate)}.`}
                        </span>
                        <Show when={isTaken(each)}>
                          <button
                            type="button"
                            aria-label={`Give ${props.name} ${numberOf(each.figure, each.says)}: ${labelOf(each.figure)}`}
                            onClick={(event) => take(each, event)}
                          >
                            Give {props.name} {numberOf(each.figure, each.says)}
                          </button>
                        </Show>
                      </p>
                    )}
                  </For>
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </>
  );
}
