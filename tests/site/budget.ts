// What a page of the built site may cost a new reader: script, styles, first view, requests. Sizes are of brotli, as a good server sends them.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { expect, type Page } from '@playwright/test';

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

const costs = new Map<string, number>(); // most files are of many pages, and packing one takes long
/** What a file costs on the wire: faces are packed already. */
function cost(path: string): number {
  const known = costs.get(path);
  if (known !== undefined) return known;
  const bytes = readFileSync(join(dist, path.endsWith('/') ? `${path}index.html` : path));
  const packed = path.endsWith('.woff2') ? bytes.length : brotliCompressSync(bytes).length;
  costs.set(path, packed);
  return packed;
}

/** Opens a page as a new reader does and returns what it fetched, once it is at rest. */
export async function fetched(page: Page, address: string): Promise<readonly string[]> {
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

/** The most script that a page may have, by what it is for. */
async function mostScript(page: Page, address: string): Promise<number> {
  if (address in tools) return TOOL;
  if (desks.includes(address)) return DESK;
  const hasFields = (await page.locator('main :is(.field, .calculator, [data-handle])').count()) > 0;
  return hasFields || follows.includes(address) ? FIELDS : SCRIPT;
}

/** Holds an open page's files against its budgets, and says in a line what they come to. */
export async function keepsToBudget(page: Page, address: string, paths: readonly string[]): Promise<string> {
  const view = /\/$|\.(js|css|woff2|svg|html|json)$/;
  const [script, styles, all] = [sum(paths, /\.js$/), sum(paths, /\.css$/), sum(paths, view)];
  expect(script, 'the page’s script was counted').toBeGreaterThan(5 * KB);
  expect(script, 'script').toBeLessThanOrEqual(await mostScript(page, address));
  expect(paths.length, 'requests').toBeLessThanOrEqual(address in tools ? REQUESTS_OF_A_TOOL : REQUESTS);
  expect(all, 'first view').toBeLessThanOrEqual(FIRST_VIEW);
  expect(styles, 'styles').toBeLessThanOrEqual(STYLES);
  const told = Object.entries({ script, styles, 'first view': all });
  return `${told.map(([what, bytes]) => `${what} ${(bytes / KB).toFixed(1)} kB`).join(', ')}, ${paths.length} requests`;
}
