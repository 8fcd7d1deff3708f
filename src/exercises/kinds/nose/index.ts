// Kinds of question on the nose.
import type { QuestionKind } from '../../question.ts';
import goneTooFar from './gone-too-far.ts';
import madeByWhat from './made-by-what.ts';
import sampleForAGlass from './sample-for-a-glass.ts';
import waterForNosing from './water-for-nosing.ts';
import whenItComesOver from './when-it-comes-over.ts';
import whichLever from './which-lever.ts';

export const nose: readonly QuestionKind[] = [
  madeByWhat,
  whenItComesOver,
  sampleForAGlass,
  goneTooFar,
  whichLever,
  waterForNosing,
];
