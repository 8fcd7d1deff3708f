// Kinds of question on mashing.
import type { QuestionKind } from '../../question.ts';

export const mashing: readonly QuestionKind[] = [];
