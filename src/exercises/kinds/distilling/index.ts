// Kinds of question on distilling.
import type { QuestionKind } from '../../question.ts';
import balancedHeart from './balanced-heart.ts';
import blendFirstEstimate from './blend-first-estimate.ts';
import blendTwoSpirits from './blend-two-spirits.ts';
import chargeStrength from './charge-strength.ts';
import coolingWater from './cooling-water.ts';
import hydrometerInTheSafe from './hydrometer-in-the-safe.ts';
import latentHeatOfLowWines from './latent-heat-of-low-wines.ts';
import lowWinesVolume from './low-wines-volume.ts';
import orderOfASpiritRun from './order-of-a-spirit-run.ts';
import perLitre from './per-litre.ts';
import potAleAWeek from './pot-ale-a-week.ts';
import pureAlcohol from './pure-alcohol.ts';
import refluxByProportion from './reflux-by-proportion.ts';
import season from './season.ts';
import spentLiquors from './spent-liquors.ts';
import spiritRunCut from './spirit-run-cut.ts';
import spiritRunEnergy from './spirit-run-energy.ts';
import spiritRunHeart from './spirit-run-heart.ts';
import strengthAtATemperature from './strength-at-a-temperature.ts';
import traceLeftInThePot from './trace-left-in-the-pot.ts';
import washRun from './wash-run.ts';
import whatIf from './what-if.ts';

export const distilling: readonly QuestionKind[] = [
  balancedHeart,
  blendFirstEstimate,
  blendTwoSpirits,
  chargeStrength,
  coolingWater,
  hydrometerInTheSafe,
  latentHeatOfLowWines,
  lowWinesVolume,
  orderOfASpiritRun,
  potAleAWeek,
  pureAlcohol,
  season,
  spentLiquors,
  spiritRunCut,
  spiritRunEnergy,
  spiritRunHeart,
  strengthAtATemperature,
  traceLeftInThePot,
  washRun,
  whatIf,
  refluxByProportion,
  perLitre,
];
