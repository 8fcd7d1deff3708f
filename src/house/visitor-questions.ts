// The questions that visitors ask, as the chapters have them: what to say and what to know, told for one house.
import type { NumberName } from '../core/figures/index.ts';
import type { LedgerPace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { conditions, type Condition } from './conditions.ts';
import type { FactId } from './facts.ts';
import { figureText } from './prose.ts';

/** A piece of an answer: words, a figure of the house, words told only where they are true of the house, or a fact of it. */
export type AnswerPiece =
  | string
  | { readonly figure: string; readonly per?: LedgerPace; readonly digits?: number }
  | { readonly when: Condition; readonly says: readonly AnswerPiece[] }
  | { readonly fact: FactId; readonly otherwise: readonly AnswerPiece[] };

export interface VisitorQuestion {
  readonly id: string;
  /** The chapter that asks it, and its title. */
  readonly chapter: string;
  readonly title: string;
  readonly question: string;
  readonly say: readonly AnswerPiece[];
  readonly know: readonly AnswerPiece[];
}

/** What a house says of a fact; undefined where it has said nothing. */
export type SaysFact = (fact: FactId) => string | undefined;
const saysNothing: SaysFact = () => undefined;

/** An answer as it reads for one house: its figures filled in, each with what is `told` of it, what it `says` of its facts, and only the sentences that are true of it. */
export function answerText(
  answer: readonly AnswerPiece[],
  line: Line,
  told: (figure: string) => string = () => '',
  says: SaysFact = saysNothing,
  unknown: readonly NumberName[] = [],
): string {
  const read = (pieces: readonly AnswerPiece[]): string =>
    pieces
      .map((piece) => {
        if (typeof piece === 'string') return piece;
        if ('when' in piece) return conditions[piece.when](line, unknown) ? read(piece.says) : '';
        if ('fact' in piece) return says(piece.fact) ?? read(piece.otherwise);
        return figureText(line, piece.figure, piece.per, piece.digits) + told(piece.figure);
      })
      .join('');
  return read(answer).replace(/\s+/g, ' ').trim();
}

/** True when an answer carries a figure of the house, as it reads for that house. */
export function hasFigures(
  answer: readonly AnswerPiece[],
  line: Line,
  unknown: readonly NumberName[] = [],
): boolean {
  return answer.some(
    (piece) =>
      typeof piece !== 'string' &&
      !('fact' in piece) &&
      ('figure' in piece || (conditions[piece.when](line, unknown) && hasFigures(piece.says, line, unknown))),
  );
}

/** The facts that an answer asks for and the house does not give. */
export const notSaid = (answer: readonly AnswerPiece[], says: SaysFact): readonly FactId[] =>
  answer.flatMap((piece) =>
    typeof piece === 'object' && 'fact' in piece && says(piece.fact) === undefined ? [piece.fact] : [],
  );
