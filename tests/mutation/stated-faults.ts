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

/** Builds with the fault in its file, and says whether the test that must see it failed. */
function isSeen(fault: StatedFault): boolean {
  const file = join(copy, fault.file);
  const sound = readFileSync(file, 'utf8');
  if (sound.split(fault.text).length !== 2)
    throw new RangeError(`“${fault.text}” does not stand once in ${fault.file}.`);
  writeFileSync(
    file,
    sound.replace(fault.text, () => fault.by),
  );
  try {
    return !builds() || !passes(fault);
  } finally {
    writeFileSync(file, sound);
  }
}

const asked = process.argv.slice(2);
const chosen = faults.filter(({ what }) => asked.length === 0 || asked.some((words) => what.includes(words)));
try {
  if (!builds()) throw new Error('The book does not build without a fault.');
  const blind = chosen.filter((fault) => !passes(fault)); // a test that fails without the fault sees nothing
  for (const { what, spec, test } of blind)
    console.log(`fails without a fault, or is not there: ${spec} “${test}” (${what})`);
  const judged = chosen.filter((fault) => !blind.includes(fault));
  let seen = 0;
  for (const fault of judged) {
    const is = isSeen(fault);
    seen += Number(is);
    console.log(`${is ? 'seen' : 'NOT SEEN'}: ${fault.what} (${fault.spec})`);
  }
  console.log(`${seen} of ${chosen.length} stated faults seen`);
} finally {
  rmSync(copy, { recursive: true });
}
