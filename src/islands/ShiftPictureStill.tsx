// The still as it stands: its level, how hot it is, froth, what runs, and where the spout points. The table beside it says the same.
import { createMemo, Show } from 'solid-js';
import type { Rig } from '../core/shift/still/rig.ts';
import type { ShiftState } from '../core/shift/still/state.ts';
import { boilingVigour, boilingPointInPot, potFraction } from '../core/shift/still/step.ts';

const POT =
  'M40 176 H148 Q166 132 122 110 Q108 102 106 64 L214 44 V30 L104 46 Q84 24 82 64 Q80 102 66 110 Q22 132 40 176 Z';
const [TOP, FOOT] = [116, 176]; // of the charge when the still is full, and of the still

export function ShiftPictureStill(props: { readonly rig: Rig; readonly state: ShiftState }) {
  const filled = () => {
    const { pot } = props.state;
    const { charge } = props.rig;
    return (pot.ethanol + pot.water) / (charge.ethanol + charge.water);
  };
  const level = () => FOOT - (FOOT - TOP) * filled();
  const frothed = () => level() - (level() - 56) * props.state.froth;
  /** How hot, 0–1, between the room and the boil. */
  const heat = (temperature: number) => {
    const boils = boilingPointInPot(props.rig, potFraction(props.state));
    return Math.min(1, Math.max(0, (temperature - 15) / (boils - 15)));
  };
  const flow = createMemo(() => boilingVigour(props.rig, props.state));
  const isSpirit = () => props.state.spout === 'spirit';
  return (
    <svg class="drawing shift-picture" viewBox="0 0 360 200" aria-hidden="true">
      <clipPath id="shift-pot">
        <path d={POT} />
      </clipPath>
      <g clip-path="url(#shift-pot)">
        <rect class="head" x="60" y="20" width="160" height="90" style={{ opacity: heat(props.state.head) }} />
        <rect class="liquid" x="20" y={level()} width="150" height={Math.max(0, FOOT - level())} />
        <rect class="hot" x="20" y={level()} width="150" height={Math.max(0, FOOT - level())} style={{ opacity: 0.65 * heat(props.state.temperature) }} />
        <rect class="froth" x="20" y={frothed()} width="180" height={Math.max(0, level() - frothed())} />
      </g>
      <path class="wall" d={POT} />
      <Show when={props.state.isManholeOpen}>
        <path class="wall open" d="M50 124 l-16 -14" />
      </Show>
      <Show when={props.state.isAirOpen}>
        <path class="wall open" d="M92 36 V16 m-5 6 l5 -6 5 6" />
      </Show>
      <Show when={props.state.isChargingOpen}>
        <path class="wall open" d="M142 122 l18 -12" />
      </Show>
      <path class="wall" d="M214 30 H246 V104 H214 Z M230 104 V120" />
      <path class="coil" d="M220 44 h20 m-20 14 h20 m-20 14 h20 m-20 14 h20" style={{ opacity: 0.25 + 0.075 * props.state.water }} />
      <path class="wall" d="M206 120 H300 V148 H206 Z" />
      <path class="spout" d={isSpirit() ? 'M230 124 L280 142' : 'M230 124 L222 142'} />
      <Show when={flow() > 0}>
        <path class="run" classList={{ slow: flow() < 0.4 }} d={isSpirit() ? 'M280 142 V172' : 'M222 142 V172'} />
      </Show>
      <path class="wall" classList={{ into: !isSpirit() }} d="M202 168 V194 H250 V168" />
      <path class="wall" classList={{ into: isSpirit() }} d="M258 168 V194 H352 V168" />
      <text x="226" y="189" text-anchor="middle">feints</text>
      <text x="305" y="189" text-anchor="middle">spirit</text>
      <text x="318" y="138" text-anchor="middle">safe</text>
      <text x="254" y="70">water {props.state.water}</text>
      <text x="94" y="195" text-anchor="middle">steam {props.state.steam}</text>
      <path class="thread" d={`M46 181 H${46 + 9.6 * props.state.steam}`} />
    </svg>
  );
} // prettier-ignore
