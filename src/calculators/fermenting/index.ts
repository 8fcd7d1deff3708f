// The calculators of fermenting.
import carbonDioxide from './carbon-dioxide.ts';
import carbonDioxideInARoom from './carbon-dioxide-in-a-room.ts';
import caustic from './caustic.ts';
import fermentationCurve from './fermentation-curve.ts';
import strengthFromGravities from './strength-from-gravities.ts';
import strengthThreeWays from './strength-three-ways.ts';
import washbackHeat from './washback-heat.ts';
import washbacksNeeded from './washbacks-needed.ts';
import yeastDose from './yeast-dose.ts';
import yeastPitch from './yeast-pitch.ts';

export const fermenting = [
  strengthFromGravities,
  strengthThreeWays,
  fermentationCurve,
  washbackHeat,
  yeastDose,
  yeastPitch,
  washbacksNeeded,
  carbonDioxide,
  carbonDioxideInARoom,
  caustic,
];
