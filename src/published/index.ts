// Every printed figure beside the computed one. The gate (core/reference.test.ts) and the meter (accuracy.ts) both read this.
import { density } from './density.ts';
import { gauging } from './gauging.ts';
import { small } from './sums.ts';
import { vapour } from './vapour.ts';
import { wort } from './wort.ts';
import type { Group } from './row.ts';

export type { Group, Row } from './row.ts';

export const published: readonly Group[] = [...density, ...gauging, ...wort, ...vapour, ...small];
