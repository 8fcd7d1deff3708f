// Every kind of question, in the order of the book. Written by `npm run gather`, which puts a new one last of its folder; to move one, move its import.
import type { QuestionKind } from '../question.ts';
import maltFromBarley from './malting/malt-from-barley.ts';
import barleyForMalt from './malting/barley-for-malt.ts';
import barleyAndLand from './malting/barley-and-land.ts';
import alcoholOfAHectare from './malting/alcohol-of-a-hectare.ts';
import landForAYear from './malting/land-for-a-year.ts';
import germinationCount from './malting/germination-count.ts';
import cornsToCount from './malting/corns-to-count.ts';
import moistureOnDryBasis from './malting/moisture-on-dry-basis.ts';
import steepWater from './malting/steep-water.ts';
import sampleMoisture from './malting/sample-moisture.ts';
import steepUptake from './malting/steep-uptake.ts';
import kiln from './malting/kiln.ts';
import kilnFreeDrying from './malting/kiln-free-drying.ts';
import peatBlend from './malting/peat-blend.ts';
import proteinFromNitrogen from './malting/protein-from-nitrogen.ts';
import maltAnalysis from './malting/malt-analysis.ts';
import fermentabilityFromGravities from './malting/fermentability-from-gravities.ts';
import predictedSpiritYield from './malting/predicted-spirit-yield.ts';
import maltingOrder from './malting/malting-order.ts';
import gristSplit from './milling/grist-split.ts';
import sieveTest from './milling/sieve-test.ts';
import sieveLoss from './milling/sieve-loss.ts';
import sizeCurve from './milling/size-curve.ts';
import flourOfTwoParts from './milling/flour-of-two-parts.ts';
import surfaceOfGrist from './milling/surface-of-grist.ts';
import millAndBin from './milling/mill-and-bin.ts';
import maltLeftToMill from './milling/malt-left-to-mill.ts';
import mashesInBin from './milling/mashes-in-bin.ts';
import maltForAYear from './milling/malt-for-a-year.ts';
import dustCloud from './milling/dust-cloud.ts';
import dustForACloud from './milling/dust-for-a-cloud.ts';
import dustClass from './milling/dust-class.ts';
import millingOrder from './milling/milling-order.ts';
import strikeWater from './mashing/strike-water.ts';
import mashTemperature from './mashing/mash-temperature.ts';
import fahrenheitAndCelsius from './mashing/fahrenheit-and-celsius.ts';
import conversion from './mashing/conversion.ts';
import conversionCurve from './mashing/conversion-curve.ts';
import washing from './mashing/washing.ts';
import successiveWaters from './mashing/successive-waters.ts';
import returnedWorts from './mashing/returned-worts.ts';
import wortMass from './mashing/wort-mass.ts';
import extractInWort from './mashing/extract-in-wort.ts';
import efficiencyOfWort from './mashing/efficiency-of-wort.ts';
import mashEfficiency from './mashing/mash-efficiency.ts';
import draff from './mashing/draff.ts';
import draffInAWeek from './mashing/draff-in-a-week.ts';
import extractHeldByDraff from './mashing/extract-held-by-draff.ts';
import extractLost from './mashing/extract-lost.ts';
import mashingOrder from './mashing/mashing-order.ts';
import mashRescue from './mashing/mash-rescue.ts';
import gravityReadWarm from './mashing/gravity-read-warm.ts';
import wortCooler from './mashing/wort-cooler.ts';
import alcoholInTheWashback from './fermenting/alcohol-in-the-washback.ts';
import apparentAttenuation from './fermenting/apparent-attenuation.ts';
import carbonDioxide from './fermenting/carbon-dioxide.ts';
import carbonDioxideAtItsHeight from './fermenting/carbon-dioxide-at-its-height.ts';
import carbonDioxideByMass from './fermenting/carbon-dioxide-by-mass.ts';
import carbonDioxideFromAWash from './fermenting/carbon-dioxide-from-a-wash.ts';
import carbonDioxideInARoom from './fermenting/carbon-dioxide-in-a-room.ts';
import extractUsed from './fermenting/extract-used.ts';
import fermentationCurve from './fermenting/fermentation-curve.ts';
import halfTheFall from './fermenting/half-the-fall.ts';
import longestFermentation from './fermenting/longest-fermentation.ts';
import orderOfAFermentation from './fermenting/order-of-a-fermentation.ts';
import pressedYeastForCells from './fermenting/pressed-yeast-for-cells.ts';
import realAttenuation from './fermenting/real-attenuation.ts';
import strengthByBalling from './fermenting/strength-by-balling.ts';
import strengthFromGravities from './fermenting/strength-from-gravities.ts';
import strengthThreeWays from './fermenting/strength-three-ways.ts';
import washbackHeat from './fermenting/washback-heat.ts';
import washbacksNeeded from './fermenting/washbacks-needed.ts';
import yeastCells from './fermenting/yeast-cells.ts';
import yeastDose from './fermenting/yeast-dose.ts';
import caustic from './fermenting/caustic.ts';
import yeastPitch from './fermenting/yeast-pitch.ts';
import balancedHeart from './distilling/balanced-heart.ts';
import blendFirstEstimate from './distilling/blend-first-estimate.ts';
import blendTwoSpirits from './distilling/blend-two-spirits.ts';
import chargeStrength from './distilling/charge-strength.ts';
import coolingWater from './distilling/cooling-water.ts';
import hydrometerInTheSafe from './distilling/hydrometer-in-the-safe.ts';
import latentHeatOfLowWines from './distilling/latent-heat-of-low-wines.ts';
import lowWinesVolume from './distilling/low-wines-volume.ts';
import orderOfASpiritRun from './distilling/order-of-a-spirit-run.ts';
import potAleAWeek from './distilling/pot-ale-a-week.ts';
import pureAlcohol from './distilling/pure-alcohol.ts';
import season from './distilling/season.ts';
import spentLiquors from './distilling/spent-liquors.ts';
import spiritRunCut from './distilling/spirit-run-cut.ts';
import spiritRunEnergy from './distilling/spirit-run-energy.ts';
import spiritRunHeart from './distilling/spirit-run-heart.ts';
import strengthAtATemperature from './distilling/strength-at-a-temperature.ts';
import traceLeftInThePot from './distilling/trace-left-in-the-pot.ts';
import washRun from './distilling/wash-run.ts';
import whatIf from './distilling/what-if.ts';
import refluxByProportion from './distilling/reflux-by-proportion.ts';
import perLitre from './distilling/per-litre.ts';
import casksForAlcohol from './maturing/casks-for-alcohol.ts';
import fillCasks from './maturing/fill-casks.ts';
import takenFromTheWood from './maturing/taken-from-the-wood.ts';
import caskThroughYears from './maturing/cask-through-years.ts';
import volumeThroughYears from './maturing/volume-through-years.ts';
import caskInTheStore from './maturing/cask-in-the-store.ts';
import lossInAWarmerStore from './maturing/loss-in-a-warmer-store.ts';
import surfaceToVolume from './maturing/surface-to-volume.ts';
import alcoholLostByRegauge from './maturing/alcohol-lost-by-regauge.ts';
import calibrateLoss from './maturing/calibrate-loss.ts';
import regaugeByWeight from './maturing/regauge-by-weight.ts';
import regaugeByDip from './maturing/regauge-by-dip.ts';
import litresByDip from './maturing/litres-by-dip.ts';
import airOrLeak from './maturing/air-or-leak.ts';
import regaugeThatCannotBe from './maturing/regauge-that-cannot-be.ts';
import belowForty from './maturing/below-forty.ts';
import yearOfAStrength from './maturing/year-of-a-strength.ts';
import warehouse from './maturing/warehouse.ts';
import angelsShareOfAStore from './maturing/angels-share-of-a-store.ts';
import vatting from './maturing/vatting.ts';
import casksAndBottles from './maturing/casks-and-bottles.ts';
import bottlesFromACask from './maturing/bottles-from-a-cask.ts';
import maturingToBottle from './maturing/maturing-to-bottle.ts';
import lifting from './maturing/lifting.ts';
import duty from './maturing/duty.ts';
import blendToStrength from './maturing/blend-to-strength.ts';
import vatDip from './maturing/vat-dip.ts';
import labelTolerance from './maturing/label-tolerance.ts';
import obscuration from './maturing/obscuration.ts';
import fillByMass from './maturing/fill-by-mass.ts';
import strengthFromAlcohol from './strength/strength-from-alcohol.ts';
import massOfSpirit from './strength/mass-of-spirit.ts';
import massPercent from './strength/mass-percent.ts';
import strengthFromMassPercent from './strength/strength-from-mass-percent.ts';
import volumeMadeInMixing from './strength/volume-made-in-mixing.ts';
import contractionEstimate from './strength/contraction-estimate.ts';
import mixingThatCannotBe from './strength/mixing-that-cannot-be.ts';
import reduceToStrength from './strength/reduce-to-strength.ts';
import strengthFromDensity from './strength/strength-from-density.ts';
import strengthFromDensityInAir from './strength/strength-from-density-in-air.ts';
import warmTank from './strength/warm-tank.ts';
import platoFromTable from './strength/plato-from-table.ts';
import usProof from './strength/us-proof.ts';
import strengthFromOldProof from './strength/strength-from-old-proof.ts';
import usProofGallons from './strength/us-proof-gallons.ts';
import alcoholFromProofGallons from './strength/alcohol-from-proof-gallons.ts';
import aPartOfTheLowerLimit from './safety/a-part-of-the-lower-limit.ts';
import aSparkAtTheReceiver from './safety/a-spark-at-the-receiver.ts';
import afterTheTasting from './safety/after-the-tasting.ts';
import aloneAtNight from './safety/alone-at-night.ts';
import blowingTheDust from './safety/blowing-the-dust.ts';
import caskOnTheRamp from './safety/cask-on-the-ramp.ts';
import closedWhileItCools from './safety/closed-while-it-cools.ts';
import collapsedInATun from './safety/collapsed-in-a-tun.ts';
import enteringAConfinedSpace from './safety/entering-a-confined-space.ts';
import freshAirForALevel from './safety/fresh-air-for-a-level.ts';
import frothInTheNeck from './safety/froth-in-the-neck.ts';
import gasLetIntoARoom from './safety/gas-let-into-a-room.ts';
import hotLiquorAhead from './safety/hot-liquor-ahead.ts';
import impossibleInTheAir from './safety/impossible-in-the-air.ts';
import noPermitYet from './safety/no-permit-yet.ts';
import oneMoreSack from './safety/one-more-sack.ts';
import overTheHatch from './safety/over-the-hatch.ts';
import oxygenBesideTheGas from './safety/oxygen-beside-the-gas.ts';
import sizeOfACloud from './safety/size-of-a-cloud.ts';
import spiltSpirit from './safety/spilt-spirit.ts';
import spiritInTheAir from './safety/spirit-in-the-air.ts';
import splashedWithCaustic from './safety/splashed-with-caustic.ts';
import theEarthWire from './safety/the-earth-wire.ts';
import theFireAlarm from './safety/the-fire-alarm.ts';
import theHotBearing from './safety/the-hot-bearing.ts';
import theLockOnTheSafe from './safety/the-lock-on-the-safe.ts';
import theSilentAlarm from './safety/the-silent-alarm.ts';
import unitsInAMeasure from './safety/units-in-a-measure.ts';
import unitsInATasting from './safety/units-in-a-tasting.ts';
import vapourFromASpill from './safety/vapour-from-a-spill.ts';
import weightOfAFullCask from './safety/weight-of-a-full-cask.ts';
import whereTheLevelSettles from './safety/where-the-level-settles.ts';
import labelThatCannotBe from './law/label-that-cannot-be.ts';
import nameItMayCarry from './law/name-it-may-carry.ts';
import pointItMisses from './law/point-it-misses.ts';
import whoseRule from './law/whose-rule.ts';
import ageOfAVatting from './law/age-of-a-vatting.ts';
import fullYearsInWood from './law/full-years-in-wood.ts';
import earliestDay from './law/earliest-day.ts';
import floorOfForty from './law/floor-of-forty.ts';
import letDownForCharredOak from './law/let-down-for-charred-oak.ts';
import dutyStrength from './law/duty-strength.ts';
import aStillAtHome from './law/a-still-at-home.ts';
import alcoholNotAccountedFor from './line/alcohol-not-accounted-for.ts';
import alcoholOfThreeVintages from './line/alcohol-of-three-vintages.ts';
import barleyToBottle from './line/barley-to-bottle.ts';
import bottlesFromAHectare from './line/bottles-from-a-hectare.ts';
import bottlesFromAMash from './line/bottles-from-a-mash.ts';
import casksAYear from './line/casks-a-year.ts';
import draffForALitre from './line/draff-for-a-litre.ts';
import energyOfABottle from './line/energy-of-a-bottle.ts';
import fieldsBehindTheCasks from './line/fields-behind-the-casks.ts';
import fuelAndItsGas from './line/fuel-and-its-gas.ts';
import gasToCatch from './line/gas-to-catch.ts';
import heartFromAWashback from './line/heart-from-a-washback.ts';
import impossibleAlongTheLine from './line/impossible-along-the-line.ts';
import impossibleAtBottling from './line/impossible-at-bottling.ts';
import impossibleDraff from './line/impossible-draff.ts';
import impossibleInAYear from './line/impossible-in-a-year.ts';
import impossibleInMalting from './line/impossible-in-malting.ts';
import impossibleInReducing from './line/impossible-in-reducing.ts';
import impossibleInTheCask from './line/impossible-in-the-cask.ts';
import impossibleInTheMash from './line/impossible-in-the-mash.ts';
import impossibleInTheMill from './line/impossible-in-the-mill.ts';
import impossibleInTheSpiritStill from './line/impossible-in-the-spirit-still.ts';
import impossibleInTheWashStill from './line/impossible-in-the-wash-still.ts';
import impossibleInTheWashback from './line/impossible-in-the-washback.ts';
import impossibleMoisture from './line/impossible-moisture.ts';
import lossesOneAfterAnother from './line/losses-one-after-another.ts';
import mashesForAnOrder from './line/mashes-for-an-order.ts';
import sizeOfABottling from './line/size-of-a-bottling.ts';
import sizeOfAField from './line/size-of-a-field.ts';
import sizeOfAStore from './line/size-of-a-store.ts';
import whatADegreeBrings from './line/what-a-degree-brings.ts';
import yieldOfATonne from './line/yield-of-a-tonne.ts';
import signAndCause from './ingredients/sign-and-cause.ts';
import whyItIsMeasured from './ingredients/why-it-is-measured.ts';
import dryGrainInALoad from './ingredients/dry-grain-in-a-load.ts';
import extractByProtein from './ingredients/extract-by-protein.ts';
import extractForNitrogen from './ingredients/extract-for-nitrogen.ts';
import maltAfterScreenings from './ingredients/malt-after-screenings.ts';
import freshWaterInAWeek from './ingredients/fresh-water-in-a-week.ts';
import yeastToATonne from './ingredients/yeast-to-a-tonne.ts';
import whichByProduct from './heat/which-by-product.ts';
import aScald from './heat/a-scald.ts';
import heatForMashWater from './heat/heat-for-mash-water.ts';
import heatSavedByWarmWater from './heat/heat-saved-by-warm-water.ts';
import steamToWarmTheWash from './heat/steam-to-warm-the-wash.ts';
import coolingWaterInSummer from './heat/cooling-water-in-summer.ts';
import howFarTheRiverWarms from './heat/how-far-the-river-warms.ts';
import heatForSyrup from './heat/heat-for-syrup.ts';
import ledgerLineThatCannotBe from './running/ledger-line-that-cannot-be.ts';
import leftInTheReceiver from './running/left-in-the-receiver.ts';
import missingOfWhatWasHandled from './running/missing-of-what-was-handled.ts';
import moreThanTheYearlyLoss from './running/more-than-the-yearly-loss.ts';
import yieldOfDampMalt from './running/yield-of-damp-malt.ts';
import yieldByFinalGravity from './running/yield-by-final-gravity.ts';
import yieldGoneWithTheDraff from './running/yield-gone-with-the-draff.ts';
import whereTheYieldWasLost from './running/where-the-yield-was-lost.ts';
import howStrongIsIt from './visitors/how-strong-is-it.ts';
import aPhoneAmongTheStills from './visitors/a-phone-among-the-stills.ts';
import askedWhatYouDoNotKnow from './visitors/asked-what-you-do-not-know.ts';
import waterForABottle from './visitors/water-for-a-bottle.ts';
import waterInTheGlass from './visitors/water-in-the-glass.ts';
import howMuchOfIt from './visitors/how-much-of-it.ts';
import bottlesGoneToTheAir from './visitors/bottles-gone-to-the-air.ts';
import madeByWhat from './nose/made-by-what.ts';
import whenItComesOver from './nose/when-it-comes-over.ts';
import sampleForAGlass from './nose/sample-for-a-glass.ts';
import goneTooFar from './nose/gone-too-far.ts';
import whichLever from './nose/which-lever.ts';
import waterForNosing from './nose/water-for-nosing.ts';

export const questionKinds: readonly QuestionKind[] = [
  maltFromBarley,
  barleyForMalt,
  barleyAndLand,
  alcoholOfAHectare,
  landForAYear,
  germinationCount,
  cornsToCount,
  moistureOnDryBasis,
  steepWater,
  sampleMoisture,
  steepUptake,
  kiln,
  kilnFreeDrying,
  peatBlend,
  proteinFromNitrogen,
  maltAnalysis,
  fermentabilityFromGravities,
  predictedSpiritYield,
  maltingOrder,
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
  strikeWater,
  mashTemperature,
  fahrenheitAndCelsius,
  conversion,
  conversionCurve,
  washing,
  successiveWaters,
  returnedWorts,
  wortMass,
  extractInWort,
  efficiencyOfWort,
  mashEfficiency,
  draff,
  draffInAWeek,
  extractHeldByDraff,
  extractLost,
  mashingOrder,
  mashRescue,
  gravityReadWarm,
  wortCooler,
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
  strengthFromAlcohol,
  massOfSpirit,
  massPercent,
  strengthFromMassPercent,
  volumeMadeInMixing,
  contractionEstimate,
  mixingThatCannotBe,
  reduceToStrength,
  strengthFromDensity,
  strengthFromDensityInAir,
  warmTank,
  platoFromTable,
  usProof,
  strengthFromOldProof,
  usProofGallons,
  alcoholFromProofGallons,
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
  labelThatCannotBe,
  nameItMayCarry,
  pointItMisses,
  whoseRule,
  ageOfAVatting,
  fullYearsInWood,
  earliestDay,
  floorOfForty,
  letDownForCharredOak,
  dutyStrength,
  aStillAtHome,
  alcoholNotAccountedFor,
  alcoholOfThreeVintages,
  barleyToBottle,
  bottlesFromAHectare,
  bottlesFromAMash,
  casksAYear,
  draffForALitre,
  energyOfABottle,
  fieldsBehindTheCasks,
  fuelAndItsGas,
  gasToCatch,
  heartFromAWashback,
  impossibleAlongTheLine,
  impossibleAtBottling,
  impossibleDraff,
  impossibleInAYear,
  impossibleInMalting,
  impossibleInReducing,
  impossibleInTheCask,
  impossibleInTheMash,
  impossibleInTheMill,
  impossibleInTheSpiritStill,
  impossibleInTheWashStill,
  impossibleInTheWashback,
  impossibleMoisture,
  lossesOneAfterAnother,
  mashesForAnOrder,
  sizeOfABottling,
  sizeOfAField,
  sizeOfAStore,
  whatADegreeBrings,
  yieldOfATonne,
  signAndCause,
  whyItIsMeasured,
  dryGrainInALoad,
  extractByProtein,
  extractForNitrogen,
  maltAfterScreenings,
  freshWaterInAWeek,
  yeastToATonne,
  whichByProduct,
  aScald,
  heatForMashWater,
  heatSavedByWarmWater,
  steamToWarmTheWash,
  coolingWaterInSummer,
  howFarTheRiverWarms,
  heatForSyrup,
  ledgerLineThatCannotBe,
  leftInTheReceiver,
  missingOfWhatWasHandled,
  moreThanTheYearlyLoss,
  yieldOfDampMalt,
  yieldByFinalGravity,
  yieldGoneWithTheDraff,
  whereTheYieldWasLost,
  howStrongIsIt,
  aPhoneAmongTheStills,
  askedWhatYouDoNotKnow,
  waterForABottle,
  waterInTheGlass,
  howMuchOfIt,
  bottlesGoneToTheAir,
  madeByWhat,
  whenItComesOver,
  sampleForAGlass,
  goneTooFar,
  whichLever,
  waterForNosing,
];
