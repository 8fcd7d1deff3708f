// Every page: it loads clean, reads right without scripts, fits a phone, and passes the accessibility rules.
import { expect, test } from '@playwright/test';
import { addresses, broken, chapters, open, watch } from './pages.ts';

test('the site has its pages', () => {
  expect(addresses).toEqual(
    expect.arrayContaining(['/', '/sources/', ...chapters.map((chapter) => `/${chapter}/`)]),
  );
});

for (const address of addresses) {
  test.describe(address, () => {
    test('links lead somewhere', async ({ page, request }) => {
      await page.goto(address);
      const links = await page
        .locator('a[href]')
        .evaluateAll((all) => [...new Set(all.map((a) => (a as HTMLAnchorElement).href))]);
      for (const link of links) {
        const { pathname, hash } = new URL(link);
        const response = await request.get(pathname);
        expect(response.status(), link).toBe(200);
        if (hash && !hash.includes('='))
          expect(await response.text(), link).toContain(`id="${hash.slice(1)}"`);
      }
    });

    test('loads clean, with sound ids and headings, and fits phone and desk', async ({ page }) => {
      const wrong = watch(page);
      await open(page, address);
      expect(wrong).toEqual([]);
      await expect(page.locator('h1')).toHaveCount(1);
      expect(await page.locator('body').innerText()).not.toMatch(/NaN|undefined|Infinity|\[object/);
      const ids = await page.locator('[id]').evaluateAll((all) => all.map((element) => element.id));
      expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
      const levels = await page
        .locator('h1, h2, h3, h4')
        .evaluateAll((all) => all.map((h) => Number(h.tagName[1])));
      levels.forEach((level, i) =>
        expect(level, `heading ${i + 1}`).toBeLessThanOrEqual((levels[i - 1] ?? 0) + 1),
      );
      // 320 px is a desk's 1280 at 400 %.
      for (const width of [1280, 390, 320]) {
        await page.setViewportSize({ width, height: 844 });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide, `${width} px`).toBeLessThanOrEqual(width);
      }
    });

    test('axe finds nothing, in light or dark', async ({ page }) => {
      test.setTimeout(180_000);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await open(page, address);
      await page
        .locator('details:not([open])')
        .evaluateAll((all) => all.forEach((d) => d.setAttribute('open', '')));
      expect(await broken(page)).toEqual([]);
    });
  });
}
