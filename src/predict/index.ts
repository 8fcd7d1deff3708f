// Every guess of the book, in its order.
import type { Predict } from './define.ts';
import { distillingPredicts } from './distilling.ts';
import { fermentingPredicts } from './fermenting.ts';
import { maltingPredicts } from './malting.ts';
import { mashingPredicts } from './mashing.ts';
import { maturingPredicts } from './maturing.ts';
import { millingPredicts } from './milling.ts';

export const predicts: readonly Predict[] = [
  ...maltingPredicts,
  ...millingPredicts,
  ...mashingPredicts,
  ...fermentingPredicts,
  ...distillingPredicts,
  ...maturingPredicts,
];
