// A short table for the reader to fill: readings, sieves, casks.
import { For, Index, Show } from 'solid-js';
import type { RowsInput } from '../calculators/define.ts';
import { NumberField } from './NumberField.tsx';

type Row = Readonly<Record<string, number>>;

export interface RowsFieldProps {
  readonly id: string;
  readonly of: RowsInput;
  readonly rows: readonly Row[];
  /** Takes the whole table; returns the sentence to show when it cannot be used. */
  readonly take: (rows: readonly Row[]) => string | undefined;
  readonly onState: (wrong: boolean) => void;
}

export function RowsField(props: RowsFieldProps) {
  const columns = () => Object.entries(props.of.columns);
  const withCell = (row: number, name: string, value: number) =>
    props.rows.map((old, i) => (i === row ? { ...old, [name]: value } : old));
  const more = () => props.rows.length < props.of.count[1];
  const fewer = () => props.rows.length > props.of.count[0];

  return (
    <fieldset class="rows">
      <legend>{props.of.label}</legend>
      <ol>
        <Index each={props.rows}>
          {(row, i) => (
            <li>
              <For each={columns()}>
                {([name, column]) => (
                  <NumberField
                    id={`${props.id}-${i}-${name}`}
                    label={`${column.label} ${i + 1}`}
                    kind={column.kind}
                    range={column.range}
                    step={column.step}
                    value={row()[name]!}
                    take={(value) => props.take(withCell(i, name, value))}
                    onState={props.onState}
                  />
                )}
              </For>
              <Show when={fewer()}>
                <button type="button" onClick={() => props.take(props.rows.filter((_, at) => at !== i))}>
                  Take row {i + 1} out
                </button>
              </Show>
            </li>
          )}
        </Index>
      </ol>
      <Show when={more()}>
        <button type="button" onClick={() => props.take([...props.rows, props.rows.at(-1)!])}>
          One row more
        </button>
      </Show>
    </fieldset>
  );
}
