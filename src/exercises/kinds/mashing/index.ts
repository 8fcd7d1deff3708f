// Kinds of question on mashing.
import type { QuestionKind } from '../../question.ts';
import conversion from './conversion.ts';
import conversionCurve from './conversion-curve.ts';
import draff from './draff.ts';
import draffInAWeek from './draff-in-a-week.ts';
import efficiencyOfWort from './efficiency-of-wort.ts';
import extractHeldByDraff from './extract-held-by-draff.ts';
import extractInWort from './extract-in-wort.ts';
import extractLost from './extract-lost.ts';
import fahrenheitAndCelsius from './fahrenheit-and-celsius.ts';
import gravityReadWarm from './gravity-read-warm.ts';
import mashEfficiency from './mash-efficiency.ts';
import mashRescue from './mash-rescue.ts';
import mashTemperature from './mash-temperature.ts';
import mashingOrder from './mashing-order.ts';
import returnedWorts from './returned-worts.ts';
import strikeWater from './strike-water.ts';
import successiveWaters from './successive-waters.ts';
import washing from './washing.ts';
import wortCooler from './wort-cooler.ts';
import wortMass from './wort-mass.ts';

export const mashing: readonly QuestionKind[] = [
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
];
