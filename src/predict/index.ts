// Every guess of the book, in its order.
import type { Predict } from './define.ts';
import { distilling } from './distilling.ts';
import { fermenting } from './fermenting.ts';
import { malting } from './malting.ts';
import { mashing } from './mashing.ts';
import { maturing } from './maturing.ts';
import { milling } from './milling.ts';

export const predicts: readonly Predict[] = [
  ...malting,
  ...milling,
  ...mashing,
  ...fermenting,
  ...distilling,
  ...maturing,
];
