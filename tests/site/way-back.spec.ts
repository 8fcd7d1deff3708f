// What a reader removes, or has taken the place of, can be had back: at once, and where it was kept by name after a reload too.
import { expect, test, type Locator, type Page } from '@playwright/test';
import { open } from './pages.ts';

test.use({ viewport: { width: 390, height: 844 } });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const putBack = (page: Page) => button(page, 'Put it back').click();
const kept = (page: Page) => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house') ?? '');

/** How far two things stand apart, in pixels, on the axis on which they stand farther. */
async function apart(one: Locator, other: Locator): Promise<number> {
  const [a, b] = [(await one.boundingBox())!, (await other.boundingBox())!];
  return Math.max(b.x - a.x - a.width, a.x - b.x - b.width, b.y - a.y - a.height, a.y - b.y - b.height);
}

test('a house that was removed is had back with its figures, at once and after a reload', async ({
  page,
}) => {
  await open(page, '/house/');
  await page.locator('#house-name').fill('Sallowby');
  await page.locator('#house-name').press('Tab');
  await page.locator('#house-heartEnd').fill('60');
  await expect.poll(() => kept(page)).toContain('"heartEnd":60');
  await button(page, 'Work on a copy').click();
  await page.locator('#house-heartEnd').fill('64');
  const remove = button(page, 'Remove Sallowby');
  expect(await apart(button(page, 'Open Sallowby'), remove)).toBeGreaterThanOrEqual(8);
  await remove.click();
  await expect(remove).toHaveCount(0);
  await putBack(page);
  await expect(remove).toBeVisible();
  await remove.click();
  await page.reload();
  await expect(page.locator('#house-heartEnd')).toHaveValue('64');
  await expect(remove).toHaveCount(0);
  await page.getByText('Removed houses (1)').click();
  await button(page, 'Put Sallowby back').click();
  await expect(page.locator('.removed')).toHaveCount(0);
  await button(page, 'Open Sallowby').click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
});

test('a removed house does not take the name that another has by now', async ({ page }) => {
  await open(page, '/house/');
  await button(page, 'Work on a copy').click();
  await button(page, 'Remove Harrowmere').click();
  await page.locator('#house-name').fill('Harrowmere');
  await page.locator('#house-name').press('Tab');
  await page.getByText('Removed houses (1)').click();
  await button(page, 'Put Harrowmere back').click();
  await button(page, 'Open Harrowmere 2').click();
  await expect(page.locator('#house-name')).toHaveValue('Harrowmere 2');
  await expect(button(page, 'Open Harrowmere')).toBeVisible();
});

test('figures that were all put back are had back, and after a reload as a house of their own', async ({
  page,
}) => {
  await open(page, '/house/');
  const reset = button(page, /^Put all figures back/);
  await reset.click();
  await expect(page.locator('.house-desk')).toContainText('Harrowmere’s already');
  await page.locator('#house-heartEnd').fill('60');
  await reset.click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
  await putBack(page);
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
  await reset.click();
  await page.reload();
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
  await page.getByText('Removed houses (1)').click();
  await page.locator('.removed button').click();
  await page.locator('.house-desk > .shelf button').first().click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
});

test('a walk that was removed is had back after a reload', async ({ page }) => {
  await open(page, '/walk/');
  await page.locator('#walk-name').fill('Tuesday');
  await page.locator('#walk-name').press('Tab');
  await button(page, 'Begin another').click();
  await button(page, 'Remove Tuesday').click();
  await page.reload();
  await page.getByText('Removed walks (1)').click();
  await button(page, 'Put Tuesday back').click();
  await button(page, 'Open Tuesday').click();
  await expect(page.locator('#walk-name')).toHaveValue('Tuesday');
});

test('a period, a group of vessels, a grist and a row of a table can each be put back', async ({ page }) => {
  await open(page, '/house/period/');
  await page.locator('#period-name').fill('May');
  await page.locator('#period-name').press('Tab');
  await button(page, 'Remove this period').click();
  await expect(page.getByText('“May” is removed.')).toBeFocused();
  await putBack(page);
  await expect(page.locator('#period-name')).toHaveValue('May');

  await open(page, '/house/plant/');
  const vessels = page.locator('details.vessel');
  const before = await vessels.count();
  await vessels.first().locator('summary').click();
  const says = await vessels.first().locator('summary').textContent();
  await vessels
    .first()
    .getByRole('button', { name: /^Remove/ })
    .click();
  await expect(vessels).toHaveCount(before - 1);
  await putBack(page);
  await expect(vessels.first().locator('summary')).toHaveText(says!);
  await vessels.first().locator('summary').click();
  await vessels
    .first()
    .getByRole('button', { name: /^Remove/ })
    .click();
  await button(page, 'Put Harrowmere’s vessels back').click();
  await expect(vessels).toHaveCount(before);
  await page.locator('.plant > .done-and-back').getByRole('button').click();
  await expect(vessels).toHaveCount(before - 1);

  await open(page, '/house/malts/');
  await button(page, 'Add a grist').click();
  await page.locator('#grist-0-name').fill('Smoky');
  await page.locator('#grist-0-name').press('Tab');
  await button(page, 'Take Smoky out').click();
  await expect(button(page, 'Take Smoky out')).toHaveCount(0);
  await putBack(page);
  await expect(page.locator('#grist-0-name')).toHaveValue('Smoky');
  const rows = page.locator('#grist-0-malts-0-mass, #grist-0-malts-1-mass');
  const stood = await rows.count();
  await page.locator('.rows').first().getByRole('button', { name: 'Add a row' }).click();
  await expect(rows).toHaveCount(stood + 1);
  await page.locator('.rows').first().getByRole('button', { name: 'Remove row 1' }).click();
  await expect(rows).toHaveCount(stood);
  await page.locator('.rows').first().getByRole('button', { name: 'Put it back' }).click();
  await expect(rows).toHaveCount(stood + 1);
});

test('a question of one’s own and a question of a sheet can be put back', async ({ page }) => {
  await open(page, '/sheets/own/');
  await page.locator('.own-found button[aria-label^=Add]').first().click();
  await page.fill('#own-title', 'Week nine');
  await page.locator('#own-title').blur();
  await button(page, 'Keep it in this browser').click();
  await button(page, 'A new sheet').click();
  await expect(page.locator('#own-title')).toHaveValue('');
  await putBack(page);
  await expect(page.locator('#own-title')).toHaveValue('Week nine');
  await button(page, 'Remove Week nine').click();
  await expect(button(page, 'Open Week nine')).toHaveCount(0);
  await putBack(page);
  await expect(button(page, 'Open Week nine')).toBeVisible();
  const items = page.getByRole('button', { name: /^Take out: / });
  await items.click();
  await expect(items).toHaveCount(0);
  await page.locator('section[aria-labelledby=own-asked-title]').getByText('Put it back').click();
  await expect(items).toHaveCount(1);

  await open(page, '/sheets/questions/');
  await page.fill('#own-q-title', 'Alcohol of a mash');
  await button(page, 'Empty the form').click();
  await expect(page.locator('#own-q-title')).toHaveValue('');
  await putBack(page);
  await expect(page.locator('#own-q-title')).toHaveValue('Alcohol of a mash');
});

test('a record of tasks that another took the place of is had back, at once and after a reload', async ({
  page,
}) => {
  await open(page, '/tasks/distilling/');
  await page.fill('#observed-trainee', 'Una Thornwath');
  await page.locator('#observed-trainee').blur();
  await button(page, 'Begin a new record').click();
  await expect(page.locator('#observed-trainee')).toHaveValue('');
  await putBack(page);
  await expect(page.locator('#observed-trainee')).toHaveValue('Una Thornwath');
  await button(page, 'Begin a new record').click();
  await page.reload();
  await page.getByText('Removed records (1)').click();
  await button(page, 'Put Una Thornwath back').click();
  await expect(page.locator('#observed-trainee')).toHaveValue('Una Thornwath');
});
