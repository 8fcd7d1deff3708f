// The calculators of malting.
import barleyAndLand from './barley-and-land.ts';
import barleyForMalt from './barley-for-malt.ts';
import germinationCount from './germination-count.ts';
import germinationPlan from './germination-plan.ts';
import kiln from './kiln.ts';
import maltAnalysis from './malt-analysis.ts';
import peatBlend from './peat-blend.ts';
import predictedSpiritYield from './predicted-spirit-yield.ts';
import steepFit from './steep-fit.ts';
import steepUptake from './steep-uptake.ts';

export const malting = [
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
];
