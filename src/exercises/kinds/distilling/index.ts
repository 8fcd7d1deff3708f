// Kinds of question on distilling.
import type { QuestionKind } from '../../question.ts';

export const distilling: readonly QuestionKind[] = [];
