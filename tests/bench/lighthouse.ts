// Lighthouse's four marks of every page, with the settings of the run: `npm run lighthouse`, after a build; `-- desktop` for a desk's computer. It fetches Lighthouse, which is no part of the project.
import { execFile } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { availableParallelism, cpus, loadavg } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { findChromium } from '../chromium.ts';
import { whileServed } from './served.ts';

const LIGHTHOUSE = 'lighthouse@12.8.2';
const [isDesk, only] = [
  process.argv.includes('desktop'),
  process.argv.slice(2).filter((each) => each.startsWith('/')),
];

interface Report {
  readonly categories: Readonly<Record<string, { readonly title: string; readonly score: number }>>;
  readonly audits: Readonly<Record<string, { readonly displayValue?: string }>>;
  readonly configSettings: {
    readonly formFactor: string;
    readonly throttlingMethod: string;
    readonly throttling: Readonly<Record<string, number>>;
    readonly screenEmulation: Readonly<Record<string, unknown>>;
  };
  readonly lighthouseVersion: string;
  readonly environment: { readonly benchmarkIndex: number; readonly hostUserAgent: string };
}

/** Waits for it without stopping this process, which serves the page. */
async function reportOf(address: string): Promise<Report> {
  const { stdout } = await promisify(execFile)(
    'npx',
    [
      '--yes',
      LIGHTHOUSE,
      address,
      '--quiet',
      '--output=json',
      ...(isDesk ? ['--preset=desktop'] : []),
      '--chrome-flags=--headless=new --no-sandbox',
    ],
    {
      env: { ...process.env, CHROME_PATH: findChromium() },
      maxBuffer: 100e6,
    },
  );
  return JSON.parse(stdout) as Report;
}

const dist = join(import.meta.dirname, '..', '..', 'dist');
const pages = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => `/${dirname(file)}/`.replace('/./', '/'))
  .filter((page) => only.length === 0 || only.includes(page))
  .sort();

await whileServed(async (site) => {
  let isFirst = true;
  const lowest: Record<string, number> = {};
  for (const page of pages) {
    const { categories, audits, configSettings, lighthouseVersion, environment } = await reportOf(
      site + page,
    );
    if (isFirst) {
      const { formFactor, throttlingMethod, throttling, screenEmulation } = configSettings;
      console.log(
        `Lighthouse ${lighthouseVersion}, ${formFactor}, throttling by ${throttlingMethod}: ${JSON.stringify(throttling)}; screen ${JSON.stringify(screenEmulation)}; ${environment.hostUserAgent}; ${cpus()[0]?.model}, ${availableParallelism()} cores`,
      );
    }
    isFirst = false;
    const marks = Object.values(categories).map(({ title, score }) => {
      const mark = Math.round(100 * score);
      lowest[title] = Math.min(lowest[title] ?? 100, mark);
      return `${title} ${mark}`;
    });
    const shown = ['first-contentful-paint', 'largest-contentful-paint', 'total-blocking-time', 'speed-index']
      .map((id) => audits[id]?.displayValue?.replaceAll('\u00a0', ' '))
      .join(', ');
    console.log(
      `${page.padEnd(24)} ${marks.join(', ')} (paint, largest, blocked, index: ${shown}; benchmark index ${environment.benchmarkIndex.toFixed(0)}, load ${loadavg()[0]!.toFixed(1)})`,
    );
  }
  console.log(
    `Lowest of ${pages.length} pages: ${Object.entries(lowest)
      .map(([title, mark]) => `${title} ${mark}`)
      .join(', ')}`,
  );
});
