// Kinds of question on maturing.
import type { QuestionKind } from '../../question.ts';
import airOrLeak from './air-or-leak.ts';
import alcoholLostByRegauge from './alcohol-lost-by-regauge.ts';
import angelsShareOfAStore from './angels-share-of-a-store.ts';
import belowForty from './below-forty.ts';
import blendToStrength from './blend-to-strength.ts';
import bottlesFromACask from './bottles-from-a-cask.ts';
import calibrateLoss from './calibrate-loss.ts';
import caskInTheStore from './cask-in-the-store.ts';
import caskThroughYears from './cask-through-years.ts';
import casksAndBottles from './casks-and-bottles.ts';
import casksForAlcohol from './casks-for-alcohol.ts';
import duty from './duty.ts';
import fillByMass from './fill-by-mass.ts';
import fillCasks from './fill-casks.ts';
import labelTolerance from './label-tolerance.ts';
import lifting from './lifting.ts';
import litresByDip from './litres-by-dip.ts';
import lossInAWarmerStore from './loss-in-a-warmer-store.ts';
import maturingToBottle from './maturing-to-bottle.ts';
import obscuration from './obscuration.ts';
import regaugeByDip from './regauge-by-dip.ts';
import regaugeByWeight from './regauge-by-weight.ts';
import regaugeThatCannotBe from './regauge-that-cannot-be.ts';
import surfaceToVolume from './surface-to-volume.ts';
import takenFromTheWood from './taken-from-the-wood.ts';
import vatDip from './vat-dip.ts';
import vatting from './vatting.ts';
import volumeThroughYears from './volume-through-years.ts';
import warehouse from './warehouse.ts';
import yearOfAStrength from './year-of-a-strength.ts';

export const maturing: readonly QuestionKind[] = [
  casksForAlcohol,
  fillCasks,
  takenFromTheWood,
  caskThroughYears,
  volumeThroughYears,
  caskInTheStore,
  lossInAWarmerStore,
  surfaceToVolume,
  alcoholLostByRegauge,
  calibrateLoss,
  regaugeByWeight,
  regaugeByDip,
  litresByDip,
  airOrLeak,
  regaugeThatCannotBe,
  belowForty,
  yearOfAStrength,
  warehouse,
  angelsShareOfAStore,
  vatting,
  casksAndBottles,
  bottlesFromACask,
  maturingToBottle,
  lifting,
  duty,
  blendToStrength,
  vatDip,
  labelTolerance,
  obscuration,
  fillByMass,
];
