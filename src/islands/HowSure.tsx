// How sure each figure of a calculator is: a ± for each number, folded until somebody asks.
import { createSignal, For, Show } from 'solid-js';
import type { NumberInput } from '../calculators/define.ts';
import type { PlusMinus } from '../calculators/uncertainty.ts';
import { NumberField } from './NumberField.tsx';

export interface HowSureProps {
  readonly id: string;
  readonly inputs: readonly (readonly [string, NumberInput])[];
  readonly plusMinus: PlusMinus;
  readonly take: (name: string, spread: number) => undefined;
  /** Whether the sum leans on the formula for vapour, whose own error the ± leaves out. */
  readonly ofVapour: boolean;
}

export function HowSure(props: HowSureProps) {
  const [open, setOpen] = createSignal(false);
  const given = () => props.inputs.filter(([name]) => (props.plusMinus[name] ?? 0) > 0).length;
  return (
    <details class="how-sure" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>How sure{given() > 0 && `: ${given()} with ±`}</summary>
      <Show when={open()}>
        <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <For each={props.inputs}>
            {([name, { label, kind, range, step }]) => (
              <NumberField
                id={`${props.id}-${name}-plus-minus`}
                label={`${label}, ±`}
                kind={kind}
                range={[0, range[1] - range[0]]}
                step={step}
                value={props.plusMinus[name] ?? 0}
                plain
                take={(value) => props.take(name, value)}
              />
            )}
          </For>
        </form>
        <p class="note">
          The ± of a result comes from these alone. How far the sum itself may be off
          {props.ofVapour
            ? ', here above all the formula for vapour, is not in it: “How sure the round is” shows how much that can be.'
            : ' is not in it.'}
        </p>
      </Show>
    </details>
  );
}
