// With letters of twice the size on a phone, every kind of page keeps to its width, and nothing sticks out of its box.
import { expect, test, type Page } from '@playwright/test';
import { open } from './pages.ts';

const PHONE = { width: 390, height: 844 };
const ROUNDING = 2; // px: an edge drawn between two pixels

/** One of each kind of page, and of the calculators those with tables, charts, choices and the longest units. */
const kindsOfPage = [
  '/', '/malting/', '/distilling/', '/maturing/work/', '/mashing/check/', '/strength-and-volume/', '/law/', '/law/your-label/', '/safety/', '/safety/still-house/',
  '/house/', '/house/mashing/', '/cards/', '/cross-check/', '/practice/', '/script/', '/search/', '/sheets/', '/sheet/', '/glossary/', '/sources/', '/accuracy/', '/sums/',
  '/sums/barley-and-land/', '/sums/carbon-dioxide-in-a-room/', '/sums/fit-stills/', '/sums/how-sure-is-the-round/', '/sums/season/', '/sums/steep-uptake/', '/sums/wash-run/', '/sums/yeast-dose/',
] as const; // prettier-ignore

/** What is wider than the page, or sticks out of the box it stands in; what scrolls by itself may hold more. */
const stickingOut = (page: Page) =>
  page.evaluate((rounding) => {
    const name = (part: Element) =>
      `${part.outerHTML.slice(0, 90)} … ${part.textContent.trim().slice(0, 30)}`;
    const scrolls = (part: Element | null): boolean =>
      part !== null &&
      part !== document.body &&
      (getComputedStyle(part).overflowX !== 'visible' || scrolls(part.parentElement));
    const wrong: string[] = [];
    for (const part of document.querySelectorAll(
      'input, select, textarea, button, summary, label, legend, p, li, h1, h2, h3, dt, dd, figcaption, a, text, output',
    )) {
      const box = part.getBoundingClientRect();
      if (!part.checkVisibility() || box.width === 0 || part.closest('.visually-hidden, .skip')) continue;
      if ((box.right > innerWidth + rounding || box.left < -rounding) && !scrolls(part.parentElement))
        wrong.push(name(part));
      if (!part.matches('input, select, textarea, button')) continue;
      const around = part.parentElement!.getBoundingClientRect();
      if (around.width > 0 && box.right > around.right + rounding)
        wrong.push(`out of its box: ${name(part)}`);
    }
    return { width: document.documentElement.scrollWidth, wrong };
  }, ROUNDING);

/** Doubles the letters and opens all that is folded. */
async function enlarge(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) fold.open = true;
  });
  await page.waitForTimeout(300); // what is drawn once it is in sight
}

test.use({ viewport: PHONE });

for (const address of kindsOfPage)
  test(`${address} keeps to a phone’s width with letters of twice the size`, async ({ page }) => {
    for (let visit = 1; visit <= 2; visit++) await open(page, address); // a slow machine's first goes without the book's fonts
    await enlarge(page);
    await expect.poll(() => stickingOut(page)).toEqual({ width: PHONE.width, wrong: [] }); // once it is laid out anew
  });

test('what a figure of a talk was taken for keeps to its panel', async ({ page }) => {
  await open(page, '/script/');
  await page
    .locator('#script-text')
    .fill(
      'Each mash is 1,500 kilos of malt, and the heart comes off at 68.5 per cent. We fill 12 casks a week.',
    );
  await page.locator('.marked button.mark').first().click();
  await expect(page.locator('.taken select')).toBeVisible();
  await enlarge(page);
  expect(await stickingOut(page)).toEqual({ width: PHONE.width, wrong: [] });
});

test('the words at a chart’s limits and axes grow with the letters', async ({ page }) => {
  await open(page, '/sums/carbon-dioxide-in-a-room/');
  const heights = () =>
    page
      .locator('.plot .tick, .chart figcaption')
      .evaluateAll((texts) => texts.map((text) => parseFloat(getComputedStyle(text).fontSize)));
  const before = await heights();
  await enlarge(page);
  const after = await heights();
  expect(before.length).toBeGreaterThan(4);
  for (const [i, height] of before.entries()) expect(after[i]! / height).toBeCloseTo(2, 1);
});
