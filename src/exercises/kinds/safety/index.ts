// Kinds of question on safety.
import type { QuestionKind } from '../../question.ts';

export const safety: readonly QuestionKind[] = [];
