// Kinds of question on fermenting.
import type { QuestionKind } from '../../question.ts';

export const fermenting: readonly QuestionKind[] = [];
