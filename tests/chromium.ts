// Finds the Chromium that the browser tests run in, or says exactly what to do.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from '@playwright/test';

// The headless shell is Chromium without windows: the same pages, in two thirds of the time.
const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
];

/** Path of a Chromium: the one named in CHROMIUM, one on the PATH, or the one that Playwright installed. */
export function findChromium(): string {
  const onPath = NAMES.flatMap((name) =>
    (process.env['PATH'] ?? '').split(delimiter).map((folder) => join(folder, name)),
  );
  const found = [process.env['CHROMIUM'], ...onPath, chromium.executablePath()].find(
    (path) => path && existsSync(path),
  );
  if (found) return found;
  throw new Error(
    'The browser tests need Chromium and found none. On Debian or Ubuntu run\n' +
      '  apt-get install -y --no-install-recommends chromium-headless-shell\n' +
      'elsewhere run\n' +
      '  npx playwright install chromium\n' +
      'or set CHROMIUM to the path of one; then run the tests again.',
  );
}
