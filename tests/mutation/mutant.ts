// A mutant by its place and what it puts there.
import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import type { Mutant } from '@stryker-mutator/api/core';

export type Placed = Pick<Mutant, 'fileName' | 'location' | 'replacement'>;
const fileOf = ({ fileName }: Placed): string => relative(process.cwd(), resolve(fileName));

/** Its file from the root, and the range that it replaces, as Stryker's option `mutate` takes it. */
export const placeOf = (mutant: Placed): string => {
  const { start, end } = mutant.location;
  return `${fileOf(mutant)}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`;
};
export const keyOf = (mutant: Placed): string => `${placeOf(mutant)} ${mutant.replacement}`;

function offset(text: string, { line, column }: { line: number; column: number }): number {
  return text
    .split('\n')
    .slice(0, line)
    .reduce((sum, { length }) => sum + length + 1, column);
}

/** The text that it replaces, and its file with it in place. */
export function put(mutant: Placed): { readonly was: string; readonly text: string } {
  const sound = readFileSync(mutant.fileName, 'utf8');
  const [start, end] = [offset(sound, mutant.location.start), offset(sound, mutant.location.end)];
  return {
    was: sound.slice(start, end),
    text: sound.slice(0, start) + mutant.replacement + sound.slice(end),
  };
}

/** By what it is known wherever its line has gone: its file, what stood there, what it puts. */
export const wordsOf = (mutant: Placed): string =>
  `${fileOf(mutant)}: ${put(mutant).was} → ${mutant.replacement}`;
