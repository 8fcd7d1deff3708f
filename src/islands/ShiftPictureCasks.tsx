// Two casks in their stores: how full each was when it was last regauged, and whether it still lies. The table beside it says the same.
import { Index } from 'solid-js';
import type { CasksState } from '../core/shift/casks/course.ts';
import type { Rig } from '../core/shift/casks/rig.ts';

const CASK = 'M-56 0 C-56 -62 56 -62 56 0 C56 62 -56 62 -56 0 Z';
const [TOP, FOOT] = [-46, 46];

export function ShiftPictureCasks(props: { readonly rig: Rig; readonly state: CasksState }) {
  const casks = () =>
    props.state.casks.map(({ regauged, bottledAt }, i) => ({
      name: props.rig.setup.stores[i]!.name,
      isEmpty: bottledAt >= 0,
      part: bottledAt >= 0 ? 0 : regauged.month < 0 ? 1 : regauged.volume / props.rig.setup.filling.volume,
    }));
  return (
    <svg class="drawing shift-picture" viewBox="0 0 360 150" aria-hidden="true">
      <clipPath id="shift-cask">
        <path d={CASK} />
      </clipPath>
      <Index each={casks()}>
        {(cask, i) => (
          <g transform={`translate(${92 + 176 * i} 66)`}>
            <g clip-path="url(#shift-cask)">
              <rect class="liquid" x="-60" y={FOOT - (FOOT - TOP) * cask().part} width="120" height={(FOOT - TOP) * cask().part} />
            </g>
            <path class="wall" d={CASK} />
            <path class="wall" d="M-24 -45 C-32 -20 -32 20 -24 45 M24 -45 C32 -20 32 20 24 45" />
            <text x="0" y="70" text-anchor="middle">{cask().name}</text>
            <text x="0" y="5" text-anchor="middle">{cask().isEmpty ? 'bottled' : ''}</text>
          </g>
        )}
      </Index>
    </svg>
  );
} // prettier-ignore
