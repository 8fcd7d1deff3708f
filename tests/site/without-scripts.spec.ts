// With JavaScript off, every page tells Harrowmere's figures, and they are those of the core.
import { expect, test } from '@playwright/test';
import { format } from '../../src/core/format.ts';
import { ledger } from '../../src/core/line/ledger.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { figureText } from '../../src/house/prose.ts';
import { addresses, chapters, parts } from './pages.ts';

test.use({ javaScriptEnabled: false });

test('every page has its figures', async ({ page }) => {
  test.setTimeout(300_000);
  await page.route(/\.(css|woff2|svg|png)$/, (route) => route.abort()); // what is read is text
  let told = 0;
  for (const address of addresses) {
    await page.goto(address);
    const figures = await page.locator('[data-figure]').evaluateAll((all) =>
      all.map((element) => {
        const { figure, per, digits, bare } = (element as HTMLElement).dataset;
        return {
          figure: figure!,
          per,
          digits,
          isBare: bare !== undefined,
          text: element.textContent!.trim(),
        };
      }),
    );
    for (const { figure, per, digits, isBare, text } of figures) {
      const pace = per as 'year' | undefined;
      const whole = figureText(
        builtInLine(),
        figure,
        pace,
        digits === undefined ? undefined : Number(digits),
      );
      expect.soft(text, `${figure} on ${address}`).toBe(isBare ? /^[−\d.,]+/.exec(whole)![0] : whole);
      told++;
    }
    const [, chapter, part] = /^\/(\w+)\/(\w+\/)?$/.exec(address) ?? [];
    if (chapters.some((each) => each === chapter) && part !== 'safe/') {
      const heart = page.locator('.ledger [data-station="heart"]');
      const litres = format(ledger(builtInLine(), 'mash').heart, 'volume20', 0);
      expect
        .soft((await heart.textContent())!.replace(/\s/g, ' ').trim(), address)
        .toBe(litres.replace(/\s/g, ' '));
    }
    if (/^\/sums\/./.test(address)) {
      const found = page.locator('.calculator .results dd, main td').first();
      expect.soft((await found.textContent())!.trim(), address).not.toBe('');
    }
  }
  expect(told).toBeGreaterThan(300);
});

for (const chapter of chapters)
  test(`the pages of ${chapter} tell figures of the house`, async ({ page }) => {
    const figures = new Set<string>();
    for (const part of parts) {
      await page.goto(`/${chapter}/${part}`);
      for (const name of await page
        .locator('[data-figure]')
        .evaluateAll((all) => all.map((element) => (element as HTMLElement).dataset['figure']!)))
        figures.add(name);
    }
    expect(figures.size).toBeGreaterThan(5);
  });

test('the doors of the head open, and lead on', async ({ page }) => {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 });
    await page.goto('/');
    await page.locator('.door summary', { hasText: 'Learn' }).click();
    await page.locator('.door[open] a', { hasText: 'Safety' }).click();
    await expect(page.locator('h1')).toHaveText('Safety');
  }
});

test('a page with figures says that nothing can be changed, and its fields look so', async ({ page }) => {
  for (const address of [
    '/',
    '/malting/',
    '/malting/work/',
    '/sums/kiln/',
    '/house/',
    '/cards/',
    '/script/',
    '/cross-check/',
  ]) {
    await page.goto(address);
    await expect(page.locator('.without-scripts:not([role])'), address).toContainText('Harrowmere');
    await expect(page.locator('.without-scripts:not([role])'), address).toBeVisible();
  }
  await expect(page.locator('.without-scripts:not([role])')).toContainText('This page needs JavaScript');
  const field = page.locator('.sheet :is(button, select, input)').first();
  expect(Number(await field.evaluate((element) => getComputedStyle(element).opacity))).toBeLessThan(1);
  await page.goto('/glossary/');
  await expect(page.locator('.without-scripts:not([role])')).toBeHidden();
});
