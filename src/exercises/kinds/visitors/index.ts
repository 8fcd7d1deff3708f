// Kinds of question on answering visitors.
import type { QuestionKind } from '../../question.ts';
import aPhoneAmongTheStills from './a-phone-among-the-stills.ts';
import askedWhatYouDoNotKnow from './asked-what-you-do-not-know.ts';
import bottlesGoneToTheAir from './bottles-gone-to-the-air.ts';
import howMuchOfIt from './how-much-of-it.ts';
import howStrongIsIt from './how-strong-is-it.ts';
import waterForABottle from './water-for-a-bottle.ts';
import waterInTheGlass from './water-in-the-glass.ts';

export const visitors: readonly QuestionKind[] = [
  howStrongIsIt,
  aPhoneAmongTheStills,
  askedWhatYouDoNotKnow,
  waterForABottle,
  waterInTheGlass,
  howMuchOfIt,
  bottlesGoneToTheAir,
];
