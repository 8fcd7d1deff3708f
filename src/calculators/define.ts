// What a calculator is: one declaration that its screen, its card and its tests all read.
import {
  choices,
  figureTable,
  type ChoiceName,
  type RangeEnds,
  type NumberName,
  type Stage,
} from '../core/figures/index.ts';
import { rangeProblem } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import type { House } from '../core/line/house.ts';
import type { Quantity } from '../core/quantity.ts';
import type { Refusal } from '../core/refusal.ts';
import type { SourceId } from '../core/sources.ts';

/** What a number may be: its kind, its label, its range, and the step of the arrow keys. */
export interface InputNumber {
  readonly kind: KindName;
  readonly label: string;
  readonly range: readonly [number, number];
  readonly step: number;
}
interface Used {
  /** Counts, and is shown, only while a choice is one of these. */
  readonly usedWhen?: { readonly choice: string; readonly is: readonly string[] };
}
/** A number of the calculator’s own: it has a value, or follows the line until changed here. */
type OwnNumber = InputNumber &
  Used &
  (
    | {
        readonly value: number;
        /** The value is for the built-in house; one of another size begins with its own share of it. */
        readonly sized?: Sized;
      }
    | { readonly from: string }
  );
/** A figure of the house: changing it changes the house. The table of figures says what it is; here stands only what differs. */
interface HouseNumber extends Used {
  readonly house: NumberName;
  readonly label?: string;
  /** Narrower limits, where the sum needs them. */
  readonly range?: RangeEnds;
  /** Begins where the house stands, but what is typed here stays here: a reading that changes no house. */
  readonly staysHere?: true;
}
/** A number the reader gives. */
export type NumberInput = OwnNumber | (InputNumber & Used & { readonly house: NumberName });

/** By which figure of the house a value grows, and with which power of it: two thirds for a surface. */
export interface Sized {
  readonly by: NumberName;
  readonly power?: number;
}

interface OwnChoice {
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly value: string;
}
/** A choice of the house; the table of figures has its wording. */
interface HouseChoice {
  readonly house: ChoiceName;
  readonly label?: string;
}
/** One of a few things, each with its wording. */
export type ChoiceInput = OwnChoice | (Omit<OwnChoice, 'value'> & { readonly house: ChoiceName });
/** A short table that the reader fills: readings, sieves, casks. Each row has a number in every column. */
export interface RowsInput {
  readonly label: string;
  readonly columns: Readonly<Record<string, InputNumber & { readonly sized?: Sized }>>;
  readonly value: readonly Readonly<Record<string, number>>[];
  /** Fewest and most rows. */
  readonly count: readonly [number, number];
}
export type Input = NumberInput | ChoiceInput | RowsInput;
/** Inputs as they are declared. */
export type Inputs = Readonly<Record<string, OwnNumber | HouseNumber | OwnChoice | HouseChoice | RowsInput>>;

export interface Output {
  readonly kind: KindName;
  readonly label: string;
  readonly digits?: number;
  /** Cut down to its digits and not rounded: rounding up would be to the dangerous side. */
  readonly down?: true;
  /** A figure of the house that this result is: a button puts it there, with the digits shown. */
  readonly keeps?: NumberName;
}
export type Outputs = Readonly<Record<string, Output>>;

type Row<C extends RowsInput['columns']> = { readonly [N in keyof C]: Quantity<C[N]['kind']> };
type Value<I> = I extends { readonly columns: infer C extends RowsInput['columns'] }
  ? readonly Row<C>[]
  : I extends { readonly house: infer H extends keyof House }
    ? House[H]
    : I extends { readonly options: infer O }
      ? keyof O
      : I extends { readonly kind: infer K extends KindName }
        ? Quantity<K>
        : never;
export type GivenInputs<I extends Inputs> = { readonly [N in keyof I]: Value<I[N]> };
export type CalculatorResults<O extends Outputs> = { readonly [N in keyof O]: Quantity<O[N]['kind']> };

/** A curve to draw, with the table that says the same: columns of numbers, the first along the foot, the second drawn. */
export interface Chart {
  readonly caption: string;
  readonly columns: readonly {
    readonly kind: KindName;
    readonly label: string;
    readonly values: readonly number[];
    /** Rows of the table that this column leaves empty at its head. */
    readonly empty?: number;
  }[];
  /** Points that the curve should meet: the reader's own readings, in the columns drawn. */
  readonly points?: readonly (readonly [number, number])[];
  /** One bar for each row, from nothing: what is counted off, as rounds and waters are, has nothing between. */
  readonly as?: 'bars';
  /** What the curve is held against, in the unit of the second column, each with what it means. */
  readonly limits?: readonly {
    readonly value: number;
    readonly label: string;
    /** How the limit is known, where it is not the reader's own. */
    readonly known?: string;
  }[];
  /** A column that is drawn too, below the curve and on an axis of its own. */
  readonly below?: number;
}

/** What an input takes as plain numbers and words. */
export type Plain<I> = I extends { readonly columns: object }
  ? readonly Readonly<Record<string, number>>[]
  : I extends { readonly house: infer C extends ChoiceName }
    ? House[C]
    : I extends { readonly options: infer O }
      ? keyof O
      : number;
/** A worked case from outside: what comes out for what goes in, and who says so. */
export interface Example<I extends Inputs, O extends Outputs> {
  readonly given: { readonly [N in keyof I]: Plain<I[N]> };
  readonly gives: { readonly [N in keyof O]?: number };
  /** Largest distance from each figure in `gives`, as a part of it. */
  readonly within: number;
  readonly source: SourceId;
  readonly note: string;
}

export interface Calculator<I extends Inputs, O extends Outputs> {
  readonly id: string;
  readonly stage: Stage;
  readonly title: string;
  /** One sentence: what question it answers. */
  readonly purpose: string;
  readonly sources: readonly SourceId[];
  /** Inputs that are readings: until one is the reader’s own, the verdict says that they are the example’s. */
  readonly readings?: readonly string[];
  /** Readings are judged together: those that do not go together stand as typed, and the sentence that says so beside them. */
  readonly together?: true;
  /** Cautions, by their id in content/cautions.yaml, where the sum touches danger. */
  readonly cautions?: readonly string[];
  readonly inputs: I;
  /** The three to five inputs that a reader changes, in their order; the rest is folded. Left out, all are shown. */
  readonly main?: readonly (keyof I & string)[];
  readonly outputs: O;
  /** One sentence on what these numbers together make impossible, or nothing. */
  readonly refuse?: (given: GivenInputs<I>) => string | undefined;
  readonly compute: (given: GivenInputs<I>) => CalculatorResults<O> | Refusal;
  /** The working, line by line: the rule, then the rule with these numbers. */
  readonly steps: (given: GivenInputs<I>, result: CalculatorResults<O>) => readonly string[];
  /** A sentence of judgement on the result, where one is called for: what to change, what it means. */
  readonly remark?: (given: GivenInputs<I>, result: CalculatorResults<O>) => string | undefined;
  readonly chart?: (given: GivenInputs<I>, result: CalculatorResults<O>) => Chart;
  readonly examples: readonly [Example<I, O>, ...Example<I, O>[]];
}

/** What goes into a calculator whose own names are forgotten. */
export type AnyGiven = Readonly<
  Record<string, number | string | readonly Readonly<Record<string, number>>[]>
>;
export type AnyResult = Readonly<Record<string, number>>;

/** A calculator whose own names of inputs and outputs are forgotten: what screens and tests work with. */
export interface AnyCalculator extends Omit<
  Calculator<Inputs, Outputs>,
  'inputs' | 'main' | 'refuse' | 'compute' | 'steps' | 'remark' | 'chart' | 'examples'
> {
  readonly inputs: Readonly<Record<string, Input>>;
  readonly main?: readonly string[];
  readonly refuse?: (given: AnyGiven) => string | undefined;
  readonly compute: (given: AnyGiven) => AnyResult | Refusal;
  readonly steps: (given: AnyGiven, result: AnyResult) => readonly string[];
  readonly remark?: (given: AnyGiven, result: AnyResult) => string | undefined;
  readonly chart?: (given: AnyGiven, result: AnyResult) => Chart;
  readonly examples: readonly [AnyExample, ...AnyExample[]];
}
export interface AnyExample extends Omit<Example<Inputs, Outputs>, 'given' | 'gives'> {
  readonly given: AnyGiven;
  readonly gives: AnyResult;
}

/** A declared calculator that still knows, for the compiler alone, the names of what goes in and comes out. */
export type Declared<I extends Inputs, O extends Outputs> = AnyCalculator & {
  readonly names?: (inputs: I, outputs: O) => readonly [I, O];
};

/** An input with all that the table of figures says of it. */
function whole(input: Inputs[string]): Input {
  if (!('house' in input)) return input;
  if (input.house in choices) {
    const { label, options } = choices[input.house as ChoiceName];
    return { label, options, ...(input as HouseChoice) };
  }
  const { kind, label, limits, step } = figureTable[input.house as NumberName];
  const { house, staysHere, ...own } = input as HouseNumber;
  const field = { kind, label, range: limits, step, ...own };
  return staysHere ? { ...field, from: `house.${house}` } : { ...field, house };
}

/** Declares a calculator; one that is half made does not compile. */
export function defineCalculator<const I extends Inputs, const O extends Outputs>(
  calculator: Calculator<I, O>,
): Declared<I, O> {
  const inputs = Object.fromEntries(
    Object.entries(calculator.inputs).map(([name, input]) => [name, whole(input)]),
  );
  const refuse = (given: GivenInputs<I>) => beyond(calculator.inputs, given) ?? calculator.refuse?.(given);
  return { ...calculator, inputs, refuse } as unknown as Declared<I, O>;
}

/** The sentence for a figure of the house that this sum does not reach; its limits are narrower than the figure’s. */
function beyond(inputs: Inputs, given: Readonly<Record<string, unknown>>): string | undefined {
  for (const [name, input] of Object.entries(inputs)) {
    if (!('house' in input && 'range' in input) || !input.range) continue;
    const { kind, label } = figureTable[input.house];
    const value = given[name] as number;
    if (!(value >= input.range[0] && value <= input.range[1]))
      return rangeProblem(input.label ?? label, value, kind, input.range);
  }
  return undefined;
}

/** Where a value of the calculator’s own begins in a house of this size: rounded to two figures, and in range. */
export function startOfInput(input: NumberInput, house: Sizes, builtIn: Sizes): number | undefined {
  return 'value' in input ? inSize(input.value, input, house, builtIn) : undefined;
}

/** Where a table begins in a house of this size. */
export function startRows({ value, columns }: RowsInput, house: Sizes, builtIn: Sizes): RowsInput['value'] {
  return value.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, each]) => [name, inSize(each, columns[name]!, house, builtIn)]),
    ),
  );
}

function inSize(
  value: number,
  { sized, range: [low, high] }: InputNumber & { readonly sized?: Sized },
  house: Sizes,
  builtIn: Sizes,
): number {
  const times = sized ? (house[sized.by] / builtIn[sized.by]) ** (sized.power ?? 1) : 1;
  return times === 1 ? value : Math.min(high, Math.max(low, Number((value * times).toPrecision(2))));
}
type Sizes = Readonly<Record<NumberName, number>>;

/** The inputs that are in sight at once, by name. */
export const mainInputs = ({ inputs, main = Object.keys(inputs) }: AnyCalculator) =>
  main.map((name) => [name, inputs[name]!] as const);
/** The inputs that are folded until asked for, by name. */
export const moreInputs = ({ inputs, main }: AnyCalculator) =>
  Object.entries(inputs).filter(([name]) => main && !main.includes(name));

/** True for a field that the choices leave without effect. */
export function isIdle(input: Input, given: AnyGiven): boolean {
  return (
    isNumber(input) &&
    input.usedWhen !== undefined &&
    !input.usedWhen.is.includes(String(given[input.usedWhen.choice]))
  );
}

export const isRows = (input: Input): input is RowsInput => 'columns' in input;
export const isChoice = (input: Input): input is ChoiceInput => 'options' in input;
export const isNumber = (input: Input): input is NumberInput => 'kind' in input;
