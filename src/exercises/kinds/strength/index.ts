// Kinds of question on strength and volume.
import type { QuestionKind } from '../../question.ts';
import reduceToStrength from './reduce-to-strength.ts';

export const strength: readonly QuestionKind[] = [reduceToStrength];
