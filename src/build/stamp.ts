// The stamp of a build, as it is printed: the version of the book, and a short hash of its sums, its tables and its built-in house.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
/** All that a figure of the book is reckoned from. A corrected sentence is no corrected sum, and keeps the stamp. */
const RECKONED_FROM = ['src/core', 'content/houses'];
const LENGTH = 6; // hexadecimal digits: one chance in 16 million that two builds look alike

/** “0.1.0-ab12cd” of the project in a folder. */
export function stampOf(folder: string = root): string {
  const hash = createHash('sha256');
  for (const part of RECKONED_FROM)
    for (const file of readdirSync(join(folder, part), { recursive: true, encoding: 'utf8' }).sort())
      if (/\.(ts|json)$/.test(file))
        hash.update(`${file.replaceAll('\\', '/')}\n`).update(readFileSync(join(folder, part, file)));
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
  return `${version}-${hash.digest('hex').slice(0, LENGTH)}`;
}
