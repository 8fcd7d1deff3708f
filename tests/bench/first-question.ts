// How soon a tool can be used on a slow line and a slow processor, and the longest task on the way, there and on pages to read: `npm run first-question`, after a build.
import { chromium } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { longestTask } from './longest-task.ts';
import { whileServed } from './served.ts';

const LINE = { latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 0.75e6 / 8 }; // ms, bytes/s: a slow mobile line
const SLOWED = 4;
const WANTED = 2500; // ms until a tool can be used
const LONGEST = 200; // ms of one task there: the main thread's own time on this processor, so many times over
const TIMES = 3; // the middle one counts; of tasks the shortest, as other programs can only lengthen them

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

/** Pages whose tasks are looked at besides: of each sort the one with most in it. */
const others = ['/', '/distilling/work/', '/mashing/', '/house/week/', '/house/stock/', '/house/figures/', '/cards/', '/walk/', '/shift/', '/glossary/', '/accuracy/']; // prettier-ignore

/** Notes, in the page itself, when something first stands there. */
function watch(selector: string): void {
  const look = () => {
    if (document.querySelector(selector)) Object.assign(globalThis, { seenAt: performance.now() });
    else requestAnimationFrame(look);
  };
  look();
}

const middle = (all: readonly number[]) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!;

await whileServed(async (site) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(
    `Chromium ${browser.version()}, 390 × 844, 1.6 Mb/s, ${LINE.latency} ms there and back, processor slowed ${SLOWED} times; a task by the main thread’s own time, ${SLOWED} times over.`,
  );
  let isOver = false;
  const taskOf = async (address: string) => {
    const tasks: number[] = [];
    for (let i = 0; i < TIMES; i++) tasks.push(await longestTask(browser, site + address, LINE));
    return SLOWED * Math.min(...tasks);
  };
  for (const [address, selector] of Object.entries(tools)) {
    const seen: number[] = [];
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
      seen.push(await page.evaluate(() => (globalThis as unknown as { seenAt: number }).seenAt));
      await context.close();
    }
    const [soon, task] = [middle(seen), await taskOf(address)];
    const over = soon > WANTED || task > LONGEST;
    isOver ||= over;
    console.log(
      `${address.padEnd(19)} usable after ${(soon / 1000).toFixed(2)} s, longest task ${task.toFixed(0)} ms, ${requests} requests${over ? ' — over' : ''}`,
    );
  }
  for (const address of others) {
    const task = await taskOf(address);
    isOver ||= task > LONGEST;
    console.log(`${address.padEnd(19)} longest task ${task.toFixed(0)} ms${task > LONGEST ? ' — over' : ''}`);
  }
  await browser.close();
  if (isOver) process.exitCode = 1;
});
