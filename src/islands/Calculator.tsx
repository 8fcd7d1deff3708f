// Any calculator, drawn from its declaration.
import { createEffect, createMemo, createSignal, For, Index, onMount, Show } from 'solid-js';
import {
  isIdle,
  isNumber,
  isRows,
  mainInputs,
  moreInputs,
  startOfInput,
  startRows,
  type AnyCalculator,
  type AnyGiven,
  type AnyResult,
  type Input,
  type NumberInput,
} from '../calculators/define.ts';
import { propagate, type PlusMinus } from '../calculators/uncertainty.ts';
import { asShown } from '../core/format.ts';
import { keepTogether } from '../core/keep-together.ts';
import { isRefusal } from '../core/refusal.ts';
import { builtInHouse } from '../house/figures.ts';
import { useKnown } from '../browser/known-store.ts';
import { figureValue } from '../house/prose.ts';
import { changeFigure, putFigureBack as putBackToBuiltIn } from '../browser/change-figure.ts';
import { useUnits } from '../browser/units-store.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { useAnnouncement } from './announce.ts';
import { Chart } from './Chart.tsx';
import { HowSure } from './HowSure.tsx';
import { InputField } from './InputField.tsx';
import { Results, shownResult } from './Results.tsx';

type Value = AnyGiven[string];

interface Answer {
  readonly given: AnyGiven;
  readonly result: AnyResult;
  /** Why the numbers as they stand have no answer; the last good one is shown then. */
  readonly trouble?: string;
}

const ESTIMATE = 'An estimate: some of what it is reckoned from is not your house’s own yet, and is marked.';

/** An answer to start from, whatever the house says: that of the declaration's first example. */
function firstAnswer(of: AnyCalculator): Answer {
  const { given } = of.examples[0];
  const result = of.compute(given);
  if (isRefusal(result)) throw new Error(`${of.id} refuses its own example: ${result.refused}`);
  return { given, result };
}

export interface CalculatorProps {
  readonly of: AnyCalculator;
  /** True on the calculator’s own page, whose heading is its title. */
  readonly alone: boolean;
  /** Where its sums come from, as the page says it. */
  readonly sources: string;
}

export function Calculator(props: CalculatorProps) {
  let island: HTMLElement | undefined;
  const { house, opened, line } = useHouseWhenIdle(() => island);
  const unitOf = useUnits();
  const [own, setOwn] = createSignal<AnyGiven>({});
  const [wrong, setWrong] = createSignal<Readonly<Record<string, boolean>>>({});
  const [plusMinus, setPlusMinus] = createSignal<PlusMinus>({});

  const valueOf = (name: string, input: Input): Value => {
    if ('house' in input) return house()[input.house];
    if (own()[name] !== undefined) return own()[name]!;
    if (isRows(input)) return startRows(input, house(), builtInHouse);
    if (!isNumber(input)) return input.value;
    return 'from' in input
      ? asShown(figureValue(line(), input.from))
      : startOfInput(input, house(), builtInHouse)!;
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
  const isUnsure = () => Object.values(plusMinus()).some((value) => value > 0);
  const spread = createMemo(() =>
    isUnsure() ? propagate(props.of, answer().given, plusMinus()) : undefined,
  );
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
  // On its own page it can be sent on with its figures, and begins with those of its address.
  const [said, setSaid] = createSignal<string>();
  const [leftOut, setLeftOut] = createSignal<readonly string[]>([]);
  const isSentOn = () =>
    props.alone && Object.values(props.of.inputs).some((input) => !('house' in input) && !isRows(input));
  onMount(async () => {
    if (!isSentOn() || location.hash === '') return;
    const { readSumLink } = await import('../calculators/link.ts');
    const link = readSumLink(props.of, location.hash, given());
    if (!link) return;
    setOwn(link.own);
    setLeftOut(link.problems);
  });
  const copyLink = async () => {
    const [{ sumLink }, { copyAddress }] = await Promise.all([
      import('../calculators/link.ts'),
      import('./copy-address.ts'),
    ]);
    const { origin, pathname } = location;
    const address = origin + pathname + sumLink(props.of, given());
    setSaid(
      await copyAddress(
        address,
        'The link is copied. It carries the figures above; figures of the house stay the reader’s own.',
      ),
    );
  };
  const onState = (name: string) => (isWrong: boolean) => setWrong({ ...wrong(), [name]: isWrong });
  const takeSpread = (name: string, spread: number): undefined =>
    void setPlusMinus({ ...plusMinus(), [name]: spread });
  const isChanged = ([name, input]: Named) =>
    'house' in input ? house()[input.house] !== builtInHouse[input.house] : name in own();
  /** Puts a number back to where it stood: to the line, to the built-in house, or to its own beginning. */
  const putBack = (name: string, input: Input): (() => void) | undefined => {
    if (!isNumber(input) || !isChanged([name, input])) return undefined;
    if ('house' in input) return () => putBackToBuiltIn(input.house);
    return () => setOwn(Object.fromEntries(Object.entries(own()).filter(([key]) => key !== name)));
  };
  const { notKnown, doubtAt } = useKnown();
  /** True while a number that counts is not the reader’s own. */
  const isEstimate = () =>
    [...main(), ...more()].some(([name, input]) =>
      'house' in input
        ? isNumber(input) && notKnown(input.house) !== undefined
        : isNumber(input) && 'from' in input && !(name in own()) && doubtAt(input.from) !== undefined,
    );
  /** The verdict; over readings that nobody has taken it says so. */
  const remark = () => {
    const said = props.of.remark?.(answer().given, answer().result);
    const theirs = props.of.readings?.every((name) => !(name in own())) ?? false;
    return said !== undefined && theirs
      ? `The readings are the example’s until you type your own. ${said}`
      : said;
  };

  const outputs = Object.entries(props.of.outputs);
  useAnnouncement(
    props.of.id,
    () => [answer(), outputs.map(([, { kind }]) => unitOf(kind))],
    () =>
      answer().trouble ??
      `${props.of.title}: ${outputs.map(([name, output]) => `${output.label} ${shownResult(answer().result[name]!, output, unitOf(output.kind))}`).join('; ')}. ${remark() ?? ''}`,
    () => island,
  );

  /** The inputs that count as the choices stand. */
  const inUse = (inputs: readonly Named[]) => inputs.filter(([, input]) => !isIdle(input, given()));
  const [inSight, inFold] = [mainInputs(props.of), moreInputs(props.of)];
  const main = createMemo(() => inUse(inSight), [], { equals: sameNames });
  const more = createMemo(() => inUse(inFold), [], { equals: sameNames });
  const fields = (inputs: () => readonly Named[], slider: boolean) => (
    <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <For each={inputs()}>
        {([name, input]) => (
          <InputField
            id={`${props.of.id}-${name}`}
            of={input}
            value={valueOf(name, input)}
            among={given()}
            take={take(name, input)}
            onState={onState(name)}
            takeSpread={(spread) => takeSpread(name, spread)}
            reset={putBack(name, input)}
            slider={slider}
          />
        )}
      </For>
    </form>
  );
  const changed = () => more().filter(isChanged).length;
  let folded: HTMLDetailsElement | undefined;
  // What is wrong is never folded away.
  createEffect(() => {
    const isWrong = answer().trouble !== undefined || more().some(([name]) => wrong()[name]);
    if (isWrong && folded) folded.open = true;
  });

  return (
    <section ref={island} class="calculator" aria-labelledby={`${props.of.id}-title`}>
      <Show when={!props.alone}>
        <h3 id={`${props.of.id}-title`}>{props.of.title}</h3>
        <p class="purpose">{props.of.purpose}</p>
      </Show>
      <div class="given">
        {fields(main, true)}
        <Show when={more().length > 0}>
          <details class="more" ref={folded}>
            <summary>More figures{changed() > 0 && `: ${changed()} changed`}</summary>
            {fields(more, false)}
          </details>
        </Show>
        <HowSure
          id={props.of.id}
          inputs={[...main(), ...more()].filter(hasNumber)}
          plusMinus={plusMinus()}
          take={takeSpread}
          ofVapour={props.of.sources.includes('de-nevers')}
        />
      </div>
      <div class="found">
        <Results outputs={outputs} result={answer().result} spread={spread()} stale={isStale()} />
        <Show when={isEstimate()}>
          <p class="meaning">{ESTIMATE}</p>
        </Show>
        <Show when={answer().trouble}>
          <p class="problem">{answer().trouble}</p>
        </Show>
        <Show when={remark()}>{(said) => <p class="remark">{keepTogether(said())}</p>}</Show>
      </div>
      <Show when={chart()}>{(drawn) => <Chart of={drawn()} opened={opened()} />}</Show>
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
      <For each={leftOut()}>{(problem) => <p class="problem">Of the link, left out: {problem}</p>}</For>
      <Show when={isSentOn()}>
        <p class="actions screen-only">
          <button type="button" onClick={() => void copyLink()}>
            Copy a link with these figures
          </button>
        </p>
        <p role="status">{said()}</p>
      </Show>
      <p class="sources">
        {props.of.sources.length === 1 ? 'Source: ' : 'Sources: '}
        {props.sources}.
      </p>
    </section>
  );
}

type Named = readonly [string, Input];
const hasNumber = (named: Named): named is readonly [string, NumberInput] => isNumber(named[1]);
const sameNames = (one: readonly Named[], other: readonly Named[]) =>
  one.length === other.length && one.every(([name], i) => name === other[i]![0]);
