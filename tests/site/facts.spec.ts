// The fact sheet and earlier versions in use: what the house says is on its cards and in the chapters, and what changed is told.
import { expect, test, type Page } from '@playwright/test';
import { HOUSE_KEY } from '../../src/browser/browser-store.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, ready } from './pages.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const colourAsked = (page: Page) => page.locator('[data-fact="colouring"]').first();

/** Opens a page with a house of the reader's own that has said nothing yet. */
async function openOwn(page: Page, address: string): Promise<void> {
  await page.goto('/');
  await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [
    HOUSE_KEY,
    encodeHouse({ name: 'Sallowby', house: builtInHouse }),
  ] as const);
  await open(page, address);
}

test('what a house says of its colour is in the chapter and on the card; until it says so, the chapter leads to the fact sheet', async ({ page }) => {
  await openOwn(page, '/law/check/');
  await expect(colourAsked(page)).toHaveText('Say what your house does.');
  await colourAsked(page).getByRole('link').click();
  await expect(page).toHaveURL(/\/house\/facts\/#fact-colouring$/);
  await ready(page);
  await expect(page.locator('.facts .purpose')).toContainText('0 of 14 are answered.');
  await expect(button(page, 'Print the fact sheet')).toBeDisabled();
  await page.locator('#fact-colouring').selectOption('no');
  await page.locator('#fact-water').fill('Our water is  from the town main');
  await expect(page.locator('.facts .purpose')).toContainText('2 of 14');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.fact-sheet dd')).toHaveText(['Our water is from the town main.', 'We add no colour.']);
  await expect(page.locator('.fact-sheet')).toBeVisible();
  await expect(page.locator('.facts')).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.reload();
  await ready(page);
  await expect(page.locator('#fact-water')).toHaveValue('Our water is from the town main');
  await open(page, '/law/check/');
  await expect(colourAsked(page).getByRole('link')).toBeHidden();
  await expect(colourAsked(page)).toContainText('We add no colour.');
  await open(page, '/cards/');
  await page.getByText(/^Questions/).click();
  for (const question of ['Is colour added?', 'How old is the mill?'])
    await page.getByRole('checkbox', { name: question }).check();
  const card = (question: string) => page.locator('.card', { hasText: question });
  await expect(card('Is colour added?')).toContainText('We add no colour.');
  await expect(card('How old is the mill?')).toContainText('Ours: ____________.');
  await expect(page.locator('.left-out', { hasText: 'does not say yet' })).toContainText('the mill and its age');
}); // prettier-ignore

test('nonsense on the fact sheet is told at its field, and what stood there stays', async ({ page }) => {
  await open(page, '/house/facts/');
  for (const [field, nonsense, says] of [
    ['phenols', 'smoky', 'from 0 to 400 ppm'],
    ['phenols', '401', 'from 0 to 400 ppm'],
    ['water', 'x'.repeat(301), 'up to 300 characters'],
    ['water', '\u202eretaw', 'cannot be seen'],
    ['mill', '!', 'up to 300 characters'],
  ] as const) {
    const before = await page.locator(`#fact-${field}`).inputValue();
    expect(before).not.toBe('');
    await page.locator(`#fact-${field}`).fill(nonsense);
    await expect(page.locator(`#fact-${field}-problem`)).toContainText(says);
    await page.locator(`#fact-${field}`).fill(before);
    await expect(page.locator(`#fact-${field}-problem`)).toHaveCount(0);
  }
  await page.locator('#fact-mill').fill('<img src=x onerror=hurt=1>');
  await open(page, '/milling/check/');
  await expect(page.locator('[data-fact="mill"]')).toContainText('<img src=x onerror=hurt=1>.');
  expect(await page.evaluate(() => (globalThis as { hurt?: number }).hurt)).toBeUndefined();
});

test('a house is put down, changed, and what changed is told, with the sheets to make again; then it is taken out', async ({ page }) => {
  await openOwn(page, '/house/changes/');
  await expect(page.locator('.changes .remark')).toContainText('Sallowby has no earlier version yet.');
  await button(page, 'Put it down').click();
  await expect(page.locator('#version-name-problem')).toContainText('nothing was given');
  await page.locator('#version-name').fill('x'.repeat(41));
  await button(page, 'Put it down').click();
  await expect(page.locator('#version-name-problem')).toContainText('up to 40 characters');
  await page.locator('#version-name').fill('Six mashes');
  await button(page, 'Put it down').click();
  await expect(page.locator('.sum-up')).toContainText('Nothing that the house gives or counts has changed.');
  await expect(page.locator('.touched')).toContainText('Nothing: what was printed still holds.');
  await open(page, '/house/');
  await page.locator('#house-mashesPerWeek').fill('7');
  await open(page, '/house/changes/');
  const row = (label: string) => page.locator('.changed tr', { has: page.locator('th', { hasText: label }) }).first();
  await expect(row('Mashes in a week').locator('td')).toHaveText(['6', '7']);
  // 1,500 kg in a mash: 9 t in a week of six, 10.5 t in one of seven.
  await page.locator('.changed summary').first().click();
  await expect(row('Malt a week').locator('td')).toHaveText([/9,000.kg/, /10,500.kg/]);
  await expect(page.locator('.touched li').first()).toContainText('Pocket cards');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.put-down')).toBeHidden();
  await expect(page.locator('#changes-from')).toBeHidden();
  await expect(row('Mashes in a week')).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await page.locator('#changes-sheet').fill('https://example.org/sheet/#sheet=1.2');
  await expect(page.locator('.touched .remark')).toContainText('damaged');
  await button(page, 'Take “Six mashes” out').click();
  await expect(page.locator('.changes .remark')).toContainText('no earlier version yet');
}); // prettier-ignore
