// How the time of a build grows with the chapters: `npm run build-time` builds copies of the book with 7, 70 and 350 of them.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const parts = ['src', 'content', 'public', 'tests', 'astro.config.mjs', 'package.json', 'tsconfig.json'];
const COUNTS = [7, 70, 350];

/** A copy of the project with so many chapters: the six stages, and copies of chapters without calculators of their own stage. */
function copyWith(count: number): string {
  const folder = mkdtempSync(join(tmpdir(), 'handbook-'));
  for (const part of parts) cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  const chapters = join(folder, 'content', 'chapters');
  const all = readdirSync(chapters);
  const source = readFileSync(join(chapters, 'malting', 'explain.mdx'), 'utf8');
  for (let i = all.length; i < count; i++) {
    const text = source
      .replace(/^order: .*$/m, `order: ${100 + i}`)
      .replace(/^title: .*$/m, `title: Copy ${i}`)
      .replace(/^stage: .*\n/m, '');
    cpSync(join(chapters, 'malting'), join(chapters, `copy-${i}`), { recursive: true });
    writeFileSync(join(chapters, `copy-${i}`, 'explain.mdx'), text);
  }
  const surplus = all.filter(
    (id) => !['malting', 'milling', 'mashing', 'fermenting', 'distilling', 'maturing', 'safety'].includes(id),
  );
  if (count < all.length) for (const id of surplus) rmSync(join(chapters, id), { recursive: true });
  return folder;
}

const seconds: number[] = [];
for (const count of COUNTS) {
  const folder = copyWith(count);
  const before = performance.now();
  execFileSync(join(root, 'node_modules', '.bin', 'astro'), ['build'], { cwd: folder, stdio: 'pipe' });
  seconds.push((performance.now() - before) / 1000);
  rmSync(folder, { recursive: true });
  const perChapter =
    seconds.length === 1
      ? ''
      : `, ${((seconds.at(-1)! - seconds[0]!) / (count - COUNTS[0]!)).toFixed(3)} s for each chapter more`;
  console.log(`${String(count).padStart(4)} chapters: ${seconds.at(-1)!.toFixed(1)} s${perChapter}`);
}
console.log(
  `A chapter more costs ${((seconds[2]! - seconds[1]!) / (COUNTS[2]! - COUNTS[1]!) / ((seconds[1]! - seconds[0]!) / (COUNTS[1]! - COUNTS[0]!))).toFixed(2)} times as much in a large book as in a small one.`,
);
