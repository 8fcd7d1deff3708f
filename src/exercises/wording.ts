// How a question asks for its answer, and how a key gives it.
import { format, formatNumber } from '../core/format.ts';
import { kinds, type KindName } from '../core/kinds.ts';
import { boundsOf } from './bounds.ts';
import { withDegrees, answerInKey } from './letters.ts';
import { isNumberQuestion, isOrderQuestion, type Question } from './question.ts';

const decimals = (digits: number) =>
  digits === 0
    ? 'to the whole number'
    : digits === 1
      ? 'to one decimal'
      : digits === 2
        ? 'to two decimals'
        : `to ${digits} decimals`;

/** The unit in which an answer is asked for. */
export const unitAsked = (of: KindName): string =>
  of === 'temperatureDifference' ? 'degrees Celsius' : kinds[of].unit;

/** "Answer in L, to one decimal." */
export function askFor(question: Question): string {
  if (isNumberQuestion(question)) {
    const unit = unitAsked(question.of);
    const where = unit === '' ? '' : ` in ${unit}`;
    if (question.form === 'curve')
      return `As near as the curve can be read${where === '' ? '' : `,${where}`}.`;
    return question.form === 'estimate'
      ? `About how much? Answer${where}.`
      : `Answer${where}, ${decimals(question.digits)}.`;
  }
  return isOrderQuestion(question) ? 'Answer with the letters in order.' : 'Answer with one letter.';
}

/** The answers that count as right, for a key: "from 1,230 to 1,240 L". */
export function allowedBy(question: Question): string {
  if (!isNumberQuestion(question)) return '';
  const { low, high, digits } = boundsOf(question);
  const last = withDegrees(format(high, question.of, digits));
  return low === high ? `${last} alone` : `from ${formatNumber(low, digits)} to ${last}`;
}

/** The working beside an answer that was given in words: the option that is right is not said again. */
export function workingBeside(question: Question): readonly string[] {
  if (!('options' in question)) return question.working;
  const right = question.options[question.answer]!.text.replace(/\.?$/, '.');
  return question.working.map((line) => (line.startsWith(`${right} `) ? line.slice(right.length + 1) : line));
}

/** The answer in a key; behind a letter, what it stands for. */
export function answerInWords(question: Question): string {
  const key = answerInKey(question);
  return 'options' in question ? `${key}: ${question.options[question.answer]!.text}` : key;
}
