// Every printed figure beside the computed one. The gate (core/reference.test.ts) and the meter (accuracy.ts) both read this.
import { densityGroups } from './density.ts';
import { gaugingGroups } from './gauging.ts';
import { sumGroups } from './sums.ts';
import { vapourGroups } from './vapour.ts';
import { wortGroups } from './wort.ts';
import type { Group } from './row.ts';

export type { Group, Row } from './row.ts';

export const published: readonly Group[] = [
  ...densityGroups,
  ...gaugingGroups,
  ...wortGroups,
  ...vapourGroups,
  ...sumGroups,
];
