// Kinds of question on milling.
import type { QuestionKind } from '../../question.ts';

export const milling: readonly QuestionKind[] = [];
