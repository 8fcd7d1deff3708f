// Any calculator, drawn from its declaration.
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { AnyCalculator, Input } from '../calculators/define.ts';
import { format, rangeProblem, readQuantity } from '../core/format.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { sources } from '../core/sources.ts';
import { figureValue } from '../house/prose.ts';
import { changeFigure, useHouse } from '../house/store.ts';
import { Chart } from './Chart.tsx';
import { NumberField } from './NumberField.tsx';

type Numbers = Readonly<Record<string, number>>;
type Given = Parameters<AnyCalculator['compute']>[0];
type Result = Exclude<ReturnType<AnyCalculator['compute']>, Refusal>;

interface Answer {
  readonly given: Given;
  readonly result: Result;
  /** Why the numbers as they stand have no answer; the last good one is shown then. */
  readonly trouble?: string;
}

export function Calculator(props: { readonly of: AnyCalculator }) {
  const { house, line } = useHouse();
  const [own, setOwn] = createSignal<Numbers>({});
  const [wrong, setWrong] = createSignal<Readonly<Record<string, boolean>>>({});

  const valueOf = (name: string, input: Input): number => {
    if ('house' in input) return house()[input.house];
    return own()[name] ?? ('from' in input ? figureValue(line(), input.from) : input.value);
  };
  const given = createMemo(
    () =>
      Object.fromEntries(
        Object.entries(props.of.inputs).map(([name, input]) => [name, valueOf(name, input)]),
      ) as Given,
  );
  const troubleWith = (numbers: Given): string | undefined => props.of.refuse?.(numbers);

  const answer = createMemo<Answer>((last) => {
    const numbers = given();
    const trouble = troubleWith(numbers);
    if (trouble !== undefined) return { ...last, trouble };
    const result = props.of.compute(numbers);
    return isRefusal(result) ? { ...last, trouble: String(result.refused) } : { given: numbers, result };
  }, firstAnswer(props.of));

  /** Takes a text typed for one input; returns the sentence to show when it cannot be used. */
  const take = (name: string, input: Input, text: string): string | undefined => {
    const number = readQuantity(text, input.kind);
    if (number === undefined || number < input.range[0] || number > input.range[1]) {
      return rangeProblem(input.label, text, input.kind, input.range);
    }
    const trouble = troubleWith({ ...given(), [name]: number } as Given);
    if (trouble !== undefined) return trouble;
    if ('house' in input) return changeFigure(input.house, number);
    setOwn({ ...own(), [name]: number });
    return undefined;
  };
  const attempt = (name: string, input: Input) => (text: string) => {
    const problem = take(name, input, text);
    setWrong({ ...wrong(), [name]: problem !== undefined });
    return problem;
  };
  const isStale = () => answer().trouble !== undefined || Object.values(wrong()).includes(true);
  const followLine = (name: string, input: Input) =>
    'from' in input && name in own()
      ? () => setOwn(Object.fromEntries(Object.entries(own()).filter(([key]) => key !== name)))
      : undefined;

  return (
    <section class="calculator" aria-labelledby={`${props.of.id}-title`}>
      <h3 id={`${props.of.id}-title`}>{props.of.title}</h3>
      <p class="purpose">{props.of.purpose}</p>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <For each={Object.entries(props.of.inputs)}>
          {([name, input]) => (
            <NumberField
              id={`${props.of.id}-${name}`}
              label={input.label}
              kind={input.kind}
              range={input.range}
              step={input.step}
              value={valueOf(name, input)}
              attempt={attempt(name, input)}
              ofHouse={'house' in input}
              slider
              reset={followLine(name, input)}
            />
          )}
        </For>
      </form>
      <Show when={answer().trouble}>
        <p class="problem" role="alert">
          {answer().trouble}
        </p>
      </Show>
      <dl class="results" aria-live="polite" data-stale={isStale() ? '' : undefined}>
        <For each={Object.entries(props.of.outputs)}>
          {([name, output]) => (
            <div>
              <dt>{output.label}</dt>
              <dd class="number">{format(answer().result[name]!, output.kind, output.digits)}</dd>
            </div>
          )}
        </For>
      </dl>
      <Show when={props.of.chart}>{(chart) => <Chart of={chart()(answer().given, answer().result)} />}</Show>
      <details class="working">
        <summary>The working</summary>
        <ol>
          <For each={props.of.steps(answer().given, answer().result)}>{(step) => <li>{step}</li>}</For>
        </ol>
      </details>
      <p class="sources">
        {props.of.sources.length === 1 ? 'Source: ' : 'Sources: '}
        {props.of.sources.map((id) => sources[id].short).join('; ')}.
      </p>
    </section>
  );
}

/** An answer to start from, whatever the house says: that of the declaration's first example. */
function firstAnswer(of: AnyCalculator): Answer {
  const given = of.examples[0].given as Given;
  return { given, result: of.compute(given) as Result };
}
