// The calculators of milling.
import dustClass from './dust-class.ts';
import dustCloud from './dust-cloud.ts';
import gristSplit from './grist-split.ts';
import millAndBin from './mill-and-bin.ts';
import sieveTest from './sieve-test.ts';
import sizeCurve from './size-curve.ts';

export const milling = [gristSplit, sieveTest, sizeCurve, millAndBin, dustCloud, dustClass];
