// Kinds of question on malting.
import type { QuestionKind } from '../../question.ts';
import alcoholOfAHectare from './alcohol-of-a-hectare.ts';
import barleyAndLand from './barley-and-land.ts';
import barleyForMalt from './barley-for-malt.ts';
import cornsToCount from './corns-to-count.ts';
import fermentabilityFromGravities from './fermentability-from-gravities.ts';
import germinationCount from './germination-count.ts';
import kilnFreeDrying from './kiln-free-drying.ts';
import kiln from './kiln.ts';
import landForAYear from './land-for-a-year.ts';
import maltAnalysis from './malt-analysis.ts';
import maltFromBarley from './malt-from-barley.ts';
import maltingOrder from './malting-order.ts';
import moistureOnDryBasis from './moisture-on-dry-basis.ts';
import peatBlend from './peat-blend.ts';
import predictedSpiritYield from './predicted-spirit-yield.ts';
import proteinFromNitrogen from './protein-from-nitrogen.ts';
import sampleMoisture from './sample-moisture.ts';
import steepUptake from './steep-uptake.ts';
import steepWater from './steep-water.ts';

export const malting: readonly QuestionKind[] = [
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
];
