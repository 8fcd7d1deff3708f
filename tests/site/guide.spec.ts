// What a guide does: checks quoted figures, pastes a script, prints cards.
import { expect, test } from '@playwright/test';
import { scriptOf } from '../talk/scripts.ts';
import { contradiction, open, watch, quote } from './pages.ts';

const script = scriptOf('disagreeing').text;

test('figures that cannot all be true are told of, with what would fit', async ({ page }) => {
  await open(page, '/cross-check/');
  await quote(page, contradiction);
  // 7,000 L at the mean of 74 and 62.5 % vol hold far more than 42,500 L at 9 % vol do: common practice, by hand.
  await expect(page.locator('.field:has(#quoted-heartVolume) .finding')).toHaveText(/cannot be/);
  await expect(page.locator('.sentences')).toContainText(/New spirit from a mash|7,000/);
  await page.locator('#quoted-heartVolume').fill('about 5,500');
  await expect(page.locator('.field:has(#quoted-heartVolume) .finding')).toHaveText('agrees');
  await page.locator('#quoted-heartVolume').fill('a good deal');
  await expect(page.locator('.field:has(#quoted-heartVolume)')).toContainText(
    '“a good deal” was given; it can be from',
  );
});

test('a pasted script is marked, checked and made into a card, and leaves the browser nowhere', async ({
  page,
}) => {
  const wrong = watch(page);
  await open(page, '/script/');
  await page.locator('#script-text').fill(`${script}\n<img src=x onerror=alert(1)>`);
  await expect(page.locator('.marked .mark').first()).toBeVisible();
  expect(await page.locator('.marked .mark').count()).toBeGreaterThan(30);
  expect(await page.locator('.marked img').count()).toBe(0);
  await expect(page.locator('.marked')).toContainText('<img src=x onerror=alert(1)>');
  await expect(page.locator('.marked .mark.disagrees').first()).toBeVisible();
  await expect(page.locator('.script-reader .card dd').first()).not.toBeEmpty();
  // A figure that is contradicted is on no card.
  const leftOut = await page.locator('.script-card > .sentences li').allInnerTexts();
  expect(leftOut.length).toBeGreaterThan(0);
  const carried = await page.locator('.script-card dt').allInnerTexts();
  for (const left of leftOut)
    expect(carried.some((label) => left.toLowerCase().includes(`${label.toLowerCase()}:`))).toBe(false);
  // A touched mark says what it was taken for; one that is not ours is checked no more.
  const first = page.locator('.marked .mark.agrees').first();
  const words = await first.innerText();
  await first.click();
  await page.locator('.taken').getByRole('button', { name: 'Not ours' }).click();
  await expect(page.locator('.taken')).toHaveCount(0);
  await expect(page.locator('.marked .mark').filter({ hasText: words }).first()).toHaveClass(/not-checkable/);
  // What was put right outlives an edit elsewhere and a reload.
  await page.locator('.talk-box summary').click();
  await page.locator('#script-text').press('End');
  await page.locator('#script-text').pressSequentially(' That is all.');
  await expect(page.locator('.marked')).toContainText('That is all.');
  await page.reload();
  await expect(page.locator('.marked .mark').filter({ hasText: words }).first()).toHaveClass(/not-checkable/);
  expect(wrong).toEqual([]);
});

test('a script is held against the reader’s own house when asked', async ({ page }) => {
  await open(page, '/script/');
  await page
    .locator('#script-text')
    .fill('Each mash is 1,500 kilos of malt. It ferments for 56 hours. The original gravity is 1058.');
  await expect(page.locator('.marked .mark')).toHaveCount(3);
  await page.locator('#script-against-house').check();
  // Harrowmere leaves its wash 72 hours; the rest is as it has it.
  await expect(page.locator('.against-house li')).toHaveText([
    'Hours in the washback: you say 56 h; Harrowmere has 72 h.',
  ]);
  await expect(page.locator('.marked .mark.disagrees')).toHaveText('56 hours');
  await expect(page.locator('.marked .mark.agrees')).toHaveCount(2);
});

test('a long talk is read beside the page and shown in portions; what an edit leaves as it was stays on the page', async ({
  page,
}) => {
  const long = [scriptOf('long').text, scriptOf('chatty').text].join('\n\n');
  await open(page, '/script/');
  await page.evaluate(() => {
    const portions: number[] = [];
    Object.assign(globalThis, { portions });
    new MutationObserver(() => {
      const count = document.querySelectorAll('.marked > div').length;
      if (count > (portions.at(-1) ?? 0)) portions.push(count);
    }).observe(document.querySelector('.script-reader')!, { childList: true, subtree: true });
  });
  const worker = page.waitForEvent('worker');
  await page.locator('#script-text').fill(long);
  expect((await worker).url()).toContain('script-reading');
  await expect(page.locator('.marked > div').last()).toHaveText(long.split('\n').at(-2)!);
  const portions = await page.evaluate(
    () => (globalThis as unknown as { portions: readonly number[] }).portions,
  );
  expect(portions.length).toBeGreaterThan(5);
  expect(await page.locator('.marked').evaluate((marked) => marked.textContent)).toBe(long);
  const marks = await page.locator('.marked .mark').count();
  // An edit at the beginning: all but its own paragraph are the same parts of the page, and a mark still knows its place.
  const last = await page.locator('.marked .mark').last().elementHandle();
  await page.locator('.talk-box summary').click();
  await page.locator('#script-text').press('Control+Home');
  await page.locator('#script-text').pressSequentially('There are 9 casks. ');
  await expect(page.locator('.marked .mark')).toHaveCount(marks + 1);
  expect(await last!.evaluate((mark) => mark.isConnected)).toBe(true);
  await last!.click();
  await page.locator('.taken select').selectOption('numberOfWashbacks');
  await expect(page.locator('.taken')).toHaveCount(0);
  await last!.click();
  await expect(page.locator('.taken b')).toHaveText(/washbacks/i);
});

test('the figures of the reader’s own house can be filled in, and agree with it', async ({ page }) => {
  await open(page, '/cross-check/');
  await page.locator('#quoted-add').selectOption('maltPerMash');
  await page.locator('#quoted-maltPerMash').fill('1,700');
  await page.getByRole('button', { name: /from my house/ }).click();
  await expect(page.locator('#quoted-maltPerMash')).toHaveValue('1,700');
  await expect(page.locator('#quoted-mashesPerWeek')).toHaveValue('6');
  await page.locator('#quoted-against-house').check();
  await expect(page.locator('.against-house li')).toHaveText([
    /^Malt a mash: you say 1,700 kg; Harrowmere has/,
  ]);
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
