// Speed budgets of the built site: script, styles, first view, layout shift on a phone (that on a desk: every-page). Sizes are of brotli, as a good server sends them.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { expect, test, type Page } from '@playwright/test';
import { addresses, addUpShifts, shiftOf } from './pages.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const KB = 1000;
const SCRIPT = 50 * KB; // script of a page to read: the house, its line, the live figures, the pinned alcohol and what goes in and comes out, drawn
const FIELDS = 70 * KB; // with fields: one calculator or the figures of a stage; the reader of words and units comes with the first touch
const DESK = 84 * KB; // where a house is handed on, its casks are kept or its week is set out: signatures, a register, a timetable
const TOOL = 90 * KB; // of a page that draws questions or reads scripts, until it can be used
const REQUESTS = 38;
const REQUESTS_OF_A_TOOL = 52; // a sheet of ten questions fetches ten kinds of them
const STYLES = 15 * KB;
const FIRST_VIEW = 150 * KB; // page, styles, script, faces, data
/** Pages to read that follow what the reader has done: practice, guesses and shifts that are kept. */
const follows = ['/first-weeks/'];
const desks = ['/house/hand-on/', '/house/stock/', '/house/week/'];
/** Pages that draw questions, or hold a vocabulary or an index, each with what shows that it can be used. */
const tools: Readonly<Record<string, string>> = {
  '/practice/': '.question .prompt',
  '/sheet/': '.taking',
  '/sheet/own/': '.taking',
  '/sheet/sealed/': '.taking',
  '/sheets/sealed/': '#sealed-key-title',
  '/class/': '#class-results',
  '/sheets/own/': '.own-found li:first-child',
  '/sheets/questions/': '#own-q-title',
  '/sheets/': '.preview .questions li:nth-child(10)',
  '/script/': 'main textarea',
  '/cross-check/': '#quoted-add',
  '/walk/': '#walk-cut',
  '/guide-file/': '.guide-rooms',
  '/guide-file/figures/': '.guide-file',
  '/guide-file/asked/': '.guide-file',
  '/guide-file/tell/': '#telling-said',
  '/guide-file/sums/': '#guide-sum',
  '/shift/': '#shift-begin',
  '/shift/mash-tun/': '#shift-begin',
  '/shift/washback/': '#shift-begin',
  '/shift/casks/': '#shift-begin',
  '/faults/': '#fault-begin',
  '/search/': '#search-words',
};

/** What a file costs on the wire: faces are packed already. */
function cost(path: string): number {
  const bytes = readFileSync(join(dist, path.endsWith('/') ? `${path}index.html` : path));
  return path.endsWith('.woff2') ? bytes.length : brotliCompressSync(bytes).length;
}

/** Opens a page as a new reader does and returns what it fetched, once it is at rest. */
async function fetched(page: Page, address: string): Promise<readonly string[]> {
  const asked = new Set<string>();
  page.on(
    'request',
    (request) => request.serviceWorker() === null && asked.add(new URL(request.url()).pathname),
  );
  await page.goto(address);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await expect(page.locator(tools[address] ?? 'main')).toBeVisible();
  await page.waitForLoadState('networkidle');
  return [...asked].filter((path) => !path.endsWith('/offline.js'));
}
const sum = (paths: readonly string[], ending: RegExp) =>
  paths.filter((path) => ending.test(path)).reduce((total, path) => total + cost(path), 0);

for (const address of addresses)
  test(`${address} keeps to its budgets and does not shift`, async ({ page }) => {
    await page.addInitScript(addUpShifts);
    await page.setViewportSize({ width: 390, height: 844 });
    const paths = await fetched(page, address);
    expect(await shiftOf(page), '390 px').toBeLessThan(0.001);
    const view = /\/$|\.(js|css|woff2|svg|html|json)$/;
    const isTool = address in tools;
    const [script, styles, all] = [sum(paths, /\.js$/), sum(paths, /\.css$/), sum(paths, view)];
    console.log(
      `${address.padEnd(24)} script ${(script / KB).toFixed(1)} kB, styles ${(styles / KB).toFixed(1)} kB, first view ${(all / KB).toFixed(1)} kB, ${paths.length} requests`,
    );
    expect(script, 'the page’s script was counted').toBeGreaterThan(5 * KB);
    const hasFields = (await page.locator('main :is(.field, .calculator, [data-handle])').count()) > 0;
    expect(script, 'script').toBeLessThanOrEqual(
      isTool
        ? TOOL
        : desks.includes(address)
          ? DESK
          : hasFields || follows.includes(address)
            ? FIELDS
            : SCRIPT,
    );
    expect(paths.length, 'requests').toBeLessThanOrEqual(isTool ? REQUESTS_OF_A_TOOL : REQUESTS);
    expect(all, 'first view').toBeLessThanOrEqual(FIRST_VIEW);
    expect(styles, 'styles').toBeLessThanOrEqual(STYLES);
  });
