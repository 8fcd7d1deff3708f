// The gauges of a shift, as a list that is read: what one could see there. What has to be read or measured is not among them.
import { Index } from 'solid-js';

export function ShiftGauges(props: {
  readonly name: string;
  readonly rows: readonly (readonly [string, string])[];
}) {
  return (
    <dl class="gauges" aria-label={props.name}>
      <Index each={props.rows}>
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
