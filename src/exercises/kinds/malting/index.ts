// Kinds of question on malting.
import type { QuestionKind } from '../../question.ts';

export const malting: readonly QuestionKind[] = [];
