// The calculators of distilling.
import blendTwoSpirits from './blend-two-spirits.ts';
import strengthFromDensity from './strength-from-density.ts';

export const distilling = [blendTwoSpirits, strengthFromDensity];
