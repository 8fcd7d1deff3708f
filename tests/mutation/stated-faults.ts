// Plants each stated fault in a copy of the book, builds it and runs the browser test that must see it: `npm run stated-faults`, or `-- tabs caution` for those whose words are named.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { faults, type StatedFault } from './faults.ts';

const root = join(import.meta.dirname, '..', '..');
const copy = mkdtempSync(join(tmpdir(), 'stated-faults-'));
for (const part of ['src', 'content', 'public', 'tests', 'astro.config.mjs', 'tsconfig.json', 'package.json'])
  cpSync(join(root, part), join(copy, part), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** Runs a program of the packages in the copy; true when it ends well. */
function runs(program: string, ...parts: string[]): boolean {
  try {
    execFileSync(process.execPath, [join(root, 'node_modules', program), ...parts], { cwd: copy, stdio: 'pipe', env: { ...process.env, CI: '' } });
    return true;
  } catch (error) {
    if (process.env['LOUD']) console.log(String((error as { stdout?: Buffer }).stdout).slice(-3000));
    return false;
  }
} // prettier-ignore
const builds = () => runs('astro/bin/astro.mjs', 'build');
const passes = ({ spec, test }: StatedFault) =>
  runs(
    '@playwright/test/cli.js',
    'test',
    '-c',
    'tests/playwright.config.ts',
    '--project=chromium',
    `${spec}.spec`,
    '-g',
    test,
  );

/** Puts a fault into its file; gives back what puts it right again. */
function plant({ file, text, by }: StatedFault): () => void {
  const path = join(copy, file);
  const sound = readFileSync(path, 'utf8');
  if (sound.split(text).length !== 2) throw new RangeError(`“${text}” does not stand once in ${file}.`);
  writeFileSync(
    path,
    sound.replace(text, () => by),
  );
  return () => writeFileSync(path, sound);
}

const asked = process.argv.slice(2);
const chosen = faults.filter(({ what }) => asked.length === 0 || asked.some((words) => what.includes(words)));
let seen = 0;
try {
  if (!builds()) throw new Error('The book does not build without a fault.');
  const blind = new Set(chosen.filter((fault) => !passes(fault))); // a test that fails without its fault sees nothing
  for (const { what, spec, test } of blind)
    console.log(`NOT SEEN: ${what}; ${spec} “${test}” fails without it`);
  for (const group of Map.groupBy(chosen, ({ build }) => build).values()) {
    const undo = group.map(plant);
    const isBuilt = builds(); // a fault that stops the build is seen by it
    for (const fault of group.filter((each) => !blind.has(each))) {
      const isSeen = !isBuilt || !passes(fault);
      seen += Number(isSeen);
      console.log(`${isSeen ? 'seen' : 'NOT SEEN'}: ${fault.what} (${isBuilt ? fault.spec : 'the build'})`);
    }
    for (const back of undo.reverse()) back();
  }
  console.log(`${seen} of ${chosen.length} stated faults seen`);
} finally {
  rmSync(copy, { recursive: true });
}
