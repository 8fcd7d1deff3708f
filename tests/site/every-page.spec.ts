// Every page: it loads clean, still and within its budgets, fits a phone and eight screens of it, its links lead somewhere, and it passes the accessibility rules.
import { expect, test, type Page } from '@playwright/test';
import { fetched, keepsToBudget } from './budget.ts';
import { addresses, addUpShifts, broken, chapters, open, shiftOf, watch } from './pages.ts';

const PHONE = { width: 390, height: 844 };
const MOST = 8; // screens

/** Lists to look things up in: one looks for a word in them and does not read them through. */
const lists = ['/glossary/', '/sources/', '/accuracy/'];

test('the site has its pages', () => {
  expect(addresses).toEqual(
    expect.arrayContaining(['/', '/sources/', ...lists, ...chapters.map((chapter) => `/${chapter}/`)]),
  );
});

test('links lead somewhere', async ({ request, baseURL }) => {
  test.setTimeout(300_000);
  const texts = new Map<string, string>();
  const textOf = async (path: string) => {
    const known = texts.get(path);
    if (known !== undefined) return known;
    const response = await request.get(path);
    expect.soft(response.status(), path).toBe(200);
    const text = await response.text();
    texts.set(path, text);
    return text;
  };
  let links = 0;
  for (const address of addresses)
    for (const [, to] of (await textOf(address)).matchAll(/<a\s[^>]*?href="([^"]+)"/g)) {
      const { origin, pathname, hash } = new URL(to!.replaceAll('&amp;', '&'), new URL(address, baseURL));
      if (origin !== new URL(baseURL!).origin) continue;
      links++;
      const found = await textOf(pathname);
      if (hash && !hash.includes('='))
        expect.soft(found.includes(`id="${hash.slice(1)}"`), `${to} on ${address}`).toBe(true);
    }
  expect(links).toBeGreaterThan(10 * addresses.length);
});

/** How many screens of a phone a page has, all of it laid out. */
const screensOf = (page: Page) =>
  page.evaluate(async (height) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('* { content-visibility: visible !important }');
    document.adoptedStyleSheets.push(sheet);
    document.documentElement.getBoundingClientRect(); // which asks for the fonts of what was not in sight
    await document.fonts.ready;
    return document.documentElement.scrollHeight / height;
  }, PHONE.height);

for (const address of addresses)
  test(`${address} loads clean, still and within its budgets, is short and fits, and axe finds nothing in light or dark`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    const wrong = watch(page);
    await page.addInitScript(addUpShifts);
    await page.setViewportSize(PHONE);
    const costs = await keepsToBudget(page, address, await fetched(page, address));
    expect(await shiftOf(page), 'shift at 390 px').toBeLessThan(0.001);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    let screens = await screensOf(page);
    if (screens > MOST) {
      await open(page, address); // a slow machine's first visit goes without the book's fonts; by now they are here
      screens = await screensOf(page);
    }
    console.log(`${address.padEnd(28)} ${screens.toFixed(1)} screens, ${costs}`);
    if (!lists.includes(address)) expect(screens).toBeLessThanOrEqual(MOST);

    await page.setViewportSize({ width: 1280, height: 844 });
    await open(page, address);
    await page.evaluate(() => document.fonts.ready);
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
    expect(await shiftOf(page), 'shift at 1280 px').toBeLessThan(0.001);

    // 320 px is a desk's 1280 at 400 %.
    for (const width of [320, 390, 1280]) {
      await page.setViewportSize({ ...PHONE, width });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, `${width} px`).toBeLessThanOrEqual(width);
    }
    await page
      .locator('details:not([open])')
      .evaluateAll((all) => all.forEach((d) => d.setAttribute('open', '')));
    expect(await broken(page)).toEqual([]);
    expect(wrong).toEqual([]);
  });
