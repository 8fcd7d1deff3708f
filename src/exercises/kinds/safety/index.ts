// Kinds of question on safety.
import type { QuestionKind } from '../../question.ts';
import aPartOfTheLowerLimit from './a-part-of-the-lower-limit.ts';
import aSparkAtTheReceiver from './a-spark-at-the-receiver.ts';
import afterTheTasting from './after-the-tasting.ts';
import aloneAtNight from './alone-at-night.ts';
import blowingTheDust from './blowing-the-dust.ts';
import caskOnTheRamp from './cask-on-the-ramp.ts';
import closedWhileItCools from './closed-while-it-cools.ts';
import collapsedInATun from './collapsed-in-a-tun.ts';
import enteringAConfinedSpace from './entering-a-confined-space.ts';
import freshAirForALevel from './fresh-air-for-a-level.ts';
import frothInTheNeck from './froth-in-the-neck.ts';
import gasLetIntoARoom from './gas-let-into-a-room.ts';
import hotLiquorAhead from './hot-liquor-ahead.ts';
import impossibleInTheAir from './impossible-in-the-air.ts';
import noPermitYet from './no-permit-yet.ts';
import oneMoreSack from './one-more-sack.ts';
import overTheHatch from './over-the-hatch.ts';
import oxygenBesideTheGas from './oxygen-beside-the-gas.ts';
import sizeOfACloud from './size-of-a-cloud.ts';
import spiltSpirit from './spilt-spirit.ts';
import spiritInTheAir from './spirit-in-the-air.ts';
import splashedWithCaustic from './splashed-with-caustic.ts';
import theEarthWire from './the-earth-wire.ts';
import theFireAlarm from './the-fire-alarm.ts';
import theHotBearing from './the-hot-bearing.ts';
import theLockOnTheSafe from './the-lock-on-the-safe.ts';
import theSilentAlarm from './the-silent-alarm.ts';
import unitsInAMeasure from './units-in-a-measure.ts';
import unitsInATasting from './units-in-a-tasting.ts';
import vapourFromASpill from './vapour-from-a-spill.ts';
import weightOfAFullCask from './weight-of-a-full-cask.ts';
import whereTheLevelSettles from './where-the-level-settles.ts';

export const safety: readonly QuestionKind[] = [
  aPartOfTheLowerLimit,
  aSparkAtTheReceiver,
  afterTheTasting,
  aloneAtNight,
  blowingTheDust,
  caskOnTheRamp,
  closedWhileItCools,
  collapsedInATun,
  enteringAConfinedSpace,
  freshAirForALevel,
  frothInTheNeck,
  gasLetIntoARoom,
  hotLiquorAhead,
  impossibleInTheAir,
  noPermitYet,
  oneMoreSack,
  overTheHatch,
  oxygenBesideTheGas,
  sizeOfACloud,
  spiltSpirit,
  spiritInTheAir,
  splashedWithCaustic,
  theEarthWire,
  theFireAlarm,
  theHotBearing,
  theLockOnTheSafe,
  theSilentAlarm,
  unitsInAMeasure,
  unitsInATasting,
  vapourFromASpill,
  weightOfAFullCask,
  whereTheLevelSettles,
];
