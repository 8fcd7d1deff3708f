// Every printed figure beside the computed one. The gate (core/reference.test.ts) and the meter (accuracy.ts) both read this.
import { density } from './published/density.ts';
import { gauging } from './published/gauging.ts';
import { small } from './published/sums.ts';
import { vapour } from './published/vapour.ts';
import { wort } from './published/wort.ts';
import type { Group } from './published/row.ts';

export type { Group, Row } from './published/row.ts';

export const published: readonly Group[] = [...density, ...gauging, ...wort, ...vapour, ...small];
