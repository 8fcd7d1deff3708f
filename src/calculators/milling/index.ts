// The calculators of milling.
import gristSplit from './grist-split.ts';

export const milling = [gristSplit];
