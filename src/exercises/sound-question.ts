// Whether a question is fit to be asked: finite, no known mistake too near the answer, the answer not given away.
import { parseNumber } from '../core/reading/plain.ts';
import { isNumberQuestion, type NumberQuestion, type Question } from './question.ts';

const APART = 2; // a known mistake lies at least so many tolerances from the answer
const LARGEST = 1e12; // beyond any house

/** Every number that a text shows. */
export function numbersShown(text: string): number[] {
  return [...text.matchAll(/[−-]?\d[\d,\u202f\u00a0]*(?:\.\d+)?/g)].flatMap(
    ([found]) => parseNumber(found.replace(/[,\u202f\u00a0]+$/, '')) ?? [],
  );
}

function isNumberSound({ answer, tolerance, slips, digits, prompt, curve }: NumberQuestion): boolean {
  if (!(Math.abs(answer) < LARGEST && answer !== 0 && tolerance > 0)) return false;
  const told = [answer, ...slips.map(({ value }) => value)];
  if (!told.every((value) => Math.abs(value) < LARGEST * 1e6)) return false;
  for (let i = 1; i < told.length; i++) {
    if (Math.abs(told[i]! - answer) <= APART * tolerance) return false;
    // Two mistakes that lead to one number cannot be told apart.
    for (let j = 1; j < i; j++) if (Math.abs(told[i]! - told[j]!) <= 1e-4 * Math.abs(told[i]!)) return false;
  }
  const near = Math.max(0.5 * 10 ** -digits, 1e-9 * Math.abs(answer));
  const shown = [...numbersShown(prompt), ...(curve?.columns.flatMap(({ values }) => values) ?? [])];
  const printed = answer.toFixed(digits);
  return !shown.some((value) => Math.abs(value - answer) <= near || value.toFixed(digits) === printed);
}

const FEWEST = 2; // figures that an answer has when it is rounded as asked, but for things counted

/** Whether an answer rounded as it is asked for still says how large it is; from generator 3 on no other is drawn. */
export const tellsSize = (question: Question): boolean =>
  !isNumberQuestion(question) ||
  question.whole !== undefined ||
  question.of === 'count' ||
  Math.round(Math.abs(question.answer) * 10 ** question.digits) >= 10 ** (FEWEST - 1);

/** True for a question that may be asked. */
export function isSoundQuestion(question: Question): boolean {
  if (isNumberQuestion(question)) return isNumberSound(question);
  if (question.form !== 'order') {
    const { options, answer } = question;
    return (
      answer >= 0 &&
      answer < options.length &&
      new Set(options.map(({ text }) => text)).size === options.length
    );
  }
  const { items, answer } = question;
  const inPlace = answer.every((place, i) => place === i);
  return !inPlace && new Set(items).size === items.length && new Set(answer).size === items.length;
}
