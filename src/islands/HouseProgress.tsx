// How far the reader has come with the figures of their house, in a sentence.
import { Show } from 'solid-js';
import type { FigureId } from '../core/figures/index.ts';
import type { FigureStanding } from '../core/figures/standing.ts';
import { builtInName } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { figuresThatCount } from '../house/parts/known.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';

/** “You have given 12 of 43 figures; the other 31 are Harrowmere’s.” */
export function progressInWords(
  figures: readonly FigureId[],
  standing: (id: FigureId) => FigureStanding,
  name: string,
  isGuests = false,
): string {
  const all = figures.length;
  const own = figures.filter((id) => standing(id) !== 'unknown').length;
  if (own === all) return `All ${all} figures are ${name}’s own.`;
  const given = isGuests ? `${own} of ${all} figures are given` : `You have given ${own} of ${all} figures`;
  return `${given}; the other ${all - own} are ${builtInName}’s.`;
}

/** `nameAt` is where the house is named, on another page; on this one its field stands right before, and a link that goes once there is a name would take the focus with it. */
export default function HouseProgress(props: { readonly nameAt?: string }) {
  const { house, name, visiting } = useHouse();
  const { standing, isBuiltIn } = useKnown();
  const says = () => progressInWords(figuresThatCount(house()), standing, name(), visiting());
  useAnnouncement('house-progress', says, says);
  return (
    <p class="progress">
      {says()}{' '}
      <Show when={isBuiltIn()}>
        Give your house its{' '}
        <Show when={props.nameAt} fallback="name">
          {(at) => <a href={at()}>name</a>}
        </Show>
        , and the book marks what is still {builtInName}’s.
      </Show>
    </p>
  );
}
