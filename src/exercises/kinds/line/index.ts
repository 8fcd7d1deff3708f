// Kinds of question on the whole line.
import type { QuestionKind } from '../../question.ts';
import impossibleAlongTheLine from './impossible-along-the-line.ts';
import impossibleAtBottling from './impossible-at-bottling.ts';
import impossibleDraff from './impossible-draff.ts';
import impossibleInAYear from './impossible-in-a-year.ts';
import impossibleInMalting from './impossible-in-malting.ts';
import impossibleInReducing from './impossible-in-reducing.ts';
import impossibleInTheCask from './impossible-in-the-cask.ts';
import impossibleInTheMash from './impossible-in-the-mash.ts';
import impossibleInTheMill from './impossible-in-the-mill.ts';
import impossibleInTheSpiritStill from './impossible-in-the-spirit-still.ts';
import impossibleInTheWashStill from './impossible-in-the-wash-still.ts';
import impossibleInTheWashback from './impossible-in-the-washback.ts';
import impossibleMoisture from './impossible-moisture.ts';

export const line: readonly QuestionKind[] = [
  impossibleInMalting,
  impossibleMoisture,
  impossibleInTheMill,
  impossibleInTheMash,
  impossibleDraff,
  impossibleInTheWashback,
  impossibleInTheWashStill,
  impossibleInTheSpiritStill,
  impossibleInTheCask,
  impossibleAtBottling,
  impossibleInReducing,
  impossibleAlongTheLine,
  impossibleInAYear,
];
