// How many calculators, and how many of their results, an example printed elsewhere checks.
import { sources } from '../core/sources.ts';
import type { AnyCalculator } from './define.ts';

export interface WorkedCount {
  readonly calculators: number;
  readonly results: number;
}

/** All of them, and those that a published source has worked: counted by name, each result once. */
export function workedExamples(all: readonly AnyCalculator[]): {
  readonly all: WorkedCount;
  readonly published: WorkedCount;
} {
  const checked = all.map(
    ({ examples }) =>
      new Set(
        examples
          .filter(({ source }) => sources[source].standing === 'published')
          .flatMap(({ gives }) => Object.keys(gives)),
      ).size,
  );
  const sum = (counts: readonly number[]) => counts.reduce((total, each) => total + each, 0);
  return {
    all: { calculators: all.length, results: sum(all.map(({ outputs }) => Object.keys(outputs).length)) },
    published: { calculators: checked.filter((each) => each > 0).length, results: sum(checked) },
  };
}
