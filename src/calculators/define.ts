// What a calculator is: one declaration that its screen, its card and its tests all read.
import type { KindName } from '../core/kinds.ts';
import type { Quantity } from '../core/quantity.ts';
import type { Refusal } from '../core/refusal.ts';
import type { SourceId } from '../core/sources.ts';
import type { NumberName, Stage } from '../house/figures.ts';

interface Field {
  readonly kind: KindName;
  readonly label: string;
  readonly range: readonly [number, number];
  readonly step: number;
}
/** A number the reader gives: its own value, a figure of the house (changing it changes the house), or one that follows the line until changed here. */
export type Input = Field &
  ({ readonly value: number } | { readonly house: NumberName } | { readonly from: string });

export interface Output {
  readonly kind: KindName;
  readonly label: string;
  readonly digits?: number;
}

type Inputs = Readonly<Record<string, Input>>;
type Outputs = Readonly<Record<string, Output>>;
export type Values<F extends Readonly<Record<string, { readonly kind: KindName }>>> = {
  readonly [N in keyof F]: Quantity<F[N]['kind']>;
};

/** A curve to draw, with the table that says the same: columns of numbers, the first along the foot. */
export interface Chart {
  readonly caption: string;
  readonly columns: readonly {
    readonly kind: KindName;
    readonly label: string;
    readonly values: readonly number[];
  }[];
}

/** A worked case from outside: what comes out for what goes in, and who says so. */
export interface Example<I extends Inputs, O extends Outputs> {
  readonly given: { readonly [N in keyof I]: number };
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
  readonly inputs: I;
  readonly outputs: O;
  /** One sentence on what these numbers together make impossible, or nothing. */
  readonly refuse?: (given: Values<I>) => string | undefined;
  readonly compute: (given: Values<I>) => Values<O> | Refusal;
  /** The working, line by line: the rule, then the rule with these numbers. */
  readonly steps: (given: Values<I>, result: Values<O>) => readonly string[];
  readonly chart?: (given: Values<I>, result: Values<O>) => Chart;
  readonly examples: readonly [Example<I, O>, ...Example<I, O>[]];
}

/** A calculator whose own names of inputs and outputs are forgotten: what screens and tests work with. */
export type AnyCalculator = Calculator<Readonly<Record<string, Input>>, Readonly<Record<string, Output>>>;

/** Declares a calculator; one that is half made does not compile. */
export function defineCalculator<const I extends Inputs, const O extends Outputs>(
  calculator: Calculator<I, O>,
): AnyCalculator {
  return calculator as unknown as AnyCalculator;
}
