// A house that distils three times: the whole book goes by its own stills, and a page of a house without such fetches nothing of them.
import { expect, test, type Page } from '@playwright/test';
import type { Line } from '../../src/core/line/line.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import type { House } from '../../src/core/line/house.ts';
import { encode } from '../../src/house/codec.ts';
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
    encode({ name: 'Threefold', house, parts: parts as never }),
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
    encode({
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
