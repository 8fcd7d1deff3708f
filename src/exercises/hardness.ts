// How hard a question is, by what can be counted in it: a measure of our own for holding versions of one sheet against each other.
import { measures } from '../core/measures.ts';
import { isNumberQuestion, isOrderQuestion, type Question } from './question.ts';
import { numbersShown } from './sound-question.ts';
import { unitAsked } from './wording.ts';

export interface Hardness {
  /** Operations of the sum as its working prints it; for options or steps to order, how many must be told apart. */
  readonly steps: number;
  /** Known mistakes that lead to within a quarter of the answer: its size does not give them away. */
  readonly near: number;
  /** Figures beyond the first of each number in the prompt: 4,000 has none, 4,550 has two. */
  readonly digits: number;
  /** Units beyond the first of each thing that is measured, the answer's among them: tonnes beside kilograms are one; and each percentage. */
  readonly units: number;
  readonly points: number;
}

// Weights of the points, set by hand; common-practice. They order draws of one kind; between kinds they are a rough guide only.
const STEP = 2;
const NEAR = 1;
const DIGIT = 0.5;
const UNIT = 1;
const CLOSE = 0.25; // part of the answer

/** Figures that a number has, without noughts before or behind: 0.0450 has two, 1,200 two. */
export const significantFigures = (value: number): number =>
  String(Math.abs(value)).replace(/e.*$/, '').replace('.', '').replace(/^0+|0+$/g, '').length || 1; // prettier-ignore

const dimensionIn = new Map(measures.map(({ unit, dimension }) => [unit, dimension]));
const escaped = (text: string) => text.replace(/[$()*+.?[\]^{|}\\]/g, '\\$&');
const UNITS = new RegExp(
  `\\d[\\s\\u00a0\\u202f]?(${[...dimensionIn.keys()]
    .sort((a, b) => b.length - a.length)
    .map((unit) => escaped(unit).replaceAll(' ', '[\\s\\u00a0]'))
    .join('|')})(?![\\p{L}\\d/])`,
  'gu',
);

function unitsToConvert(prompt: string, asked: string): number {
  const found = [...prompt.matchAll(UNITS)].map(([, unit]) => unit!.replace(/\s/g, ' '));
  const percentages = found.filter((unit) => unit === '%').length;
  const seen = new Set([...found, asked].filter((unit) => dimensionIn.has(unit) && unit !== '%'));
  const things = new Set([...seen].map((unit) => dimensionIn.get(unit)));
  return percentages + seen.size - things.size;
}

/** The operations of the sums in a working: of a line with = those before its last. */
const operationsIn = (working: readonly string[]) =>
  working.reduce((all, line) => {
    const sum = line.includes('=') ? line.slice(0, line.lastIndexOf('=')) : line;
    return all + (sum.match(/(?<=[\s\u00a0])[+−×÷/·](?=[\s\u00a0])|[√^]/g)?.length ?? 0);
  }, 0);

/** How hard a question is, in points with no unit; from 0 up. */
export function hardnessOf(question: Question): Hardness {
  const digits = numbersShown(question.prompt).reduce((all, value) => all + significantFigures(value) - 1, 0);
  const others = isNumberQuestion(question)
    ? {
        steps: operationsIn(question.working),
        near: question.slips.filter(({ value }) => Math.abs(value - question.answer) <= CLOSE * Math.abs(question.answer)).length,
        units: unitsToConvert(question.prompt, unitAsked(question.of)),
      }
    : { steps: (isOrderQuestion(question) ? question.items : question.options).length - 1, near: 0, units: 0 }; // prettier-ignore
  const { steps, near, units } = others;
  return { ...others, digits, points: STEP * steps + NEAR * near + DIGIT * digits + UNIT * units };
}

/** How the points are made up, in a sentence. */
export const HARDNESS_IN_WORDS = `Points of a question: ${STEP} for each operation of its sum, or each option or step after the first; ${NEAR} for each known mistake within a quarter of the answer; ${DIGIT} for each figure beyond the first of a number; ${UNIT} for each percentage and each further unit of the same thing. The weights are ours, set by hand: they hold versions of one sheet against each other, and are no measure of people.`;
