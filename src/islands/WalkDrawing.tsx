// A small engraving of what stands in a room, for its card on the screen: the vessel of its first stage.
import { Show } from 'solid-js';
import type { Stage } from '../house/figures.ts';
import { cask } from './portrait-shapes/cask.ts';
import {
  ENGRAVING_WIDTH,
  engravings,
  ENGRAVING_HEIGHT,
  type Engraving,
} from './portrait-shapes/engravings.ts';

type Drawing = Pick<Engraving, 'beside' | 'body' | 'lines' | 'hatch'>;

/** What is drawn of each stage, and by how much it is enlarged. */
const drawn: Readonly<Record<Stage, Drawing>> = {
  malting: engravings.sacks,
  milling: engravings.mill,
  mashing: engravings['mash-tun'],
  fermenting: engravings.washback,
  distilling: engravings['spirit-still'],
  maturing: cask,
};
const CASK = 62; // units of the radius of a cask lying end on, in the middle of the square

export function WalkDrawing(props: { readonly stages: readonly Stage[] }) {
  const stage = () => props.stages[0];
  return (
    <Show when={stage()}>
      {(of) => (
        <svg
          class="walk-drawing"
          aria-hidden="true"
          viewBox={`0 0 ${ENGRAVING_WIDTH} ${ENGRAVING_HEIGHT}`}
          fill="none"
          stroke="currentColor"
          stroke-linecap="round"
          stroke-linejoin="round"
        >
          <g
            transform={
              of() === 'maturing'
                ? `translate(${ENGRAVING_WIDTH / 2} ${ENGRAVING_HEIGHT - CASK - 4}) scale(${CASK})`
                : undefined
            }
            stroke-width={of() === 'maturing' ? 2.5 / CASK : 2.5}
          >
            <path d={drawn[of()].beside ?? ''} />
            <path d={drawn[of()].body} />
            <path d={drawn[of()].lines} />
            <path d={drawn[of()].hatch} stroke-width={of() === 'maturing' ? 1 / CASK : 1} />
          </g>
        </svg>
      )}
    </Show>
  );
}
