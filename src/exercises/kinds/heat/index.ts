// Kinds of question on heat and water.
import type { QuestionKind } from '../../question.ts';
import aScald from './a-scald.ts';
import coolingWaterInSummer from './cooling-water-in-summer.ts';
import heatForMashWater from './heat-for-mash-water.ts';
import heatForSyrup from './heat-for-syrup.ts';
import heatSavedByWarmWater from './heat-saved-by-warm-water.ts';
import howFarTheRiverWarms from './how-far-the-river-warms.ts';
import steamToWarmTheWash from './steam-to-warm-the-wash.ts';
import whichByProduct from './which-by-product.ts';

export const heat: readonly QuestionKind[] = [
  whichByProduct,
  aScald,
  heatForMashWater,
  heatSavedByWarmWater,
  steamToWarmTheWash,
  coolingWaterInSummer,
  howFarTheRiverWarms,
  heatForSyrup,
];
