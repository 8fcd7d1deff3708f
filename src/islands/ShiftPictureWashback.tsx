// The washback as it stands: its level, how warm it is, froth, switcher, coil and yeast. The table beside it says the same.
import { createMemo, Show } from 'solid-js';
import type { Rig } from '../core/shift/washback/rig.ts';
import type { WashbackState } from '../core/shift/washback/state.ts';

const VESSEL = 'M96 26 H264 L276 184 H84 Z';
const [RIM, FULL, FOOT] = [34, 76, 184]; // of the vessel, of the wort when all is in, and of the floor

export function ShiftPictureWashback(props: { readonly rig: Rig; readonly state: WashbackState }) {
  const level = () => FOOT - ((FOOT - FULL) * props.state.filled * props.state.kept) / props.rig.mass;
  const froth = () => (level() - RIM) * props.state.froth;
  /** How warm, 0–1, between 15 and 36 °C. */
  const warmth = () => Math.min(1, Math.max(0, (props.state.temperature - 15) / 21));
  const works = createMemo(() => props.state.froth > 0.12);
  return (
    <svg class="drawing shift-picture" viewBox="0 0 360 200" aria-hidden="true">
      <clipPath id="shift-washback">
        <path d={VESSEL} />
      </clipPath>
      <g clip-path="url(#shift-washback)">
        <rect class="liquid" x="80" y={level()} width="200" height={Math.max(0, FOOT - level())} />
        <rect class="hot" x="80" y={level()} width="200" height={Math.max(0, FOOT - level())} style={{ opacity: 0.75 * warmth() }} />
        <rect class="froth" x="80" y={level() - froth()} width="200" height={Math.max(0, froth())} />
        <Show when={works()}>
          <path class="run slow" d="M130 178 V120 M180 178 V110 M230 178 V120" />
        </Show>
        <Show when={props.rig.events.hasCoil}>
          <path class="coil" d="M104 120 h152 m-152 18 h152 m-152 18 h152" style={{ opacity: 0.25 + 0.075 * props.state.cooling }} />
        </Show>
      </g>
      <path class="wall" d={VESSEL} />
      <path class="wall" d="M96 26 H150 M210 26 H264" />
      <path class="wall" classList={{ into: props.state.isSwitching }} d="M180 8 V44 M140 44 H220" />
      <Show when={props.state.filled > 0 && props.state.filled < props.rig.mass}>
        <path class="run" d="M112 4 V60" />
      </Show>
      <path class="wall" classList={{ open: props.state.isFanOff }} d="M318 24 a14 14 0 1 0 0.1 0 M318 38 l9 -9 M318 38 l-9 9" />
      <text x="318" y="72" text-anchor="middle">{props.state.isFanOff ? 'fan off' : 'fan'}</text>
      <text x="40" y="110" text-anchor="middle">{props.rig.events.hasCoil ? `coil ${props.state.cooling}` : 'no coil'}</text>
      <text x="40" y="44" text-anchor="middle">{props.state.pitched < 0 ? 'no yeast' : 'yeast in'}</text>
    </svg>
  );
} // prettier-ignore
