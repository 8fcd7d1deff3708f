// No page is longer than eight screens of a phone, everything on it laid out.
import { expect, test } from '@playwright/test';
import { addresses, open } from './pages.ts';

const PHONE = { width: 390, height: 844 };
const MOST = 8; // screens

/** Lists to look things up in: one looks for a word in them and does not read them through. */
const lists = ['/glossary/', '/sources/', '/accuracy/'];
test.use({ viewport: PHONE });

for (const address of addresses.filter((each) => !lists.includes(each)))
  test(`${address} is no longer than ${MOST} screens`, async ({ page }) => {
    await open(page, address);
    await page.evaluate(() => document.fonts.ready);
    const screens = await page.evaluate((height) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('* { content-visibility: visible !important }');
      document.adoptedStyleSheets.push(sheet);
      return document.documentElement.scrollHeight / height;
    }, PHONE.height);
    console.log(`${address.padEnd(28)} ${screens.toFixed(1)} screens`);
    expect(screens).toBeLessThanOrEqual(MOST);
  });

test('the lists that are looked up are pages of the book', () => {
  expect(addresses).toEqual(expect.arrayContaining(lists));
});
