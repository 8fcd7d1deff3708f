// What a guide does: checks quoted figures, pastes a script, prints cards.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { open, watch } from './pages.ts';

const script = readFileSync(join(import.meta.dirname, '..', 'talk', 'scripts', 'disagreeing.txt'), 'utf8');

test('figures that cannot all be true are told of, with what would fit', async ({ page }) => {
  await open(page, '/cross-check/');
  const quoted = {
    maltPerMash: '9,400',
    wortVolume: '42,500',
    washStrength: '9.0',
    heartBegins: '74',
    heartEnds: '62.5',
    heartVolume: 'exactly 7,000',
  };
  for (const [name, text] of Object.entries(quoted)) {
    await page.locator('#quoted-add').selectOption(name);
    await page.locator(`#quoted-${name}`).fill(text);
  }
  // 7,000 L at the mean of 74 and 62.5 % vol hold far more than 42,500 L at 9 % vol do: common practice, by hand.
  await expect(page.locator('.field:has(#quoted-heartVolume) .finding')).toHaveText(/disagrees|doubtful/);
  await expect(page.locator('.sentences')).toContainText(/New spirit from a mash|7,000/);
  await page.locator('#quoted-heartVolume').fill('about 5,500');
  await expect(page.locator('.field:has(#quoted-heartVolume) .finding')).toHaveText('agrees');
  await page.locator('#quoted-heartVolume').fill('a good deal');
  await expect(page.locator('.field:has(#quoted-heartVolume)')).toContainText('says no number');
});

test('a pasted script is marked, checked and made into a card, and leaves the browser nowhere', async ({
  page,
}) => {
  const wrong = watch(page);
  await open(page, '/script/');
  await page.locator('#script-text').fill(`${script}\n<img src=x onerror=alert(1)>`);
  await expect(page.locator('.marked mark').first()).toBeVisible();
  expect(await page.locator('.marked mark').count()).toBeGreaterThan(30);
  expect(await page.locator('.marked img').count()).toBe(0);
  await expect(page.locator('.marked')).toContainText('<img src=x onerror=alert(1)>');
  await expect(page.locator('.marked mark.disagrees').first()).toBeVisible();
  await expect(page.locator('.script-reader .card dd').first()).not.toBeEmpty();
  const first = page.locator('.proposals select').first();
  await first.selectOption('none');
  await expect(first).toHaveValue('none');
  expect(wrong).toEqual([]);
});

test('pocket cards carry what is chosen, and print', async ({ page }) => {
  await open(page, '/cards/');
  await expect(page.locator('.card').first()).toContainText('Harrowmere');
  const cards = await page.locator('.card').count();
  await page.locator('.choices summary', { hasText: 'Questions' }).click();
  await page.locator('.choices details').last().locator('input').first().check();
  await expect(page.locator('.card')).toHaveCount(cards + 1);
  expect(await page.locator('.card').allInnerTexts()).not.toContain('NaN');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.choices')).toBeHidden();
  for (const format of ['A4', 'Letter'])
    expect((await page.pdf({ format })).byteLength).toBeGreaterThan(10_000);
});
