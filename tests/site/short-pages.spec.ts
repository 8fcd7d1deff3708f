// No page is longer than eight screens of a phone, everything on it laid out.
import { expect, test } from '@playwright/test';
import { addresses, open } from './pages.ts';

const PHONE = { width: 390, height: 844 };
const MOST = 8; // screens

/** Lists to look things up in: one looks for a word in them and does not read them through. */
const lists = ['/glossary/', '/sources/', '/accuracy/'];
/** Pages that are still too long, with the screens they were measured at; none may grow, and what is short enough goes from the list. */
const tooLong: Readonly<Record<string, number>> = {
  '/ingredients/': 17.6,
  '/heat-and-water/': 17.4,
  '/safety/': 15.9,
  '/distilling/': 14.1,
  '/strength-and-volume/': 13.8,
  '/maturing/': 12.2,
  '/law/': 11.6,
  '/using/': 10.7,
  '/distilling/work/': 10.3,
  '/maturing/work/': 8.7,
};

test.use({ viewport: PHONE });

for (const address of addresses.filter((each) => !lists.includes(each)))
  test(`${address} is no longer than ${tooLong[address] ?? MOST} screens`, async ({ page }) => {
    await open(page, address);
    await page.evaluate(() => document.fonts.ready);
    const screens = await page.evaluate((height) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('* { content-visibility: visible !important }');
      document.adoptedStyleSheets.push(sheet);
      return document.documentElement.scrollHeight / height;
    }, PHONE.height);
    console.log(`${address.padEnd(28)} ${screens.toFixed(1)} screens`);
    expect(screens).toBeLessThanOrEqual(tooLong[address] ?? MOST);
  });

test('the list of pages that are too long names pages of the book', () => {
  expect(addresses).toEqual(expect.arrayContaining([...lists, ...Object.keys(tooLong)]));
});
