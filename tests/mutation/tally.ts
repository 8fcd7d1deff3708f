// Counts the verdicts of a run of mutants, and prints those that nobody saw.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MutantResult } from '@stryker-mutator/api/core';
import { keyOf, placeOf, wordsOf } from './mutant.ts';
import { typesSee } from './types-see.ts';

const SEEN = ['Killed', 'Timeout', 'RuntimeError'];

/** The verdicts of a file, one for each mutant: of several the last that saw it. */
function verdictsIn(lines: string): readonly MutantResult[] {
  const byKey = new Map<string, MutantResult>();
  for (const line of readFileSync(lines, 'utf8').trim().split('\n')) {
    const each = JSON.parse(line) as MutantResult;
    if (!SEEN.includes(byKey.get(keyOf(each))?.status ?? '')) byKey.set(keyOf(each), each);
  }
  return [...byKey.values()];
}
const isUnseen = ({ status }: MutantResult) => !SEEN.includes(status);
export const unseenIn = (lines: string): readonly MutantResult[] => verdictsIn(lines).filter(isUnseen);

/** The half width of the 95 % interval of a share, in per cent: normal law, with the correction for a finite lot. */
function errorOf(share: number, drawn: number, all: number): number {
  return 100 * 1.96 * Math.sqrt(((share * (1 - share)) / drawn) * ((all - drawn) / Math.max(1, all - 1)));
}

/** `equal.json` says of mutants, by their words, why they change nothing that anybody can see. */
export function tally(lines: string, all: number): void {
  const equal = JSON.parse(readFileSync(join(import.meta.dirname, 'equal.json'), 'utf8')) as Record<
    string,
    string
  >;
  const verdicts = verdictsIn(lines);
  const unseen = verdicts.filter(isUnseen);
  const telling = unseen.filter((mutant) => !(wordsOf(mutant) in equal));
  const byTypes = typesSee(telling);
  const left = telling.filter((mutant) => !byTypes.has(mutant));
  for (const each of left) console.log(`${placeOf(each)} ${each.status}\n  ${wordsOf(each)}`);
  const judged = verdicts.length - (unseen.length - telling.length);
  const share = (judged - left.length) / judged;
  console.log(
    `${(100 * share).toFixed(1)} % seen, ± ${errorOf(share, judged, all).toFixed(1)}: ${judged - left.length} of ${judged} that were drawn from ${all}, ` +
      `${byTypes.size} of them by the types; ${unseen.length - telling.length} more change nothing that can be seen`,
  );
}

if (import.meta.main) tally(process.argv[2]!, Number(process.argv[3]));
