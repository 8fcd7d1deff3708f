// The unit tests as the mutants meet them: the quick ones first, because one that fails ends the run, and without what reads the whole tree.
import { mergeConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import ordinary from '../vitest.config.ts';

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const took = (file: TestSpecification) => this.ctx.cache.getTestSpecificationResult(file)?.duration ?? 0;
    return [...files].sort((a, b) => took(a) - took(b));
  }
}

/** Tests that take ten seconds or more alone: only what no other sees is tried with them. */
const LONG = [
  'asking/{strangers,entries}',
  'walk/{cut,stale}',
  'exercises/worksheet',
  'core/{reconcile,thrice-quoted}',
  'talk/{script,left-out,paragraphs}',
  'calculators/calculators',
  'fuzz/fuzz',
];
const folders = process.env['MUTANTS_TESTS']; // a list of folders of tests, as `core,house`
const folderTests = folders ? folders.split(',').map((folder) => `tests/${folder}/**/*.test.ts`) : undefined;
const { include, ...rest } = ordinary.test!;
export default mergeConfig(
  { ...ordinary, test: rest },
  {
    test: {
      include: folderTests ?? include,
      exclude: ['readme', 'layers', 'islands/spread', ...(process.env['MUTANTS_LONG'] ? [] : LONG)].map(
        (test) => `tests/${test}.test.ts`,
      ),
      setupFiles: ['tests/mutation/no-clock.ts'],
      testTimeout: 300_000,
      hookTimeout: 300_000,
      sequence: { sequencer: QuickFirst },
    },
  },
);
