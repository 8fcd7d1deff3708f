// A house that distils three times: the whole book goes by its own stills, and a page of a house without such fetches nothing of them.
import { expect, test, type Page } from '@playwright/test';
import type { Line } from '../../src/core/line/line.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import type { House } from '../../src/core/line/house.ts';
import { GENERATOR } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { lineReady, partsOfLine } from '../../src/exercises/own-line.ts';
import { sheetLink } from '../../src/exercises/sheet-link.ts';
import { fixedSheet, questionsAlone, type Worksheet } from '../../src/exercises/worksheet.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { figureText } from '../../src/house/prose.ts';
import { plainPlant } from '../core/plants.ts';
import { open } from './pages.ts';

const plant = { ...plainPlant, scheme: 'thrice' as const };
const house = { ...builtInHouse, heartEnd: 78 } as House; // more than two distillations of such stills can give
const own = lineWithPlant(house, plant) as Line;

const begin = (page: Page, parts: object) =>
  page.addInitScript(
    (text) => localStorage.getItem('malt-spirit-handbook/house') ?? localStorage.setItem('malt-spirit-handbook/house', text),
    encodeHouse({ name: 'Threefold', house, parts: parts as never }),
  ); // prettier-ignore

test('prose, ledger, front page and cards of a house of three distillations are its own, and a figure moves them', async ({ page }) => {
  await begin(page, { plant });
  await open(page, '/distilling/check/');
  await expect(page.locator('[data-figure="heart.strength"]').first()).toHaveText(figureText(own, 'heart.strength'));
  await expect(page.getByText('Here it is three times.')).toBeVisible();
  await open(page, '/');
  await expect(page.locator('.bottles-a-year')).toContainText(Math.floor(own.bottling.bottlesPerYear).toLocaleString('en-GB'));
  await open(page, '/distilling/work/');
  await expect(page.locator('#house-heartEnd')).toHaveValue('78');
  await page.locator('#house-heartEnd').fill('80');
  const moved = lineWithPlant({ ...house, heartEnd: 80 } as House, plant) as Line;
  await expect(page.locator('[data-figure="charge.strength"]').first()).toHaveText(figureText(moved, 'charge.strength'));
  await expect(page.locator('#house-heartEnd-problem')).toHaveCount(0);
  await open(page, '/distilling/');
  await expect(page.locator('[data-figure="heart.strength"]').first()).toHaveText(figureText(moved, 'heart.strength'));
}); // prettier-ignore

test('stills that come to no balance are told of, and the book goes on without them', async ({ page }) => {
  await page.addInitScript(
    (text) => localStorage.setItem('malt-spirit-handbook/house', text),
    encodeHouse({
      name: 'Threefold',
      house: builtInHouse,
      parts: { plant: { ...plant, intermediateStills: [] } },
    }),
  );
  await open(page, '/house/');
  await expect(page.getByText('a third distillation needs one. Until that is mended').first()).toBeVisible();
});

test('a house without such parts fetches nothing to reckon with them', async ({ page }) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await open(page, '/distilling/');
  expect(fetched.some((url) => url.includes('book'))).toBe(true);
  expect(fetched.filter((url) => url.includes('line-store'))).toEqual([]);
});

test('figures of a house of three distillations are checked as such while they are compared with it, and as of two when they are not', async ({ page }) => {
  await begin(page, { plant });
  await open(page, '/cross-check/');
  await page.locator('#quoted-text').fill('low wines 2,600 L at 22 %');
  await page.getByRole('button', { name: 'Clear all' }).click();
  await page.getByRole('button', { name: 'Fill in the rest from my house' }).click();
  const together = page.locator('.together').first();
  await expect(together).toContainText('figures that can be checked agree');
  await expect(page.getByText('Checked as a house with a third distillation')).toBeVisible();
  await page.getByRole('checkbox', { name: 'Compare with Threefold' }).uncheck();
  await expect(together).toContainText('This cannot be.');
  await expect(page.getByText('Checked as')).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Compare with Threefold' }).check();
  await expect(together).toContainText('figures that can be checked agree');
}); // prettier-ignore

test('ten thousand rounds of such a house are drawn in its own stills, and what its plant says has a ±', async ({ page }) => {
  await begin(page, { plant });
  await open(page, '/sums/how-sure-is-the-round/');
  await expect(page.getByLabel('Strong feints end at, ±')).toHaveValue('0.2');
  await page.getByRole('button', { name: /Draw 10,000 rounds/ }).click();
  const row = page.getByRole('row').filter({ hasText: 'Spirit charge, % vol' });
  await expect(row).toBeVisible({ timeout: 60_000 });
  const mean = Number((await row.locator('td').first().innerText()).replace(',', ''));
  expect(Math.abs(mean - own.charge.strength)).toBeLessThan(1.5); // half of what two models of vapour lie apart, and a little
}); // prettier-ignore

test('a sheet about such a house asks, by its link alone, what was drawn by its own stills; practice asks as well', async ({ page, browser }) => {
  const asked: Worksheet = { generator: GENERATOR, topics: ['line'], forms: ['calculation'], levels: [1, 2, 3], count: 40, seed: 'stills', versions: 1, house: { name: 'Threefold', house, ...partsOfLine({ plant }) } };
  await lineReady(asked.house);
  const sheet = fixedSheet(asked, questionKinds);
  const spaceless = (text: string) => text.replace(/[\s\u2060]/g, '');
  const [order] = questionsAlone(sheet, 1, questionKinds).filter(({ kind }) => kind === 'mashes-for-an-order');
  expect(spaceless(order!.prompt)).toContain(`${Math.round(own.heart.alcohol)}Lofpurealcohol`);
  const other = await (await browser.newContext()).newPage(); // a browser that keeps no house
  await open(other, `/sheet/${sheetLink(sheet, 1)}`);
  await expect.poll(async () => spaceless(await other.locator('.taking').innerText())).toContain(spaceless(order!.prompt));

  await begin(page, { plant });
  await open(page, '/practice/');
  await expect(page.locator('.question .prompt')).not.toBeEmpty();
}); // prettier-ignore
