// Kinds of question on the whole line.
import type { QuestionKind } from '../../question.ts';

export const line: readonly QuestionKind[] = [];
