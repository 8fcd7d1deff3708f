// The malts of a year in use: nonsense in each field, a basis that cannot be, and the year's malt put into the house.
import { expect, test, type Page } from '@playwright/test';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open } from './pages.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const year = (page: Page, label: string) =>
  page.locator('section[aria-labelledby="malts-year-title"] dl > div', { has: page.locator('dt', { hasText: label }) }).first().locator('dd'); // prettier-ignore

test('weeks and malts move the year, nonsense does not, and the year’s malt becomes the house’s', async ({ page }) => {
  await open(page, '/house/malts/');
  await expect(year(page, 'Phenols')).toHaveText(/7\.0.ppm/);
  for (const [field, nonsense] of [['weeks', '60'], ['weeks', 'all'], ['malts-0-mass', '-1'], ['malts-0-moisture', '80'], ['malts-0-extract', '99'], ['malts-0-fermentability', ''], ['malts-0-phenols', 'smoky']] as const) {
    const before = await page.locator(`#grist-1-${field}`).inputValue();
    await page.locator(`#grist-1-${field}`).fill(nonsense);
    await expect(page.locator(`#grist-1-${field}-problem`)).toBeVisible();
    await page.locator(`#grist-1-${field}`).fill(before);
    await expect(page.locator(`#grist-1-${field}-problem`)).toHaveCount(0);
  }
  await expect(year(page, 'Phenols')).toHaveText(/7\.0.ppm/);
  // All 46 weeks peated: 0.75 × 50 + 0.25 × 0.5 = 37.625 ppm.
  await page.locator('#grist-0-weeks').fill('0');
  await expect(year(page, 'Phenols')).toHaveText(/37\.6.ppm/);
  // Extract 0.75 × 76.7 + 0.25 × 77.5 = 76.9 %.
  await page.locator('#grist-1-malts-0-extract').fill('76.7');
  await button(page, 'Make this the malt of your house').click();
  await open(page, '/house/malting/');
  await expect(page.locator('#house-solubleExtract')).toHaveValue('76.9');
}); // prettier-ignore

test('a grist is added as the house’s own malt, and taken out again', async ({ page }) => {
  await open(page, '/house/malts/');
  await button(page, 'Add a grist').click();
  await expect(page.locator('#grist-2-malts-0-extract')).toHaveValue('77.5');
  await page.locator('#grist-2-name').fill('Trial');
  await button(page, 'Take Trial out').click();
  await expect(page.locator('#grist-2-name')).toHaveCount(0);
});

test('bottles by their shares make the year’s bottles, here and in the text; what cannot be is told', async ({ page }) => {
  await open(page, '/house/malts/');
  await button(page, 'Add another bottle').click();
  await page.locator('#bottles-0-size').fill('20');
  for (const [field, nonsense] of [['size', 'tall'], ['strength', '30'], ['share', '101']] as const) {
    const before = await page.locator(`#bottles-0-${field}`).inputValue();
    await page.locator(`#bottles-0-${field}`).fill(nonsense);
    await expect(page.locator(`#bottles-0-${field}-problem`)).toBeVisible();
    await page.locator(`#bottles-0-${field}`).fill(before);
  }
  // Half of it in bottles of 20 cL, 3.5 to one of 70: 2.25 times as many bottles.
  const plain = Math.floor((line(builtInHouse) as Line).bottling.bottlesPerYear * 2.25);
  const said = `${plain.toLocaleString('en-GB')} bottles a year`;
  await expect(page.locator('.bottles-desk')).toContainText(said);
  await open(page, '/');
  await expect(page.locator('.bottles-a-year')).toContainText(said);
  await open(page, '/house/malts/');
  await button(page, 'Only one bottle').click();
  await expect(page.locator(':focus')).toHaveText('All of it goes into one bottle.');
  await expect(button(page, 'Add another bottle')).toBeVisible();
}); // prettier-ignore
