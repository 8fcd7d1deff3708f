// What a question is: what is asked, what answers it, which mistakes are known, and the working.
import type { Chart } from '../calculators/define.ts';
import type { KindName } from '../core/kinds.ts';
import type { House } from '../core/line/house.ts';
import type { SourceId } from '../core/sources.ts';
import type { Chance } from './seeded-random.ts';
import type { Family } from './families.ts';
import type { Form, Level, Topic } from './topics.ts';

/** A common mistake: the number that it leads to, and what probably happened. */
export interface Slip {
  readonly family: Family;
  readonly value: number;
  /** One sentence, said to whoever made it. */
  readonly say: string;
}

interface Asked {
  readonly kind: string;
  readonly title: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly prompt: string;
  /** The full working, with the question's own numbers; or the reasons. */
  readonly working: readonly string[];
  readonly sources: readonly SourceId[];
}

/** Which way whole things are rounded: down what can be had or stated, up what is needed. */
export type WholeRounding = 'down' | 'up';

/** A whole number of things from a sum. */
export const wholeNumberOf = (value: number, whole: WholeRounding | undefined): number => {
  if (whole === undefined) return value;
  return whole === 'up' ? Math.ceil(value - 1e-9) : Math.floor(value + 1e-9); // but for what binary numbers leave over
};

/** A question answered by a number. */
export interface NumberQuestion extends Asked {
  readonly form: 'calculation' | 'estimate' | 'curve';
  readonly answer: number;
  readonly of: KindName;
  /** Decimals asked for. */
  readonly digits: number;
  /** Largest distance from the answer that still counts as right, in the kind's own unit; `bounds.ts` makes of it the ends that are printed and kept to. */
  readonly tolerance: number;
  /** A number of whole things, rounded up or down to it: no other is right. */
  readonly whole?: WholeRounding;
  readonly slips: readonly Slip[];
  /** The curve to read. */
  readonly curve?: Chart;
}

/** The tolerance of an answer: a part of it, and room for rounding to the decimals asked for; whole things must be told from one more. */
export function toleranceOf(answer: number, within: number, of: KindName, digits: number): number {
  const rounding = (of === 'count' && digits === 0 ? 0.4 : 0.6) * 10 ** -digits;
  return Math.max(within * Math.abs(answer), rounding);
}

/** A question answered by one of a few options. */
export interface ChoiceQuestion extends Asked {
  readonly form: 'impossible' | 'judgement';
  readonly options: readonly { readonly text: string; readonly why: string }[];
  /** Place of the right option, from 0. */
  readonly answer: number;
}

/** A question answered by putting steps in order. */
export interface OrderQuestion extends Asked {
  readonly form: 'order';
  /** The steps as shown. */
  readonly items: readonly string[];
  /** Places in `items`, from 0, in the right order. */
  readonly answer: readonly number[];
}

export type Question = NumberQuestion | ChoiceQuestion | OrderQuestion;
export const isNumberQuestion = (question: Question): question is NumberQuestion => 'tolerance' in question;
export const isOrderQuestion = (question: Question): question is OrderQuestion => question.form === 'order';
export const isChoiceQuestion = (question: Question): question is ChoiceQuestion => 'options' in question;

/** A kind of question, which draws as many as there are seeds. Its id never changes its meaning: links depend on it. */
export interface QuestionKind {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly form: Form;
  readonly level: Level;
  /** The generator's version from which it is drawn. */
  readonly since: number;
  /** The last that draws it, where a better one has taken its place. */
  readonly until?: number;
  /** The calculator whose declaration it reads, if it does. */
  readonly calculator?: string;
  /** A question with numbers by chance, and those of the house where it speaks of the house; undefined when these numbers will not do. */
  readonly draw: (chance: Chance, house: House) => Question | undefined;
}
