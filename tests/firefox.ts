// Finds the Firefox that some of the browser tests also run in; where there is none, those are left out.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['firefox-esr', 'firefox'];

/** Path of a Firefox: the one named in FIREFOX, or one on the PATH. */
export function findFirefox(): string | undefined {
  const onPath = NAMES.flatMap((name) =>
    (process.env['PATH'] ?? '').split(delimiter).map((folder) => join(folder, name)),
  );
  return [process.env['FIREFOX'], ...onPath].find((path) => path && existsSync(path));
}
