// What a calculator found: its first results in a strip that stays in sight of the field in use, then the others.
import { createSignal, For, Show } from 'solid-js';
import type { AnyResult, Output } from '../calculators/define.ts';
import { formatIn, formatNumber } from '../core/format.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import type { Unit } from '../core/units.ts';
import type { NumberName } from '../house/figures.ts';
import { changeFigure } from '../browser/change-figure.ts';
import { useHouse } from '../browser/house-store.ts';
import { useUnits } from '../browser/units-store.ts';

const HEADLINES = 2; // results in the strip: more would hide the field they belong to

export interface ResultsProps {
  readonly outputs: readonly (readonly [string, Output])[];
  readonly result: AnyResult;
  /** The ± of each result; a result without one is too close to a limit. Left out while no input has a ±. */
  readonly spread: Readonly<Record<string, number | undefined>> | undefined;
  /** True while the figures as they stand have no answer. */
  readonly stale: boolean;
}

/** A result in words, in the unit that the reader likes. */
export const shownResult = (value: number, output: Output, unit: Unit): string =>
  formatIn(output.down ? cutDown(value, output) : value, output.kind, unit, output.digits);

export function Results(props: ResultsProps) {
  const unitOf = useUnits();
  const list = (outputs: ResultsProps['outputs'], name: string) => (
    <dl class={name}>
      <For each={outputs}>
        {([name, output]) => (
          <div>
            <dt>{output.label}</dt>
            <dd class="number">
              {shownResult(props.result[name]!, output, unitOf(output.kind))}
              <Show when={props.spread}>
                {(spread) => (
                  <span class="spread">
                    {shownSpread(props.result[name]!, spread()[name], output.kind, unitOf(output.kind))}
                  </span>
                )}
              </Show>
            </dd>
          </div>
        )}
      </For>
    </dl>
  );
  const kept = () => props.outputs.filter(([, { keeps }]) => keeps !== undefined);
  return (
    <div class="results" data-stale={props.stale ? '' : undefined}>
      {list(props.outputs.slice(0, HEADLINES), 'headline')}
      <Show when={props.outputs.length > HEADLINES}>{list(props.outputs.slice(HEADLINES), 'others')}</Show>
      <Show when={kept().length > 0}>
        <p class="actions">
          <For each={kept()}>
            {([name, output]) => (
              <Keep
                figure={output.keeps!}
                label={kept().length > 1 ? `${output.label}: ` : ''}
                value={asKept(props.result[name]!, output)}
                stale={props.stale}
              />
            )}
          </For>
        </p>
      </Show>
    </div>
  );
}

/** A result as the house would keep it: with the digits shown. */
const asKept = (value: number, { kind, digits = kinds[kind].digits }: Output) =>
  Number(value.toFixed(digits));

interface KeepProps {
  readonly figure: NumberName;
  readonly label: string;
  readonly value: number;
  readonly stale: boolean;
}
/** The button that makes a result a figure of the house. */
function Keep(props: KeepProps) {
  const { house } = useHouse();
  const [problem, setProblem] = createSignal<string>();
  const isKept = () => house()[props.figure] === props.value;
  const text = () => String(props.value);
  return (
    <>
      <button
        type="button"
        aria-disabled={isKept() || props.stale}
        onClick={() => !isKept() && !props.stale && setProblem(changeFigure(props.figure, props.value))}
      >
        {props.label}
        {isKept() ? `${text()} is in my house` : `Use ${text()} in my house`}
      </button>
      <Show when={problem()}>
        <span class="problem" role="alert">
          {problem()}
        </span>
      </Show>
    </>
  );
}

/** A result cut down to the digits it is shown with. */
function cutDown(value: number, { kind, digits = kinds[kind].digits }: Output): number {
  return Math.floor(value * 10 ** digits + 1e-9) / 10 ** digits;
}

/** "± 3.2" in the unit of the result, to two figures; or that it cannot be told. */
function shownSpread(value: number, spread: number | undefined, kind: KindName, unit: Unit): string {
  if (spread === undefined) return ' ± not known: a limit is too close';
  const shown = Math.abs(unit.fromCore(value + spread) - unit.fromCore(value));
  const digits = shown > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(shown)))) : kinds[kind].digits;
  return ` ± ${formatNumber(shown, digits)}`;
}
