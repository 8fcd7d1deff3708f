// Any calculator, drawn from its declaration.
import { createMemo, createSignal, For, Index, Match, Show, Switch } from 'solid-js';
import {
  isChoice,
  isNumber,
  isIdle,
  isRows,
  startOf,
  startRows,
  type AnyCalculator,
  type AnyGiven,
  type AnyResult,
  type ChoiceInput,
  type Input,
  type NumberInput,
  type Output,
} from '../calculators/define.ts';
import { propagate, type PlusMinus } from '../calculators/uncertainty.ts';
import { asShown, formatIn, formatNumber } from '../core/format.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import { isRefusal } from '../core/refusal.ts';
import { sources } from '../core/sources.ts';
import type { Unit } from '../core/units.ts';
import { builtInHouse, type NumberName } from '../house/figures.ts';
import { figureValue } from '../house/prose.ts';
import { changeFigure, useHouse } from '../house/store.ts';
import { useUnits } from '../house/units-store.ts';
import { useHouseAtHand } from './at-hand.ts';
import { useAnnouncement } from './announce.ts';
import { Chart } from './Chart.tsx';
import { ChoiceField } from './ChoiceField.tsx';
import { NumberField } from './NumberField.tsx';
import { RowsField } from './RowsField.tsx';
import { WhatMoved } from './WhatMoved.tsx';

type Value = AnyGiven[string];

interface Answer {
  readonly given: AnyGiven;
  readonly result: AnyResult;
  /** Why the numbers as they stand have no answer; the last good one is shown then. */
  readonly trouble?: string;
}

/** An answer to start from, whatever the house says: that of the declaration's first example. */
function firstAnswer(of: AnyCalculator): Answer {
  const { given } = of.examples[0];
  const result = of.compute(given);
  if (isRefusal(result)) throw new Error(`${of.id} refuses its own example: ${result.refused}`);
  return { given, result };
}

export function Calculator(props: { readonly of: AnyCalculator }) {
  let island: HTMLElement | undefined;
  const { house, line } = useHouseAtHand(() => island);
  const unitOf = useUnits();
  const [own, setOwn] = createSignal<AnyGiven>({});
  const [wrong, setWrong] = createSignal<Readonly<Record<string, boolean>>>({});
  const [plusMinus, setPlusMinus] = createSignal<PlusMinus>({});
  const [unsure, setUnsure] = createSignal(false);

  const valueOf = (name: string, input: Input): Value => {
    if ('house' in input) return house()[input.house];
    if (own()[name] !== undefined) return own()[name]!;
    if (isRows(input)) return startRows(input, house(), builtInHouse);
    if (!isNumber(input)) return input.value;
    return 'from' in input
      ? asShown(figureValue(line(), input.from))
      : startOf(input, house(), builtInHouse)!;
  };
  const given = createMemo<AnyGiven>(() =>
    Object.fromEntries(Object.entries(props.of.inputs).map(([name, input]) => [name, valueOf(name, input)])),
  );
  const answer = createMemo<Answer>((last) => {
    const now = given();
    const trouble = props.of.refuse?.(now);
    if (trouble !== undefined) return { ...last, trouble };
    const result = props.of.compute(now);
    return isRefusal(result) ? { ...last, trouble: result.refused } : { given: now, result };
  }, firstAnswer(props.of));
  const spread = createMemo(() => (unsure() ? propagate(props.of, answer().given, plusMinus()) : {}));
  const chart = createMemo(() => props.of.chart?.(answer().given, answer().result));
  const isStale = () => answer().trouble !== undefined || Object.values(wrong()).includes(true);

  const take =
    (name: string, input: Input) =>
    (value: Value): string | undefined => {
      const next = { ...given(), [name]: value };
      const trouble = props.of.refuse?.(next);
      if (trouble !== undefined) return trouble;
      if ('house' in input) return changeFigure(input.house, value);
      const result = props.of.compute(next);
      const stands = props.of.together && props.of.readings?.includes(name);
      if (isRefusal(result) && !stands) return result.refused;
      setOwn({ ...own(), [name]: value });
      return undefined;
    };
  const onState = (name: string) => (isWrong: boolean) => setWrong({ ...wrong(), [name]: isWrong });
  /** Puts a number back to where it stood: to the line, to the built-in house, or to its own beginning. */
  const putBack = (name: string, input: NumberInput): (() => void) | undefined => {
    if ('house' in input) {
      const before = builtInHouse[input.house];
      return house()[input.house] === before ? undefined : () => changeFigure(input.house, before);
    }
    return name in own()
      ? () => setOwn(Object.fromEntries(Object.entries(own()).filter(([key]) => key !== name)))
      : undefined;
  };
  /** Why a field counts for nothing now, when a choice beside it says otherwise. */
  const notUsed = (input: NumberInput): string | undefined => {
    if (input.usedWhen === undefined || !isIdle(input, given())) return undefined;
    const { choice } = input.usedWhen;
    const beside = props.of.inputs[choice] as ChoiceInput;
    return `Not used while “${beside.label}” is “${beside.options[String(given()[choice])]}”.`;
  };
  /** The verdict; over readings that nobody has taken it says so. */
  const remark = () => {
    const said = props.of.remark?.(answer().given, answer().result);
    const theirs = props.of.readings?.every((name) => !(name in own())) ?? false;
    return said !== undefined && theirs
      ? `The readings are the example’s until you type your own. ${said}`
      : said;
  };

  const shown = (name: string, output: Output) =>
    formatIn(
      output.down ? cutDown(answer().result[name]!, output) : answer().result[name]!,
      output.kind,
      unitOf(output.kind),
      output.digits,
    );
  const outputs = Object.entries(props.of.outputs);
  useAnnouncement(
    props.of.id,
    () => [answer(), outputs.map(([, { kind }]) => unitOf(kind))],
    () =>
      answer().trouble ??
      `${props.of.title}: ${outputs.map(([name, output]) => `${output.label} ${shown(name, output)}`).join('; ')}. ${remark() ?? ''}`,
    () => island,
  );

  return (
    <section ref={island} class="calculator" aria-labelledby={`${props.of.id}-title`}>
      <h3 id={`${props.of.id}-title`}>{props.of.title}</h3>
      <p class="purpose">{props.of.purpose}</p>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={Object.entries(props.of.inputs)}>
          {([name, input]) => (
            <Switch>
              <Match when={isRows(input) && input}>
                {(rows) => (
                  <RowsField
                    id={`${props.of.id}-${name}`}
                    of={rows()}
                    rows={valueOf(name, input) as readonly Readonly<Record<string, number>>[]}
                    take={take(name, input)}
                    onState={onState(name)}
                  />
                )}
              </Match>
              <Match when={isChoice(input) && input}>
                {(choice) => (
                  <ChoiceField
                    id={`${props.of.id}-${name}`}
                    label={choice().label}
                    options={choice().options}
                    value={valueOf(name, input) as string}
                    take={take(name, input)}
                  />
                )}
              </Match>
              <Match when={isNumber(input) && input}>
                {(number) => (
                  <>
                    <NumberField
                      id={`${props.of.id}-${name}`}
                      label={number().label}
                      kind={number().kind}
                      range={number().range}
                      step={number().step}
                      value={valueOf(name, input) as number}
                      among={given()}
                      take={take(name, input)}
                      onState={onState(name)}
                      ofHouse={'house' in input}
                      slider
                      reset={putBack(name, number())}
                      takeSpread={
                        unsure() ? (spread) => setPlusMinus({ ...plusMinus(), [name]: spread }) : undefined
                      }
                      meaning={notUsed(number())}
                    />
                    <Show when={'house' in input && input.house}>
                      {(figure) => <WhatMoved of={figure()} />}
                    </Show>
                    <Show when={unsure()}>
                      <NumberField
                        id={`${props.of.id}-${name}-plus-minus`}
                        label={`${number().label}, ±`}
                        kind={number().kind}
                        range={[0, number().range[1] - number().range[0]]}
                        step={number().step}
                        value={plusMinus()[name] ?? 0}
                        plain
                        take={(value) => void setPlusMinus({ ...plusMinus(), [name]: value })}
                      />
                    </Show>
                  </>
                )}
              </Match>
            </Switch>
          )}
        </For>
      </form>
      <p class="actions">
        <label class="tick">
          <input
            type="checkbox"
            autocomplete="off"
            checked={unsure()}
            onChange={(event) => setUnsure(event.currentTarget.checked)}
          />
          <span>Say how sure each figure is</span>
        </label>
      </p>
      <Show when={answer().trouble}>
        <p class="problem">{answer().trouble}</p>
      </Show>
      <dl class="results" data-stale={isStale() ? '' : undefined}>
        <For each={outputs}>
          {([name, output]) => (
            <div>
              <dt>{output.label}</dt>
              <dd class="number">
                {shown(name, output)}
                <Show when={unsure()}>
                  <span class="spread">
                    {Object.values(plusMinus()).some((value) => value > 0) &&
                      shownSpread(answer().result[name]!, spread()[name], output.kind, unitOf(output.kind))}
                  </span>
                </Show>
                <Show when={output.keeps}>
                  {(figure) => (
                    <Keep
                      figure={figure()}
                      value={asKept(answer().result[name]!, output)}
                      stale={isStale()}
                    />
                  )}
                </Show>
              </dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={unsure()}>
        <p class="note">
          ± is from the inputs’ own ± alone. How far the sum itself may be off
          {props.of.sources.includes('de-nevers')
            ? ', here above all the formula for vapour, is not in it: “How sure the round is” shows how much that can be.'
            : ' is not in it.'}
        </p>
      </Show>
      <Show when={remark()}>{(said) => <p class="remark">{said()}</p>}</Show>
      <Show when={chart()}>{(drawn) => <Chart of={drawn()} />}</Show>
      <details class="working">
        <summary>The working</summary>
        <ol>
          <Index each={props.of.steps(answer().given, answer().result)}>{(step) => <li>{step()}</li>}</Index>
        </ol>
      </details>
      <Show when={props.of.cautions}>
        {(cautions) => (
          <p class="cautions">
            Take care:{' '}
            <For each={cautions()}>
              {(caution, i) => (
                <>
                  {i() > 0 && ', '}
                  <a href={`../../safety/#caution-${caution}`}>{caution.replaceAll('-', ' ')}</a>
                </>
              )}
            </For>
            . The site’s own procedures and local codes come first.
          </p>
        )}
      </Show>
      <p class="sources">
        {props.of.sources.length === 1 ? 'Source: ' : 'Sources: '}
        {props.of.sources.map((id) => sources[id].short).join('; ')}.
      </p>
    </section>
  );
}

/** A result as the house would keep it: with the digits shown. */
const asKept = (value: number, { kind, digits = kinds[kind].digits }: Output) =>
  Number(value.toFixed(digits));

/** The button that makes a result a figure of the house. */
function Keep(props: { readonly figure: NumberName; readonly value: number; readonly stale: boolean }) {
  const { house } = useHouse();
  const [problem, setProblem] = createSignal<string>();
  const isKept = () => house()[props.figure] === props.value;
  const text = () => String(props.value);
  return (
    <>
      <button
        type="button"
        class="keep"
        aria-disabled={isKept() || props.stale}
        onClick={() => !isKept() && !props.stale && setProblem(changeFigure(props.figure, props.value))}
      >
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
