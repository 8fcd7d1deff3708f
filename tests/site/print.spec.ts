// A page printed with the reader's own figures agrees with itself.
import { expect, test } from '@playwright/test';
import { builtInHouse } from '../../src/house/figures.ts';
import { open } from './pages.ts';

test('a printed chapter shows one set of figures', async ({ page }) => {
  const house = JSON.stringify({
    format: 'malt-spirit-handbook/house',
    version: 1,
    name: 'Sallowby',
    figures: { ...builtInHouse, heartEnd: 60 },
  });
  await page.addInitScript((text) => localStorage.setItem('malt-spirit-handbook/house', text), house);
  await page.emulateMedia({ media: 'print' });
  await open(page, '/distilling/');
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
  await expect(page.locator('[data-figure="house.heartEnd"]').first()).toHaveText(/^60\D/);
  await expect(page.locator('nav').first()).toBeHidden();
  const pdf = await page.pdf({ format: 'A4' });
  expect(pdf.byteLength).toBeGreaterThan(20_000);
});
