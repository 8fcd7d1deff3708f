// The gauges of a shift, as a list that is read: what a stillman could see at the still. The strength is not among them: that is read.
import { Index } from 'solid-js';
import { formatNumber as n } from '../core/format.ts';
import type { Rig } from '../core/shift/rig.ts';
import type { ShiftState } from '../core/shift/state.ts';
import { flowOf, litresOver } from '../core/shift/step.ts';

export function ShiftGauges(props: { readonly rig: Rig; readonly state: ShiftState }) {
  const runs = () => props.state.flow > 0;
  const froth = () => {
    const { froth } = props.state;
    return froth === 0 ? 'none' : froth < 0.25 ? 'low' : froth < 0.5 ? 'a third up' : froth < 1 ? 'half up or more' : 'over the neck'; // prettier-ignore
  };
  const rows = (): readonly (readonly [string, string])[] => [
    ['Charge', `${n(props.state.temperature, 1)} °C`],
    ['Head', `${n(props.state.head, 0)} °C`],
    ['Pressure', `${n(props.state.pressure, 1)} kPa`],
    ['Sight glass', froth()],
    ['Flow', runs() ? `${n(flowOf(props.state), 0)} L/h` : 'none'],
    ['Safe', runs() ? `${n(props.state.safe, 0)} °C` : '–'],
    ['Come over', `${n(litresOver(props.state), 0)} L`],
    ['Water leaves', runs() ? `${n(props.state.leaves, 0)} °C` : '–'],
    ['Spout', props.state.spout === 'spirit' ? 'on spirit' : 'on feints'],
  ];
  return (
    <dl class="gauges" aria-label="At the still now">
      <Index each={rows()}>
        {(row) => (
          <div>
            <dt>{row()[0]}</dt>
            <dd>{row()[1]}</dd>
          </div>
        )}
      </Index>
    </dl>
  );
}
