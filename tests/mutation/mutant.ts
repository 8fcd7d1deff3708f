// A mutant by its place and what it puts there.
import { relative, resolve } from 'node:path';
import type { Mutant } from '@stryker-mutator/api/core';

type Placed = Pick<Mutant, 'fileName' | 'location' | 'replacement'>;

/** Its file from the root, and the range that it replaces, as Stryker's option `mutate` takes it. */
export const placeOf = ({ fileName, location: { start, end } }: Placed): string =>
  `${relative(process.cwd(), resolve(fileName))}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`;

export const keyOf = (mutant: Placed): string => `${placeOf(mutant)} ${mutant.replacement}`;
