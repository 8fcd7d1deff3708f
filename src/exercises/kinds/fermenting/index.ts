// Kinds of question on fermenting.
import type { QuestionKind } from '../../question.ts';
import alcoholInTheWashback from './alcohol-in-the-washback.ts';
import apparentAttenuation from './apparent-attenuation.ts';
import carbonDioxide from './carbon-dioxide.ts';
import carbonDioxideAtItsHeight from './carbon-dioxide-at-its-height.ts';
import carbonDioxideByMass from './carbon-dioxide-by-mass.ts';
import carbonDioxideFromAWash from './carbon-dioxide-from-a-wash.ts';
import carbonDioxideInARoom from './carbon-dioxide-in-a-room.ts';
import caustic from './caustic.ts';
import extractUsed from './extract-used.ts';
import fermentationCurve from './fermentation-curve.ts';
import halfTheFall from './half-the-fall.ts';
import longestFermentation from './longest-fermentation.ts';
import orderOfAFermentation from './order-of-a-fermentation.ts';
import pressedYeastForCells from './pressed-yeast-for-cells.ts';
import realAttenuation from './real-attenuation.ts';
import strengthByBalling from './strength-by-balling.ts';
import strengthFromGravities from './strength-from-gravities.ts';
import strengthThreeWays from './strength-three-ways.ts';
import washbackHeat from './washback-heat.ts';
import washbacksNeeded from './washbacks-needed.ts';
import yeastCells from './yeast-cells.ts';
import yeastDose from './yeast-dose.ts';
import yeastPitch from './yeast-pitch.ts';

export const fermenting: readonly QuestionKind[] = [
  alcoholInTheWashback,
  apparentAttenuation,
  carbonDioxide,
  carbonDioxideAtItsHeight,
  carbonDioxideByMass,
  carbonDioxideFromAWash,
  carbonDioxideInARoom,
  extractUsed,
  fermentationCurve,
  halfTheFall,
  longestFermentation,
  orderOfAFermentation,
  pressedYeastForCells,
  realAttenuation,
  strengthByBalling,
  strengthFromGravities,
  strengthThreeWays,
  washbackHeat,
  washbacksNeeded,
  yeastCells,
  yeastDose,
  caustic,
  yeastPitch,
];
