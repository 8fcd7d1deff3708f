// Plants small faults in the code one at a time and counts those that no unit test sees: `npm run mutants -- src/core --sample 400`, or `--whole`.
import { createHash } from 'node:crypto';
import { globSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { keyOf, placeOf } from './mutant.ts';
import { tally, unseenIn } from './tally.ts';

const { values, positionals } = parseArgs({
  options: {
    sample: { type: 'string', default: '400' }, // how many are drawn of all that the folders hold
    seed: { type: 'string', default: '1' }, // another seed, other mutants
    tests: { type: 'string', default: '' }, // folders of tests that are run, as `core,house`; all of them if none is named
    again: { type: 'boolean', default: false }, // tries those that an earlier run left unseen, with the long tests too
    whole: { type: 'boolean', default: false },
  },
  allowPositionals: true,
});
const cache = join('node_modules', '.cache', 'mutants');
const name = `${positionals.join('+').replaceAll('/', '-')}-${values.whole ? 'whole' : `${values.sample}-${values.seed}`}`;
const drawnFile = join(cache, `${name}.drawn.json`);
const lines = join(cache, `${name}.jsonl`);

const silent = { debug() {}, info() {}, isDebugEnabled: () => false } as unknown as ConstructorParameters<
  typeof Instrumenter
>[0];
const files = positionals
  .flatMap((path) => (statSync(path).isDirectory() ? globSync(`${path}/**/*.ts`) : [path]))
  .sort()
  .map((file) => ({ name: file, mutate: true, content: readFileSync(file, 'utf8') }));
const { mutants } = await new Instrumenter(silent).instrument(files, {
  plugins: null,
  excludedMutations: [],
  ignorers: [],
  noHeader: false,
});
const lot = (key: string): string => createHash('sha256').update(`${values.seed} ${key}`).digest('hex');
const unseen = values.again ? new Set(unseenIn(lines).map(keyOf)) : undefined;
const drawn = mutants
  .map((mutant) => ({ mutant, lot: lot(keyOf(mutant)) }))
  .sort((a, b) => (a.lot < b.lot ? -1 : 1))
  .slice(0, values.whole ? mutants.length : Number(values.sample))
  .map(({ mutant }) => mutant)
  .filter((mutant) => unseen?.has(keyOf(mutant)) ?? true);
mkdirSync(cache, { recursive: true });
writeFileSync(drawnFile, JSON.stringify(drawn.map(keyOf)));
if (!values.again) rmSync(lines, { force: true });
process.env['MUTANTS_DRAWN'] = drawnFile;
process.env['MUTANTS_LINES'] = lines;
process.env['MUTANTS_TESTS'] = values.tests;
if (values.again) process.env['MUTANTS_LONG'] = 'too';
process.env['SEEDS'] ??= '8'; // draws of each kind of question
console.log(`${drawn.length} drawn of ${mutants.length} mutants; verdicts come in ${lines}`);

const options = {
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: true },
  plugins: ['@stryker-mutator/vitest-runner', join(import.meta.dirname, 'sample.ts')],
  checkers: ['drawn'],
  reporters: ['lines'],
  concurrency: 1,
  ignorePatterns: ['dist', '.astro'],
  timeoutMS: 20_000,
  disableTypeChecks: false, // tests read files as they are written, and nothing reads the types
  dryRunTimeoutMinutes: 60,
  allowConsoleColors: false,
};
if (drawn.length > 0)
  await new Stryker({ ...options, mutate: [...new Set(drawn.map(placeOf))] }).runMutationTest();
tally(lines, mutants.length);
