// A short code of an answer, by which a link knows that it has moved.
import { format } from '../core/format.ts';
import type { NumberQuestion } from './question.ts';
import { CODES_COUNT } from './codes.ts';

const STEP = 10 ** (1 / CODES_COUNT); // from one code to the next: 0.056 %
const FIGURES = 4; // that a code tells

/** The code of an answer: its place within the power of ten that it lies in, in 4,096 equal steps. */
export const codeOfAnswer = (answer: number): number => {
  const place = Math.log10(Math.abs(answer));
  return Number.isFinite(place) ? Math.round((place - Math.floor(place)) * CODES_COUNT) % CODES_COUNT : 0;
};

/** The answer that a code stands for: of all that have it, the one nearest to today's. */
export function answerOfCode(code: number, today: number): number {
  const place = Math.log10(Math.abs(today));
  const near = Math.floor(place) + code / CODES_COUNT;
  return Math.sign(today) * 10 ** (near + Math.round(place - near));
}

/** The answer as it was, in print, when today's has left it by more than its tolerance; undefined when it has not. */
export function answerBefore(
  { answer, tolerance, of, digits }: NumberQuestion,
  code: number,
): string | undefined {
  const was = answerOfCode(code, answer);
  const coarse = (STEP - 1) / 2;
  if (!(Math.abs(was - answer) > tolerance + coarse * Math.abs(was))) return undefined;
  const before = Math.floor(Math.log10(Math.abs(was))) + 1;
  return format(Number(was.toPrecision(FIGURES)), of, Math.min(digits, Math.max(0, FIGURES - before)));
}
