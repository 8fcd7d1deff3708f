// What a desk remembers of a person: a case of the fault desk that was answered before, and a question half written.
import { expect, test } from '@playwright/test';
import { open } from './pages.ts';

test('a case whose answer was shown is a second go in the line that is handed in', async ({ page }) => {
  const answer = async () => {
    await expect(page.locator('#fault-begin')).toBeEnabled();
    await page.locator('#fault-seed').fill('417');
    await page.locator('#fault-begin').click();
    await page.locator('.fault-ask button').first().click();
    await page.locator('#fault-cause').selectOption({ index: 1 });
    await page.locator('.fault .options input').first().check();
  };
  const hand = () => page.getByRole('button', { name: 'Answer, and be marked' }).click();
  const seen = page.getByText('The answer to this case was shown in this browser before.');
  await open(page, '/faults/');
  await answer();
  await expect(seen).toBeHidden();
  await hand();
  await expect(page.locator('.result-line')).toContainText('named “');
  await expect(page.locator('.result-line')).not.toContainText('second go');
  await page.reload();
  await answer();
  await expect(seen).toBeVisible();
  await hand();
  await expect(page.locator('.result-line')).toContainText('; second go or later, ');
});

test('a question half written stands in its form again', async ({ page }) => {
  await open(page, '/sheets/questions/');
  await page.locator('#own-q-title').fill('Mashes a week');
  await page.locator('#own-v-unit-0').selectOption('count|');
  await page.reload();
  await expect(page.locator('#own-q-title')).toHaveValue('Mashes a week');
  await expect(page.locator('#own-v-unit-0')).toHaveValue('count|');
});
