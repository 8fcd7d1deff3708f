// The letters of what is chosen or put in order, and the answer as a key prints it.
import { format } from '../core/format.ts';
import { roughly } from './bounds.ts';
import { isNumberQuestion, isOrderQuestion, type Question } from './question.ts';

const LETTERS = 'ABCDEFGHIJ';
export const letterOfPlace = (place: number): string => LETTERS[place]!;

/** The places that the letters of a text stand for; −1 for a letter beyond the last. */
export const placesIn = (text: string): readonly number[] =>
  [...text.toUpperCase().replace(/[^A-Z]/g, '')].map((each) => LETTERS.indexOf(each));

/** A difference of temperatures as a mash man says it: the kelvin of a text stands for a degree Celsius. */
export const withDegrees = (text: string): string => text.replace(/\u00a0K$/, '\u00a0°C');

/** The right answer as printed in a key. */
export function answerInKey(question: Question): string {
  if (isNumberQuestion(question)) {
    if (question.form !== 'estimate')
      return withDegrees(format(question.answer, question.of, question.digits));
    const { answer, digits } = roughly(question);
    return `about ${format(answer, question.of, digits)}`;
  }
  return isOrderQuestion(question)
    ? question.answer.map(letterOfPlace).join(' ')
    : letterOfPlace(question.answer);
}
