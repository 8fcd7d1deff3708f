// Kinds of question on safety.
import type { QuestionKind } from '../../question.ts';
import impossibleInTheAir from './impossible-in-the-air.ts';

export const safety: readonly QuestionKind[] = [impossibleInTheAir];
