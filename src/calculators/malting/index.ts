// The calculators of malting.
import barleyForMalt from './barley-for-malt.ts';
import predictedSpiritYield from './predicted-spirit-yield.ts';

export const malting = [barleyForMalt, predictedSpiritYield];
