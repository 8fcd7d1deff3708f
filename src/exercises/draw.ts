// A question from its kind, a seed and a house: the same three give the same question everywhere.
import type { House } from '../core/line/house.ts';
import { chanceOf } from './chance.ts';
import type { Question, QuestionKind } from './question.ts';
import { isSound } from './sound.ts';

/** Raised when a sheet's link would draw other questions than before; part of every link. */
export const GENERATOR = 1;

const ATTEMPTS = 80; // draws before a house is found unfit for a kind

/** Draws a question; numbers that will not do are drawn again. Undefined when the house allows none. */
export function drawQuestion(kind: QuestionKind, seed: string, house: House): Question | undefined {
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const question = kind.draw(chanceOf(`${kind.id}/${seed}/${attempt}`), house);
    if (question && isSound(question)) return question;
  }
  return undefined;
}
