// How soon a tool can be used on a slow line and a slow processor, and the longest task on the way: `npm run first-question`, after a build.
import { chromium } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { whileServed } from './served.ts';

const LINE = { latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 0.75e6 / 8 }; // ms, bytes/s: a slow mobile line
const SLOWED = 4;
const WANTED = 2500; // ms until a tool can be used
const LONGEST = 200; // ms of one task
const TIMES = 3; // the middle one counts

/** Each tool with what shows that it can be used. */
const tools: Readonly<Record<string, string>> = {
  '/practice/': '.question .prompt',
  '/sheets/': '.preview .questions li',
  '/script/': 'astro-island:not([ssr]) textarea',
  '/cross-check/': 'astro-island:not([ssr]) #quoted-add',
  '/search/': 'astro-island:not([ssr]) #search-words',
  '/sums/what-if/': 'astro-island:not([ssr]) .calculator',
  '/house/': 'astro-island:not([ssr]) .field',
};

/** Notes, in the page itself, when something first stands there and how long tasks take. */
function watch(selector: string): void {
  const notes = { seen: 0, longest: 0 };
  Object.assign(globalThis, { notes });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) notes.longest = Math.max(notes.longest, duration);
  }).observe({ type: 'longtask', buffered: true });
  const look = () => {
    if (document.querySelector(selector)) notes.seen = performance.now();
    else requestAnimationFrame(look);
  };
  look();
}

const middle = (all: readonly number[]) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!;

await whileServed(async (site) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(
    `Chromium ${browser.version()}, 390 × 844, 1.6 Mb/s, ${LINE.latency} ms there and back, processor slowed ${SLOWED} times; the middle of ${TIMES}.`,
  );
  let isOver = false;
  for (const [address, selector] of Object.entries(tools)) {
    const seen: number[] = [];
    const tasks: number[] = [];
    let requests = 0;
    for (let i = 0; i < TIMES; i++) {
      const context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        serviceWorkers: 'block',
      });
      const page = await context.newPage();
      const inspector = await context.newCDPSession(page);
      await inspector.send('Network.enable');
      await inspector.send('Network.emulateNetworkConditions', { offline: false, ...LINE });
      await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
      await page.addInitScript(watch, selector);
      requests = 0;
      page.on('request', () => requests++);
      await page.goto(site + address, { waitUntil: 'networkidle' });
      await page.waitForSelector(selector);
      await page.waitForTimeout(500);
      const notes = await page.evaluate(() => (globalThis as unknown as { notes: { seen: number; longest: number } }).notes); // prettier-ignore
      seen.push(notes.seen);
      tasks.push(notes.longest);
      await context.close();
    }
    const [soon, task] = [middle(seen), middle(tasks)];
    const over = soon > WANTED || task > LONGEST;
    isOver ||= over;
    console.log(
      `${address.padEnd(16)} usable after ${(soon / 1000).toFixed(2)} s, longest task ${task.toFixed(0)} ms, ${requests} requests${over ? ' — over' : ''}`,
    );
  }
  await browser.close();
  if (isOver) process.exitCode = 1;
});
