// A question from its kind, a seed and a house; and the same once more, from a note of how it was drawn.
import type { House } from '../core/line/house.ts';
import { codeOfAnswer } from './answer-code.ts';
import { seededChance } from './seeded-random.ts';
import { isNumberQuestion, type Question, type QuestionKind } from './question.ts';
import { RENEWED_SINCE } from './renewed.ts';
import { isSoundQuestion, tellsSize } from './sound-question.ts';

/**
 * Raised when a sheet's link would draw other questions than before; part of every link. The links of generator 1 carry a seed
 * alone, so what they draw depends on what today's sums let pass; those of generator 2 carry what was drawn. Generator 3 draws
 * options of which none gives itself away; generator 4 has five kinds more, generator 5 six. From generator 7 on what would not do
 * sounds like what would, and numbers lie about the reader's own house.
 */
export const GENERATOR = 7;

/** Draws before a house is found unfit for a kind. */
export const ATTEMPTS = 80;

/** How a question was drawn: at which attempt, and the codes of what it quotes and of its answer. */
export interface DrawNote {
  readonly attempt: number;
  readonly codes: readonly number[];
}
export interface DrawnQuestion {
  readonly question: Question;
  readonly note: DrawNote;
}

function attemptAt(
  kind: QuestionKind,
  seed: string,
  house: House,
  attempt: number,
  generator: number,
  carried?: readonly number[],
): (DrawnQuestion & { readonly isSame: boolean }) | undefined {
  const chance = seededChance(`${kind.id}/${seed}/${attempt}`, carried, generator);
  const question = kind.draw(chance, house);
  if (!question) return undefined;
  const codes = [
    ...chance.quotes.codes,
    ...(isNumberQuestion(question) ? [codeOfAnswer(question.answer)] : []),
  ];
  return { question, note: { attempt, codes }, isSame: chance.quotes.isSame() };
}

/** Draws a question, with a note by which it is drawn again; numbers that will not do are drawn anew. Undefined when the house allows none. */
export function draw(
  kind: QuestionKind,
  seed: string,
  house: House,
  generator = GENERATOR,
): DrawnQuestion | undefined {
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const drawn = attemptAt(kind, seed, house, attempt, generator);
    if (drawn && isSoundQuestion(drawn.question) && (generator < RENEWED_SINCE || tellsSize(drawn.question)))
      return drawn;
  }
  return undefined;
}

export const drawQuestion = (kind: QuestionKind, seed: string, house: House): Question | undefined =>
  draw(kind, seed, house)?.question;

/** The question of a note, with the numbers it was drawn with, whatever today's sums would let pass; undefined when they can no longer be reckoned with. */
export function drawAgain(
  kind: QuestionKind,
  seed: string,
  house: House,
  { attempt, codes }: DrawNote,
  generator = GENERATOR,
): DrawnQuestion | undefined {
  try {
    const drawn = attemptAt(kind, seed, house, attempt, generator, codes);
    if (!drawn || drawn.note.codes.length !== codes.length || !drawn.isSame) return undefined;
    const { question } = drawn;
    return isNumberQuestion(question) && !Number.isFinite(question.answer) ? undefined : drawn;
  } catch (problem) {
    if (problem instanceof RangeError) return undefined; // a sum of the core that these numbers have left
    throw problem;
  }
}
