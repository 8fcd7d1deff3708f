// Tries the recipes in a copy of the book, with a test runner of its own: each whole, and each with one thing left out. Prints what failed as one line of JSON.
import {
  cpSync,
  existsSync,
  mkdtempSync,
  mkdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createVitest, type Vitest } from 'vitest/node';
import { writeGathered, gathered } from '../../src/build/gather.ts';
import { recipes } from './all.ts';
import type { Edit, LeftOut, Recipe } from './recipe.ts';

/** One way of following a recipe, and what the tests say to it. */
export interface Tried {
  readonly adds: string;
  /** What was left out, or nothing. */
  readonly forgets?: string;
  readonly passed: number;
  readonly failed: readonly string[];
}

const root = join(import.meta.dirname, '..', '..');
const copy = mkdtempSync(join(tmpdir(), 'recipes-'));
process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
for (const part of ['src', 'content', 'tests', 'package.json', 'tsconfig.json', 'README.md', 'DEVELOPERS.md'])
  cpSync(join(root, part), join(copy, part), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** Makes an edit in the copy. */
function make(edit: Edit): void {
  const path = join(copy, edit.file);
  if (!('find' in edit)) {
    mkdirSync(dirname(path), { recursive: true });
    return writeFileSync(path, readFileSync(join(import.meta.dirname, 'new', `${edit.file}.txt`)));
  }
  const text = readFileSync(path, 'utf8');
  if (text.split(edit.find).length !== 2)
    throw new Error(`“${edit.find}” does not stand once in ${edit.file}.`);
  writeFileSync(
    path,
    text.replace(edit.find, () => edit.put),
  );
}

/** Puts a file back as the book has it. */
function putBack(file: string): void {
  if (existsSync(join(root, file))) writeFileSync(join(copy, file), readFileSync(join(root, file)));
  else rmSync(join(copy, file), { force: true });
}

/** Follows a recipe in the copy; a whole step is left out, or a part of one. The files that are now otherwise. */
function follow({ steps }: Recipe, without?: LeftOut): readonly string[] {
  const made: Edit[] = [];
  const take = (edit: Edit) => (make(edit), made.push(edit));
  for (const step of steps)
    if (without?.by !== undefined || !without || !step.leftOut.includes(without)) step.edits.forEach(take);
  if (without?.by !== 'not gathering') {
    without?.by?.forEach(take);
    if (steps.some(({ gathers }) => gathers)) writeGathered(copy);
  }
  return [...new Set([...made.map(({ file }) => file), ...gathered().keys()])];
}

/** Runs files of tests in the copy. */
async function run(
  vitest: Vitest,
  files: readonly string[],
  only?: string,
): Promise<Pick<Tried, 'passed' | 'failed'>> {
  if (only === undefined) vitest.resetGlobalTestNamePattern();
  else vitest.setGlobalTestNamePattern(new RegExp(only));
  const specs = files.map((file) => vitest.getRootProject().createSpecification(join(copy, file)));
  const { testModules: all, unhandledErrors } = await vitest.runTestSpecifications(specs);
  const testModules = all.filter(({ moduleId }) => specs.some((spec) => spec.moduleId === moduleId)); // of earlier runs it knows as well
  const failed = [
    ...unhandledErrors.map(String),
    ...testModules.flatMap((module) => [
      ...module.errors().map(({ message }) => message),
      ...[...module.children.allTests('failed')].flatMap((test) =>
        test.result().errors!.map(({ message, diff = '' }) => `${test.fullName}\n${message}\n${diff}`),
      ),
    ]),
  ];
  return { passed: testModules.flatMap((module) => [...module.children.allTests('passed')]).length, failed };
}

const vitest = await createVitest({
  root: copy,
  config: join(copy, 'tests', 'vitest.config.ts'),
  watch: false,
  reporters: [{}],
  pool: 'threads', // they start faster
});
await vitest.standalone();
const tried: Tried[] = [];
const chosen = recipes.filter(({ adds }) => process.argv.length === 2 || process.argv.includes(adds));
for (const recipe of chosen) {
  const lefts = recipe.steps.flatMap(({ leftOut }) => leftOut);
  for (const left of [undefined, ...lefts]) {
    const changed = follow(recipe, left);
    changed.forEach((file) => vitest.invalidateFile(join(copy, file)));
    const files = left ? [left.test] : [...new Set([...lefts.map(({ test }) => test), ...recipe.tests])];
    const result = await run(vitest, files, recipe.only);
    tried.push({ adds: recipe.adds, ...(left && { forgets: left.forgets }), ...result });
    changed.forEach(putBack);
    changed.forEach((file) => vitest.invalidateFile(join(copy, file)));
  }
}
await vitest.close();
process.exitCode = 0; // that tests failed here is what is looked for
console.log(JSON.stringify(tried));
