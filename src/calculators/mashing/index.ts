// The calculators of mashing.
import extractInWort from './extract-in-wort.ts';
import strikeWater from './strike-water.ts';

export const mashing = [extractInWort, strikeWater];
