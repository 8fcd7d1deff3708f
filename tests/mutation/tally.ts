// Counts the verdicts of a run of mutants, and prints those that nobody saw.
import { readFileSync } from 'node:fs';
import type { MutantResult } from '@stryker-mutator/api/core';
import { keyOf, placeOf } from './mutant.ts';
import { typesSee } from './types-see.ts';

const SEEN = new Set(['Killed', 'Timeout', 'RuntimeError']);

/** The half width of the 95 % interval of a share (normal, with the finite population's correction), in per cent. */
export function errorOf(share: number, drawn: number, all: number): number {
  const finite = all > drawn ? (all - drawn) / (all - 1) : 0;
  return 100 * 1.96 * Math.sqrt(((share * (1 - share)) / drawn) * finite);
}

export function tally(lines: string, all: number): void {
  const read = (file: string): string[] => readFileSync(file, 'utf8').trim().split('\n');
  const results = read(lines).map((line) => JSON.parse(line) as MutantResult);
  const equal = JSON.parse(readFileSync('tests/mutation/equal.json', 'utf8')) as Record<string, string>;
  const unseen = results.filter(({ status }) => !SEEN.has(status));
  const alike = unseen.filter((mutant) => keyOf(mutant) in equal);
  const byTypes = typesSee(unseen.filter((mutant) => !alike.includes(mutant)));
  const left = unseen.filter((mutant) => !alike.includes(mutant) && !byTypes.has(mutant));
  for (const mutant of left)
    console.log(`${placeOf(mutant)} ${mutant.mutatorName} (${mutant.status}): ${mutant.replacement}`);
  const judged = results.length - alike.length;
  const share = (judged - left.length) / judged;
  console.log(
    `${(100 * share).toFixed(1)} % seen, ± ${errorOf(share, judged, all).toFixed(1)}: ${judged - left.length} of ${judged}, ` +
      `${byTypes.size} of them by the types; ${alike.length} more change nothing that can be seen; drawn from ${all}`,
  );
}

if (import.meta.main) tally(process.argv[2]!, Number(process.argv[3]));
