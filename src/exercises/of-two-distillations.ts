// A kind of question that is true of two distillations only: a house that distils three times is not asked it.
import { lineIfAny } from '../house/line-of.ts';
import type { QuestionKind } from './question.ts';

/** The kind as it was, and none for a house whose low wines are run again before the spirit still. */
export const ofTwoDistillations = (kind: QuestionKind): QuestionKind => ({
  ...kind,
  draw: (chance, house) => (lineIfAny(house)?.round.between ? undefined : kind.draw(chance, house)),
});
