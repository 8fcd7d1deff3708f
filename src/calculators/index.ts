// Every calculator, in the order of the book. Written by `npm run gather`, which puts a new one last of its folder; to move one, move its import.
import type { AnyCalculator } from './define.ts';
import barleyAndLand from './malting/barley-and-land.ts';
import barleyForMalt from './malting/barley-for-malt.ts';
import germinationCount from './malting/germination-count.ts';
import germinationPlan from './malting/germination-plan.ts';
import steepUptake from './malting/steep-uptake.ts';
import steepFit from './malting/steep-fit.ts';
import kiln from './malting/kiln.ts';
import peatBlend from './malting/peat-blend.ts';
import maltAnalysis from './malting/malt-analysis.ts';
import predictedSpiritYield from './malting/predicted-spirit-yield.ts';
import gristSplit from './milling/grist-split.ts';
import sieveTest from './milling/sieve-test.ts';
import sizeCurve from './milling/size-curve.ts';
import millAndBin from './milling/mill-and-bin.ts';
import dustCloud from './milling/dust-cloud.ts';
import dustClass from './milling/dust-class.ts';
import conversion from './mashing/conversion.ts';
import strikeWater from './mashing/strike-water.ts';
import mashRescue from './mashing/mash-rescue.ts';
import successiveWaters from './mashing/successive-waters.ts';
import returnedWorts from './mashing/returned-worts.ts';
import gravityReadWarm from './mashing/gravity-read-warm.ts';
import extractInWort from './mashing/extract-in-wort.ts';
import mashEfficiency from './mashing/mash-efficiency.ts';
import draff from './mashing/draff.ts';
import wortCooler from './mashing/wort-cooler.ts';
import strengthFromGravities from './fermenting/strength-from-gravities.ts';
import strengthThreeWays from './fermenting/strength-three-ways.ts';
import fermentationCurve from './fermenting/fermentation-curve.ts';
import washbackHeat from './fermenting/washback-heat.ts';
import yeastDose from './fermenting/yeast-dose.ts';
import yeastPitch from './fermenting/yeast-pitch.ts';
import washbacksNeeded from './fermenting/washbacks-needed.ts';
import carbonDioxide from './fermenting/carbon-dioxide.ts';
import carbonDioxideInARoom from './fermenting/carbon-dioxide-in-a-room.ts';
import caustic from './fermenting/caustic.ts';
import strengthFromDensity from './distilling/strength-from-density.ts';
import hydrometerInTheSafe from './distilling/hydrometer-in-the-safe.ts';
import blendTwoSpirits from './distilling/blend-two-spirits.ts';
import washRun from './distilling/wash-run.ts';
import fitStills from './distilling/fit-stills.ts';
import spiritRunEnergy from './distilling/spirit-run-energy.ts';
import chargeStrength from './distilling/charge-strength.ts';
import whatIf from './distilling/what-if.ts';
import season from './distilling/season.ts';
import congenersInTheRun from './distilling/congeners-in-the-run.ts';
import spentLiquors from './distilling/spent-liquors.ts';
import perLitre from './distilling/per-litre.ts';
import reduceToStrength from './maturing/reduce-to-strength.ts';
import blendToStrength from './maturing/blend-to-strength.ts';
import fillCasks from './maturing/fill-casks.ts';
import caskThroughYears from './maturing/cask-through-years.ts';
import caskInTheStore from './maturing/cask-in-the-store.ts';
import calibrateLoss from './maturing/calibrate-loss.ts';
import belowForty from './maturing/below-forty.ts';
import vatDip from './maturing/vat-dip.ts';
import regaugeByDip from './maturing/regauge-by-dip.ts';
import regaugeByWeight from './maturing/regauge-by-weight.ts';
import surfaceToVolume from './maturing/surface-to-volume.ts';
import vatting from './maturing/vatting.ts';
import casksAndBottles from './maturing/casks-and-bottles.ts';
import duty from './maturing/duty.ts';
import warehouse from './maturing/warehouse.ts';
import lifting from './maturing/lifting.ts';
import labelTolerance from './maturing/label-tolerance.ts';
import obscuration from './maturing/obscuration.ts';
import fillByMass from './maturing/fill-by-mass.ts';

export const calculators: readonly AnyCalculator[] = [
  barleyAndLand,
  barleyForMalt,
  germinationCount,
  germinationPlan,
  steepUptake,
  steepFit,
  kiln,
  peatBlend,
  maltAnalysis,
  predictedSpiritYield,
  gristSplit,
  sieveTest,
  sizeCurve,
  millAndBin,
  dustCloud,
  dustClass,
  conversion,
  strikeWater,
  mashRescue,
  successiveWaters,
  returnedWorts,
  gravityReadWarm,
  extractInWort,
  mashEfficiency,
  draff,
  wortCooler,
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
  strengthFromDensity,
  hydrometerInTheSafe,
  blendTwoSpirits,
  washRun,
  fitStills,
  spiritRunEnergy,
  chargeStrength,
  whatIf,
  season,
  congenersInTheRun,
  spentLiquors,
  perLitre,
  reduceToStrength,
  blendToStrength,
  fillCasks,
  caskThroughYears,
  caskInTheStore,
  calibrateLoss,
  belowForty,
  vatDip,
  regaugeByDip,
  regaugeByWeight,
  surfaceToVolume,
  vatting,
  casksAndBottles,
  duty,
  warehouse,
  lifting,
  labelTolerance,
  obscuration,
  fillByMass,
];
