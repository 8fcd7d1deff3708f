// A worked example that fades: the whole working, then without its last step, then only the question.
import { answerInKey } from './letters.ts';
import type { Question } from './question.ts';

export const fadings = ['whole', 'last step missing', 'question alone'] as const;
export type Fading = (typeof fadings)[number];

/** The steps of a working that may be shown before the answer: all before the first that tells it, and never all of them. */
export function stepsBefore(question: Question): readonly string[] {
  const key = answerInKey(question);
  const number = /[\d,.]+/.exec(key)?.[0] ?? key;
  const tells = question.working.findIndex((line) => line.includes(`= ${number}`) || line.includes(key));
  const end = tells < 0 ? question.working.length - 1 : tells;
  return question.working.slice(0, Math.max(0, end));
}
