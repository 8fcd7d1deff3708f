// Kinds of question on ingredients.
import type { QuestionKind } from '../../question.ts';
import dryGrainInALoad from './dry-grain-in-a-load.ts';
import extractByProtein from './extract-by-protein.ts';
import extractForNitrogen from './extract-for-nitrogen.ts';
import freshWaterInAWeek from './fresh-water-in-a-week.ts';
import maltAfterScreenings from './malt-after-screenings.ts';
import signAndCause from './sign-and-cause.ts';
import whyItIsMeasured from './why-it-is-measured.ts';
import yeastToATonne from './yeast-to-a-tonne.ts';

export const ingredients: readonly QuestionKind[] = [
  signAndCause,
  whyItIsMeasured,
  dryGrainInALoad,
  extractByProtein,
  extractForNitrogen,
  maltAfterScreenings,
  freshWaterInAWeek,
  yeastToATonne,
];
