// Kinds of question on law.
import type { QuestionKind } from '../../question.ts';

export const law: readonly QuestionKind[] = [];
