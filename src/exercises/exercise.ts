// A kind of question drawn from a calculator's own declaration: its inputs, its sum, its steps.
import {
  isChoice,
  isIdle,
  isRows,
  type AnyGiven,
  type AnyResult,
  type Chart,
  type Declared,
  type GivenInputs,
  type Input,
  type Inputs,
  type Outputs,
  type Plain,
  type CalculatorResults,
} from '../calculators/define.ts';
import { format } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import type { House } from '../core/line/house.ts';
import { isRefusal } from '../core/refusal.ts';
import { builtInHouse } from '../house/figures.ts';
import { figureValue } from '../house/prose.ts';
import { ABOUT_HOUSE_SINCE, aboutHouse } from './about-house.ts';
import type { Chance } from './seeded-random.ts';
import type { Family } from './families.ts';
import type { Quotes } from './quotes.ts';
import { asGeneratorDraws, withoutRounding } from './renewed.ts';
import { lineIfAny } from '../house/line-of.ts';
import {
  toleranceOf,
  wholeNumberOf,
  type NumberQuestion,
  type QuestionKind,
  type WholeRounding,
} from './question.ts';
import type { Level, Topic } from './topics.ts';

/** Each input as a prompt says it: number and unit, or the choice in words. */
export type ShownInputs<I extends Inputs> = { readonly [N in keyof I]: string };

/** The results of the sum, with what the prompt quotes as printed. */
export type ToldResults<O extends Outputs, Q extends string> = CalculatorResults<O> & {
  readonly [N in Q]: number;
};

export interface SlipOf<I extends Inputs, O extends Outputs, Q extends string = never> {
  readonly family: Family;
  /** The number that the mistake leads to, in the unit of what is asked. */
  readonly gives: (given: GivenInputs<I>, result: ToldResults<O, Q>) => number;
  /** What probably happened, in one sentence. */
  readonly say: string;
}

export interface Exercise<I extends Inputs, O extends Outputs, Q extends string = never> {
  /** Its own id, when a calculator has several; the calculator's otherwise. */
  readonly id?: string;
  readonly title?: string;
  readonly topic?: Topic;
  readonly form?: NumberQuestion['form'];
  readonly level: Level;
  /** Which result is asked for. */
  readonly ask: keyof O & string;
  /** Clean values to draw from; an input that is not here is the house's, or stands as declared. */
  readonly vary: { readonly [N in keyof I]?: readonly Plain<I[N]>[] };
  /** Decimals asked for; those of the result otherwise. */
  readonly to?: number;
  /** Part of the answer by which another may differ and be right: 0.01, and for an estimate 0.3, if not said. */
  readonly within?: number;
  /** Which way the answer is rounded, where it is a number of whole things. */
  readonly whole?: WholeRounding;
  /** Figures that the prompt quotes and the sum computes, each with its decimals: a sheet's link carries them. */
  readonly quotes?: {
    readonly [N in Q]: readonly [
      digits: number,
      of: (given: GivenInputs<I>, result: CalculatorResults<O>) => number,
    ];
  };
  /** Results that follow from the figures quoted, the one asked for among them: a sum on paper has no others. */
  readonly redo?: (given: GivenInputs<I>, result: ToldResults<O, Q>) => { readonly [N in keyof O]?: number };
  /** The question, worded as on the job. Every number that the sum needs stands in it, or in the curve. */
  readonly prompt: (show: ShownInputs<I>, given: GivenInputs<I>, result: ToldResults<O, Q>) => string;
  readonly slips: readonly SlipOf<I, O, Q>[];
  /** Whether numbers drawn together can stand together; others are drawn where they cannot. */
  readonly fits?: (given: GivenInputs<I>, result: ToldResults<O, Q>) => boolean;
  /** The last value of the curve's first column, where the calculator's own goes further than anyone would. */
  readonly curveTo?: (given: GivenInputs<I>, result: ToldResults<O, Q>) => number;
  /** What older generators go on drawing by. */
  readonly before?: Partial<Pick<Exercise<I, O, Q>, 'vary' | 'prompt'>>;
  /** The generator that first draws by the rest, if it is not `RENEWED_SINCE`; older ones draw without `fits`. */
  readonly renewed?: number;
  /** The working, where the calculator's own steps say too much or too little. */
  readonly working?: (given: GivenInputs<I>, result: ToldResults<O, Q>) => readonly string[];
}

/** Decimals that a number needs, up to six. */
export function decimalsOfStep(value: number): number {
  for (let digits = 0; digits < 6; digits++)
    if (Math.abs(value * 10 ** digits - Math.round(value * 10 ** digits)) < 1e-6) return digits;
  return 6;
}

/** Figures that calculators came to follow when links had been given: where the choices leave one without effect, no link carries it. */
const CAME_LATER: readonly string[] = ['round.runs'];
const isCarried = (input: Input, given: AnyGiven) =>
  !('from' in input && CAME_LATER.includes(input.from) && isIdle(input, given));
const UNQUOTED: Pick<Quotes, 'quote'> = { quote: (value, digits) => Number(value.toFixed(digits)) };

/** The figure of the house or line that an input follows, rounded as it will be printed. */
function ofHouse(input: Input, house: House, { quote }: Pick<Quotes, 'quote'>): AnyGiven[string] {
  if (isRows(input)) return input.value;
  if (isChoice(input)) return 'house' in input ? house[input.house] : input.value;
  if ('value' in input) return input.value;
  if ('house' in input) return Number(house[input.house].toFixed(6));
  const now = lineIfAny(house);
  if (!now) return NaN;
  const [low, high] = input.range;
  const digits = decimalsOfStep(input.step);
  return Math.min(high, Math.max(low, quote(figureValue(now, input.from), digits)));
}

/** The values to draw from, about the figure of the reader's house that the input follows. */
function listFor(
  input: Input,
  values: readonly AnyGiven[string][],
  house: House,
  generator: number,
): readonly AnyGiven[string][] {
  if (generator < ABOUT_HOUSE_SINCE || house === builtInHouse || isRows(input) || isChoice(input))
    return values;
  const list = values as readonly number[];
  if (!('value' in input)) {
    const [built, own] = [builtInHouse, house].map((of) => Number(ofHouse(input, of, UNQUOTED)));
    return aboutHouse(list, input.kind, [built!, own!], input.range);
  }
  if (!input.sized) return values;
  const { by, power = 1 } = input.sized;
  return aboutHouse(list, input.kind, [1, (house[by] / builtInHouse[by]) ** power], input.range, true);
}

function shown(input: Input, value: AnyGiven[string]): string {
  if (isRows(input)) return '';
  if (isChoice(input)) return input.options[value as string]!;
  const number = value as number;
  const least = input.kind === 'gravity' ? 3 : 0;
  return format(number, input.kind, Math.max(least, decimalsOfStep(number)));
}

/** The curve alone, as far as wanted: a calculator’s points may mark the answer. */
function curveOf({ caption, columns }: Chart, last = Infinity): Chart {
  const rows = columns[0]!.values.filter((value) => value <= last).length;
  return { caption, columns: columns.map((column) => ({ ...column, values: column.values.slice(0, rows) })) };
}

const asIs = <T>(value: unknown) => value as T;

/** Declares a kind of question on a calculator. Names that the calculator does not have do not compile. */
export function exercise<I extends Inputs, O extends Outputs, Q extends string = never>(
  calculator: Declared<I, O>,
  of: Exercise<I, O, Q>,
): QuestionKind {
  const inputs = Object.entries(calculator.inputs);
  const output = calculator.outputs[of.ask]!;
  const about = {
    title: of.title ?? calculator.title,
    topic: of.topic ?? calculator.stage,
    form: of.form ?? ('calculation' as const),
    level: of.level,
  };
  const id = of.id ?? calculator.id;
  const digits = of.to ?? output.digits ?? kinds[output.kind].digits;
  const within = of.within ?? (about.form === 'estimate' ? 0.3 : 0.01);

  function told(given: GivenInputs<I>, answered: AnyResult, { quote }: Quotes): ToldResults<O, Q> {
    const quotes: Readonly<
      Record<string, readonly [number, (given: GivenInputs<I>, result: CalculatorResults<O>) => number]>
    > = of.quotes ?? {};
    const printed = Object.entries(quotes).map(([name, [digits, figure]]) => [
      name,
      quote(figure(given, asIs(answered)), digits),
    ]);
    const result = { ...answered, ...Object.fromEntries(printed) };
    return asIs({ ...result, ...of.redo?.(given, asIs(result)) });
  }
  function draw(chance: Chance, house: House): NumberQuestion | undefined {
    const now = asGeneratorDraws(of, chance.generator);
    const vary: Readonly<Record<string, readonly AnyGiven[string][] | undefined>> = asIs(now.vary);
    const plain: Record<string, AnyGiven[string]> = {};
    for (const [name, input] of inputs)
      plain[name] = vary[name]
        ? chance.pick(listFor(input, vary[name], house, chance.generator))
        : ofHouse(input, house, isCarried(input, plain) ? chance.quotes : UNQUOTED);
    if (Object.values(plain).some((value) => Number.isNaN(value)) || calculator.refuse?.(plain))
      return undefined;
    const answered = calculator.compute(plain);
    if (isRefusal(answered)) return undefined;
    const given = asIs<GivenInputs<I>>(plain);
    const result = told(given, answered, chance.quotes);
    if (now.fits && !now.fits(given, result)) return undefined;
    const show: ShownInputs<I> = asIs(
      Object.fromEntries(inputs.map(([name, input]) => [name, shown(input, plain[name]!)])),
    );
    const exact = asIs<AnyResult>(result)[of.ask]!;
    const answer = wholeNumberOf(exact, of.whole);
    return {
      ...about,
      kind: id,
      prompt: withoutRounding(now.prompt(show, given, result), chance.generator),
      answer,
      of: output.kind,
      digits,
      tolerance: toleranceOf(exact, within, output.kind, digits),
      ...(of.whole ? { whole: of.whole } : {}),
      slips: of.slips.map(({ family, gives, say }) => ({ family, value: gives(given, result), say })),
      working: of.working?.(given, result) ?? calculator.steps(plain, asIs<AnyResult>(result)),
      sources: calculator.sources,
      ...(about.form === 'curve'
        ? { curve: curveOf(calculator.chart!(plain, answered), of.curveTo?.(given, result)) }
        : {}),
    };
  }
  return { id, ...about, since: 1, calculator: calculator.id, draw };
}
