// Kinds of question on maturing.
import type { QuestionKind } from '../../question.ts';

export const maturing: readonly QuestionKind[] = [];
