// The house is kept across pages, reloads and tabs; islands never keep the built text by mistake; nothing saved is lost.
import { expect, test } from '@playwright/test';
import { format } from '../../src/core/format.ts';
import { gravity } from '../../src/core/quantity.ts';
import { strengthFromGravities } from '../../src/core/wort/attenuation.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, ready } from './pages.ts';

const KEY = 'malt-spirit-handbook/house';
const saved = (figures: object) =>
  JSON.stringify({ format: KEY, version: 1, name: 'Sallowby', figures: { ...builtInHouse, ...figures } });

test('a saved house is in every island and sentence after hydration', async ({ page }) => {
  await page.addInitScript(
    ([key, text]) => localStorage.setItem(key!, text!),
    [KEY, saved({ originalGravity: 1.064, finalGravity: 0.997 })],
  );
  await open(page, '/fermenting/');
  await expect(page.locator('#house-finalGravity')).toHaveValue('0.997');
  await expect(page.locator('#strength-from-gravities-final')).toHaveValue('0.997');
  await expect(page.locator('#strength-from-gravities-original')).toHaveValue('1.064');
  const strength = strengthFromGravities({ original: gravity(1.064), final: gravity(0.997) });
  await expect(page.locator('#strength-from-gravities-title ~ .results dd').first()).toHaveText(
    format(strength, 'strength', 2),
  );
  await expect(page.locator('[data-figure="house.originalGravity"]').first()).toHaveText('1.064');
  await expect(page.locator('.ledger caption')).toContainText('Sallowby');
  await open(page, '/');
  await expect(page.locator('[data-house-name]').first()).toHaveText('Sallowby');
  await expect(page.locator('.foot [data-own-house]')).toContainText('those given for Sallowby');
});

test('a change survives a reload', async ({ page }) => {
  await open(page, '/maturing/');
  await page.locator('#house-yearsInWood').fill('12');
  await page.reload();
  await ready(page);
  await expect(page.locator('#house-yearsInWood')).toHaveValue('12');
});

test('two tabs stay together', async ({ context }) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  await open(one, '/maturing/');
  await open(two, '/distilling/');
  const before = await one.locator('.ledger [data-station="charge"]').textContent();
  await one.locator('#house-fillingStrength').fill('62');
  await two.locator('#house-heartEnd').fill('60.5');
  await expect(one.locator('.ledger [data-station="charge"]')).not.toHaveText(before!);
  await expect
    .poll(() => one.evaluate((key) => JSON.parse(localStorage.getItem(key)!).figures.heartEnd, KEY))
    .toBe(60.5);
  await expect
    .poll(() => two.evaluate((key) => JSON.parse(localStorage.getItem(key)!).figures.fillingStrength, KEY))
    .toBe(62);
});

test('saved figures that cannot be used are told of, and kept aside word for word', async ({ page }) => {
  const text = saved({ heartEnd: 400, portions: 3, finalGravity: 0.999 });
  await page.addInitScript(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
  await open(page, '/distilling/');
  await expect(page.locator('.troubles')).toContainText(
    'Heart ends at: “400” was given; it can be from 20 to 85 % vol.',
  );
  await expect(page.locator('.troubles')).toContainText('“portions” is not a figure of this handbook.');
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
  expect(await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/kept-aside'))).toBe(text);
});

test('damaged storage is told of and does not stop the page', async ({ page }) => {
  await page.addInitScript((key) => localStorage.setItem(key, '{"format":"malt-sp'), KEY);
  await open(page, '/distilling/');
  await expect(page.locator('.troubles')).toContainText('damaged');
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
});

test('forbidden storage is told of and the page works on', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await open(page, '/maturing/');
  await page.locator('#house-bottlingStrength').fill('43');
  await expect(page.locator('[data-figure="bottling.strength"]').first()).toHaveText(/^43\D/);
  await expect(page.locator('.troubles')).toContainText('does not let the handbook keep your figures');
});
