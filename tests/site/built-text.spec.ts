// No built text outlives its figure: every page, opened with a house whose every figure was changed, says what a book built for that house says.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { usualWay } from '../../src/core/figures/standing.ts';
import {
  builtInHouse,
  builtInName,
  figureNames,
  numberFigures,
  type NumberName,
} from '../../src/house/figures.ts';
import { HOUSE_KEY, storageKey } from '../../src/browser/browser-store.ts';
import type { House } from '../../src/core/line/house.ts';
import { serve, type Served } from '../serve.ts';
import { addresses } from './pages.ts';

const root = join(import.meta.dirname, '..', '..');

/** Another house: every figure moved but the two by whose size the examples of sums grow, for those grow from the built-in house's. */
const other = {
  ...builtInHouse,
  holds: 'readings',
  barleyMoisture: 13,
  maltMoisture: 5,
  maltingLoss: 9,
  solubleExtract: 78,
  fermentability: 86.5,
  husk: 21,
  flour: 11,
  millRate: 2,
  mashesPerWeek: 8,
  weeksPerYear: 44,
  liquorRatio: 4.1,
  mashTemperature: 64,
  gristTemperature: 16,
  secondWater: 76,
  lastWater: 84,
  originalGravity: 1.056,
  draffMoisture: 79,
  setTemperature: 20,
  yeast: 28,
  fermentationHours: 80,
  finalGravity: 0.999,
  airPressure: 100,
  washReflux: 0.07,
  washEnd: 1.2,
  spiritReflux: 0.12,
  foreshotsBy: 'volume',
  foreshotsShare: 2.5,
  foreshotsVolume: 36,
  foreshotsMinutes: 14,
  foreshotsFlow: 150,
  foreshotsStrength: 72,
  heartEnd: 61,
  feintsEnd: 1.2,
  dilution: 'never',
  chargeLimit: 29,
  fillingStrength: 62,
  barrels: 60,
  hogsheads: 30,
  indrink: 1.8,
  alcoholLoss: 1.9,
  storeHumidity: 75,
  steadyHumidity: 66,
  yearsInWood: 12,
  caskResidue: 1.2,
  filterLoss: 0.6,
  bottlingStrength: 43,
  bottleSize: 75,
} as House;
const SIZES = ['maltPerMash', 'wortVolume'];

let folder: string;
let site: Served;
test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'other-house-'));
  for (const part of [
    'src',
    'content',
    'public',
    'tests',
    'astro.config.mjs',
    'tsconfig.json',
    'package.json',
  ])
    cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  const house = join(folder, 'content/houses/harrowmere.json');
  writeFileSync(house, JSON.stringify({ ...JSON.parse(readFileSync(house, 'utf8')), figures: other }));
  execFileSync(process.execPath, [join(root, 'node_modules/astro/bin/astro.mjs'), 'build'], {
    cwd: folder,
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: 'pipe',
  });
  site = await serve({ root: join(folder, 'dist') });
});
test.afterAll(() => {
  site.stop();
  rmSync(folder, { recursive: true });
});

test('the other house differs in every figure', () => {
  expect(figureNames.filter((name) => other[name] === builtInHouse[name])).toEqual(SIZES);
});

/** What a page says once all of it has been in sight, without what only an own house has (buttons that put a figure back) and without a sheet made for Harrowmere, which is the book's house and not the reader's. */
async function said(page: Page, address: string): Promise<readonly string[]> {
  await page.goto(address);
  await page.evaluate(async () => {
    for (let y = 0; y < document.body.scrollHeight; y += innerHeight / 2) {
      scrollTo(0, y);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  });
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await page.waitForLoadState('networkidle'); // what an island fetches, as questions to practise, is there
  await expect(page.locator('[aria-busy=true]')).toHaveCount(0); // as a week that is being set out
  let [before, now] = [undefined as string | undefined, JSON.stringify(await textsOf(page))];
  while (now !== before) {
    await page.waitForTimeout(400);
    [before, now] = [now, JSON.stringify(await textsOf(page))];
  }
  return JSON.parse(now) as readonly string[];
}

const textsOf = (page: Page) =>
  page.evaluate(() => {
    const copy = document.querySelector('main')!.cloneNode(true) as HTMLElement;
    for (const gone of copy.querySelectorAll(
      '.reset, .more > summary, .sheet-desk ~ .preview, [data-own-house], [hidden], noscript, option, script',
    ))
      gone.remove();
    const parts =
      'p, li, td, th, h1, h2, h3, caption, text, figcaption, dd, dt, summary, label, polyline, polygon';
    return [...copy.querySelectorAll(parts)].map((part) =>
      (part.getAttribute('points') ?? part.textContent ?? '')
        .replace(/\s+/g, ' ')
        .replace(/(?: ·)? book [\d.]+-[0-9a-f]{6}/i, '') // another book has another stamp
        .trim(),
    );
  });

/** All of the built-in house is known; a reader who keeps another under its name has to say so. */
const allGiven = Object.fromEntries(
  Object.keys(numberFigures).map((name) => [name, usualWay(name as NumberName)]),
);

/** Calculators alone on a page are tried in three; their examples grow with a house's size, and begin elsewhere in a book built for another. */
const alone = ['/sums/what-if/', '/sums/cask-through-years/', '/sums/strength-from-gravities/'];
for (const address of addresses.filter((each) => !/^\/sums\/./.test(each) || alone.includes(each)))
  test(`${address} says what was built for another house`, async ({ page, browser }) => {
    const built = await browser.newPage();
    for (const each of [page, built])
      // a browser draws a practice of its own
      await each.addInitScript((key) => localStorage.setItem(key, 'fixed'), storageKey('practice-seed'));
    await page.addInitScript(([key, text]) => localStorage.setItem(key!, text!), [
      HOUSE_KEY,
      encodeHouse({ name: builtInName, house: other, parts: { known: { given: allGiven, counted: {} } } }),
    ] as const);
    const [own, theirs] = await Promise.all([
      said(page, address),
      said(built, new URL(address, site.address).href),
    ]);
    const figures = (texts: readonly string[]) => texts.filter((text) => /\d/.test(text));
    expect(figures(own)).toEqual(figures(theirs));
    await built.close();
  });
