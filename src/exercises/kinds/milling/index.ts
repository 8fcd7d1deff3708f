// Kinds of question on milling.
import type { QuestionKind } from '../../question.ts';
import dustClass from './dust-class.ts';
import dustCloud from './dust-cloud.ts';
import dustForACloud from './dust-for-a-cloud.ts';
import flourOfTwoParts from './flour-of-two-parts.ts';
import gristSplit from './grist-split.ts';
import maltForAYear from './malt-for-a-year.ts';
import maltLeftToMill from './malt-left-to-mill.ts';
import mashesInBin from './mashes-in-bin.ts';
import millAndBin from './mill-and-bin.ts';
import millingOrder from './milling-order.ts';
import sieveLoss from './sieve-loss.ts';
import sieveTest from './sieve-test.ts';
import sizeCurve from './size-curve.ts';
import surfaceOfGrist from './surface-of-grist.ts';

export const milling: readonly QuestionKind[] = [
  gristSplit,
  sieveTest,
  sieveLoss,
  sizeCurve,
  flourOfTwoParts,
  surfaceOfGrist,
  millAndBin,
  maltLeftToMill,
  mashesInBin,
  maltForAYear,
  dustCloud,
  dustForACloud,
  dustClass,
  millingOrder,
];
