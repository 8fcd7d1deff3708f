// Kinds of question on running a house: the ledger, and a low yield.
import type { QuestionKind } from '../../question.ts';
import leftInTheReceiver from './left-in-the-receiver.ts';
import ledgerLineThatCannotBe from './ledger-line-that-cannot-be.ts';
import missingOfWhatWasHandled from './missing-of-what-was-handled.ts';
import moreThanTheYearlyLoss from './more-than-the-yearly-loss.ts';
import whereTheYieldWasLost from './where-the-yield-was-lost.ts';
import yieldByFinalGravity from './yield-by-final-gravity.ts';
import yieldGoneWithTheDraff from './yield-gone-with-the-draff.ts';
import yieldOfDampMalt from './yield-of-damp-malt.ts';

export const running: readonly QuestionKind[] = [
  ledgerLineThatCannotBe,
  leftInTheReceiver,
  missingOfWhatWasHandled,
  moreThanTheYearlyLoss,
  yieldOfDampMalt,
  yieldByFinalGravity,
  yieldGoneWithTheDraff,
  whereTheYieldWasLost,
];
