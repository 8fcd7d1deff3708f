// On a phone with a slow processor and a slow line: the pages that do most work, their controls answer, and nothing throws. Nothing here is timed.
import { expect, test, type Page } from '@playwright/test';
import { scriptOf } from '../talk/scripts.ts';
import { ready, watch } from './pages.ts';

const SLOWED = 4;
/** A poor line of a phone: bytes a second, and ms until an answer begins. */
const LINE = { offline: false, downloadThroughput: 50_000, uploadThroughput: 20_000, latency: 400 };

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
test.setTimeout(240_000);

/** Opens a page on such a phone. */
async function openSlowly(page: Page, address: string): Promise<string[]> {
  const wrong = watch(page);
  const inspector = await page.context().newCDPSession(page);
  await inspector.send('Network.enable');
  await inspector.send('Network.emulateNetworkConditions', LINE);
  await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(address);
  return wrong;
}

test('before its script has come, a page is read, and what is typed into it is not lost', async ({
  page,
}) => {
  const wrong = await openSlowly(page, '/house/distilling/');
  await expect(page.locator('h1')).toBeVisible();
  const field = page.locator('#house-heartEnd');
  await field.fill('61');
  await ready(page);
  await expect(field).toHaveValue('61');
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house')))
    .toContain('"heartEnd":61');
  expect(wrong).toEqual([]);
});

test('before its script has come, a choice and a name are not lost either', async ({ page }) => {
  const wrong = await openSlowly(page, '/house/');
  await page.locator('#house-name').fill('Skelbeck');
  await page.locator('#house-name').blur();
  await ready(page);
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house')))
    .toContain('"name":"Skelbeck"');
  await page.goto('/house/distilling/');
  const choice = page.locator('#house-foreshotsBy');
  await choice.selectOption('volume');
  await ready(page);
  await expect(choice).toHaveValue('volume');
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house')))
    .toContain('"foreshotsBy":"volume"');
  expect(wrong).toEqual([]);
});

test('a talk is pasted while the page still loads, read, and put right', async ({ page }) => {
  const talk = scriptOf('chatty').text;
  const wrong = await openSlowly(page, '/script/');
  await page.locator('#script-text').fill(talk);
  await ready(page);
  await expect(page.locator('.marked .mark').first()).toBeVisible({ timeout: 120_000 });
  await expect(page.locator('.script-card dd').first()).toBeVisible({ timeout: 60_000 });
  const mark = page.locator('.marked .mark:not(.not-checkable)').first();
  await mark.tap();
  await page.locator('.taken').getByRole('button', { name: 'Not ours' }).tap();
  await expect(mark).toBeVisible();
  await expect(page.locator('.taken')).toHaveCount(0);
  expect(wrong).toEqual([]);
});

test('what is typed into an empty box while a kept talk is on its way joins it', async ({ page }) => {
  await page.addInitScript(() =>
    localStorage.setItem(
      'malt-spirit-handbook/script',
      JSON.stringify({ text: 'We fill 9 casks a week.', settled: {} }),
    ),
  );
  const wrong = await openSlowly(page, '/script/');
  await page.locator('#script-text').fill('It ferments for 72 hours.');
  await ready(page);
  await expect(page.locator('.marked')).toContainText('We fill 9 casks a week.', { timeout: 120_000 });
  await expect(page.locator('.marked')).toContainText('It ferments for 72 hours.');
  expect(wrong).toEqual([]);
});

test('a question is answered and marked, and the next one comes', async ({ page }) => {
  const wrong = await openSlowly(page, '/practice/#topic=law');
  await ready(page);
  for (let i = 0; i < 2; i++) {
    await expect(page.locator('.question')).toBeVisible({ timeout: 120_000 });
    const field = page.locator('#practice-answer');
    if ((await field.getAttribute('type')) === 'text') await field.fill('1');
    else await page.locator('.question .tick').first().tap();
    await page.getByRole('button', { name: 'Mark my answer' }).tap();
    const [shows, next] = ['Show the answer', 'Next question'].map((name) =>
      page.getByRole('button', { name }),
    );
    await shows!.or(next!).waitFor();
    if (await shows!.isVisible()) await shows!.tap();
    await next!.tap();
  }
  expect(wrong).toEqual([]);
});

test('a house is named, changed and there again', async ({ page }) => {
  const wrong = await openSlowly(page, '/house/');
  await ready(page);
  await page.locator('#house-name').fill('Thornwath');
  await page.locator('#house-name').press('Enter');
  await expect(page.locator('.masthead [data-house-name]')).toHaveText('Thornwath');
  await page.locator('#house-heartEnd').fill('61');
  await page.waitForTimeout(1000);
  await page.reload();
  await ready(page);
  await expect(page.locator('.masthead [data-house-name]')).toHaveText('Thornwath');
  await expect(page.locator('#house-heartEnd')).toHaveValue('61');
  expect(wrong).toEqual([]);
});
