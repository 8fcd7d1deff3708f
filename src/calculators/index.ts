// Every calculator of the handbook.
import type { AnyCalculator } from './define.ts';
import { distilling } from './distilling/index.ts';
import { fermenting } from './fermenting/index.ts';
import { malting } from './malting/index.ts';
import { mashing } from './mashing/index.ts';
import { maturing } from './maturing/index.ts';
import { milling } from './milling/index.ts';

export const calculators: readonly AnyCalculator[] = [
  ...malting,
  ...milling,
  ...mashing,
  ...fermenting,
  ...distilling,
  ...maturing,
];
