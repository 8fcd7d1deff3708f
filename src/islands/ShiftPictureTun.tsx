// The mash tun as it stands: how full, how hot, how the bed pulls, and where its run-off goes. The table beside it says the same.
import { Show } from 'solid-js';
import type { Rig } from '../core/shift/tun/rig.ts';
import type { TunState } from '../core/shift/tun/state.ts';
import { drainable } from '../core/shift/tun/step.ts';

const [RIM, FOOT] = [28, 120]; // of the tun, and its plates
const SPOUTS = { back: 'M196 146 H330 V14 H250', washback: 'M196 146 H236 V184', weak: 'M196 146 H306 V184' };

export function ShiftPictureTun(props: { readonly rig: Rig; readonly state: TunState }) {
  const isIn = () => props.state.waters > 0;
  /** The bed stands lower the more it has pulled together. */
  const bed = () => FOOT - (isIn() ? 44 - 14 * props.state.tight : 0);
  const level = () => Math.max(RIM, bed() - (44 * drainable(props.rig, props.state)) / props.rig.waters[0]);
  const heat = () => Math.min(1, Math.max(0, (props.state.temperature - 20) / 60));
  return (
    <svg class="drawing shift-picture" viewBox="0 0 360 200" aria-hidden="true">
      <rect class="liquid" x="71" y={level()} width="178" height={Math.max(0, FOOT - level())} />
      <rect class="hot" x="71" y={level()} width="178" height={Math.max(0, FOOT - level())} style={{ opacity: 0.7 * heat() }} />
      <rect class="froth" x="71" y={bed()} width="178" height={FOOT - bed()} />
      <path class="wall" d="M70 20 V132 H250 V20" />
      <path class="wall" stroke-dasharray="5 4" d={`M70 ${FOOT} H250`} />
      <path class="wall" d="M160 4 V108 M96 108 H224 M112 108 v-14 M144 108 v-14 M176 108 v-14 M208 108 v-14" />
      <Show when={props.state.comes > 0}>
        <path class="run" d="M90 2 V60" />
      </Show>
      <path class="wall" d={`M196 132 V146`} />
      <path class="coil" d={SPOUTS[props.state.runsTo]} />
      <Show when={props.state.flow > 0}>
        <path class="run" classList={{ slow: props.state.flow < 0.6 * props.rig.usual }} d={SPOUTS[props.state.runsTo]} />
      </Show>
      <path class="wall" classList={{ into: props.state.runsTo === 'washback' }} d="M206 178 V196 H266 V178" />
      <path class="wall" classList={{ into: props.state.runsTo === 'weak' }} d="M276 178 V196 H336 V178" />
      <text x="236" y="194" text-anchor="middle">wort</text>
      <text x="306" y="194" text-anchor="middle">weak</text>
      <text x="34" y="90" text-anchor="middle">{props.state.isSet ? 'bed set' : 'bed'}</text>
      <text x="132" y="162" text-anchor="middle">run-off {props.state.valve}</text>
    </svg>
  );
} // prettier-ignore
