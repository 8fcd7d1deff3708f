// A short table for the reader to fill: readings, sieves, casks.
import { createSignal, For, Index, Show } from 'solid-js';
import type { RowsInput } from '../calculators/define.ts';
import { focusAfter } from './focus-after.ts';
import { NumberField } from './NumberField.tsx';
import { useWayBack } from './use-way-back.tsx';

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
  const [problem, setProblem] = createSignal<string>();
  const { say, Said, saying } = useWayBack(true);
  const columns = () => Object.entries(props.of.columns);
  const withCell = (row: number, name: string, value: number) =>
    props.rows.map((old, i) => (i === row ? { ...old, [name]: value } : old));
  const more = () => props.rows.length < props.of.count[1];
  /** The first field of a row, or of the last there is: where the focus goes when rows come and go. */
  const firstField = (row: number) => () =>
    document.getElementById(`${props.id}-${Math.min(row, props.rows.length - 1)}-${columns()[0]![0]}`);
  const fewer = () => props.rows.length > props.of.count[0];

  /** Takes the first of some tables that can be used, or says why the last cannot. */
  const change = (...tables: readonly (readonly Row[])[]) => {
    for (const rows of tables) {
      setProblem(props.take(rows));
      if (problem() === undefined) return;
    }
  };
  /** A row to begin with: the last again; or, where the same twice cannot be, going on in its first column as the last two do. */
  const nextRows = (): readonly Row[] => {
    const [last, before] = [props.rows.at(-1)!, props.rows.at(-2)];
    const [name, { range, step }] = columns()[0]!;
    const by = before ? last[name]! - before[name]! : step;
    const on = Math.min(range[1], Math.max(range[0], Number((last[name]! + by).toFixed(6))));
    return [last, { ...last, [name]: on }];
  };

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
                <button
                  type="button"
                  aria-label={`Remove row ${i + 1}`}
                  title={`Remove row ${i + 1}`}
                  onClick={(event) => {
                    const [before, gone] = [props.rows.length, row()];
                    change(props.rows.filter((_, at) => at !== i));
                    if (props.rows.length === before) return;
                    say(`Row ${i + 1} is removed.`, () => {
                      const { length } = props.rows;
                      if (more()) change(props.rows.toSpliced(i, 0, gone));
                      return props.rows.length > length
                        ? `Row ${i + 1} is back.`
                        : 'It cannot be put back now.';
                    });
                    focusAfter(event, saying);
                  }}
                >
                  ×
                </button>
              </Show>
            </li>
          )}
        </Index>
      </ol>
      <Said />
      <Show when={more()}>
        <button
          type="button"
          onClick={(event) => {
            const before = props.rows.length;
            change(...nextRows().map((row) => [...props.rows, row]));
            if (props.rows.length > before) focusAfter(event, firstField(before));
          }}
        >
          Add a row
        </button>
      </Show>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
    </fieldset>
  );
}
