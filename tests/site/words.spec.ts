// The walk told to US visitors and to children, its copy and its cards; the trade’s words in other languages and their cards: on a phone.
import { expect, test, type Page } from '@playwright/test';
import { talk } from '../walk/harrowmere-talk.ts';
import { open, ready, watch } from './pages.ts';
import { pageCount } from './paper.ts';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' }); // prettier-ignore
const kept = (page: Page, key: string) => page.evaluate((name) => JSON.parse(localStorage.getItem(`malt-spirit-handbook/${name}`) ?? 'null'), key); // prettier-ignore
const screens = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight / 844);
const MM = 96 / 25.4;

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => (window.print = () => {}));
  await page.setViewportSize({ width: 390, height: 844 });
});

async function paste(page: Page): Promise<void> {
  await open(page, '/walk/');
  await page.locator('#walk-text').focus();
  await page.keyboard.insertText(talk);
  await expect(page.locator('.walk-rooms > .said')).toContainText('12 pieces, in 6 of 6 rooms');
  await button(page, /^Children, a chemist/).click();
}

test('US visitors: new words seen, taken into a copy, printed on the cards, and kept', async ({ page }) => {
  const wrong = watch(page);
  await paste(page);
  await page.locator('#walk-coming').selectOption('us');
  await expect(page.locator('#walk-said-in')).toHaveValue('American');
  const first = page.locator('.audience .stale > li').first();
  await expect(first.locator('del')).toContainText('1.8 tonnes of barley'); // 1,809 kg: 3,988 lb
  await expect(first.locator('ins')).toContainText('just over 3,900 pounds of barley'); // the side that was said is kept
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  expect(await screens(page)).toBeLessThan(8);
  await expect(page.locator('.walk-card')).toContainText(' lb');

  // The first is left as it is, all others go into a copy.
  await first.getByLabel('Take it').uncheck();
  await button(page, /^Take \d+ into a copy$/).click();
  await expect(page.locator('#walk-name')).toHaveValue('My walk, US visitors');
  await expect(page.locator('.audience .stale > li')).toHaveCount(1);
  const copy = JSON.stringify(await kept(page, 'walk'));
  for (const words of ['1.8 tonnes of barley', '1,980 US gallons', '148.1 degrees Fahrenheit. ', '"coming":"us"']) expect(copy).toContain(words); // prettier-ignore
  expect(copy).not.toContain('7,500 litres');
  const own = (await kept(page, 'walks'))['My walk'] as string;
  expect(own).toContain('7,500 litres');
  expect(own).not.toContain('US gallons');
  await expect(button(page, 'Open My walk')).toBeVisible();

  // Its cards are in their units.
  await button(page, 'Print all cards').click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.leaf').first()).toContainText('1,981\u00a0US\u00a0gal'); // wort: 7,500 L
  await expect(page.locator('.leaf .front').nth(4)).toContainText(/\d US\u00a0proof|\d\u00a0US\u00a0proof/);
  await expect(page.locator('.leaf').first()).not.toContainText('°C');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: 'screen' });

  await page.reload();
  await ready(page);
  await expect(page.locator('.walk-audience')).toContainText('US visitors. Figures: US gallons, pounds, °F and proof.'); // prettier-ignore
  await expect(page.locator('.walk-list button').nth(2)).toBeVisible();
  expect(wrong).toEqual([]);
});

test('children: a piece that is not for them stays out, one for them is added, and the sheet for another language is printed', async ({ page }) => {
  await paste(page);
  const words = () => page.locator('.walk-list small').evaluateAll((all) => all.reduce((sum, each) => sum + Number(/(\d+) words/.exec(each.textContent!)![1]), 0)); // prettier-ignore
  const before = await words();
  await page.locator('.pieces .piece').first().click();
  const piece = (await page.locator('#walk-piece').inputValue()).match(/[\p{L}\p{N}][^\s—–]*/gu)!.length;
  await page.locator('#walk-whom').selectOption('adults');
  expect(await words()).toBe(before);
  await page.locator('#walk-coming').selectOption('children');
  await expect(page.locator('.walk-audience')).toContainText('One piece is not for children, and stays out.');
  expect(await words()).toBe(before - piece);
  await page.locator('.audience summary').click();
  await button(page, /^Add to Malt barn: Guess how many grains/).click();
  await expect(page.locator('.pieces .piece').last()).toContainText('Only for children. Guess how many grains');
  expect(await words()).toBeGreaterThan(before - piece);
  await button(page, 'Print a sheet for another language').click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.walk-abroad')).toContainText('7,500\u00a0L');
  await expect(page.locator('.words-to-write > div')).toHaveCount(51);
  await expect(page.locator('.walk-sheet')).toBeHidden();
  expect(await page.locator('.walk-abroad').evaluate((sheet) => getComputedStyle(sheet).display)).toBe('block');
}); // prettier-ignore

test('words: a language is chosen, ticks are kept, and the cards are A6, four to a sheet', async ({
  page,
}) => {
  const wrong = watch(page);
  await open(page, '/words/');
  expect(await screens(page)).toBeLessThan(8);
  await page.locator('#words-language').selectOption('de');
  const row = (english: string) => page.locator('.words tr').filter({ has: page.getByRole('rowheader', { name: english, exact: true }) }); // prettier-ignore
  await expect(row('yeast').locator('[lang=de]')).toHaveText('Hefe');
  await expect(row('yeast')).toContainText('read, 1');
  await expect(row('peat')).toContainText('memory');
  await expect(row('spirit safe').locator('.to-write')).toBeVisible();
  await page.locator('#words-language').selectOption('ja');
  await expect(row('barley').locator('[lang=ja]')).toHaveText('大麦');
  await expect(row('barley').locator('.reading')).toHaveText('おおむぎ');
  await row('peat').getByRole('checkbox').uncheck();
  await page.reload();
  await ready(page);
  await expect(page.locator('#words-language')).toHaveValue('ja');
  await expect(row('peat').getByRole('checkbox')).not.toBeChecked();
  await expect(page.locator('.words-desk')).toContainText('Japanese: 50 of 51 words on 4 cards.');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);

  await button(page, 'Print the cards').click();
  await page.emulateMedia({ media: 'print' });
  const cards = page.locator('.word-card');
  await expect(cards).toHaveCount(4);
  await expect(cards.first()).not.toContainText('peat');
  const { width, height } = (await cards.first().boundingBox())!;
  expect(width / MM).toBeCloseTo(105, 0); // A6: ISO 216
  expect(height / MM).toBeCloseTo(148, 0);
  for (const spills of await cards.evaluateAll((all) => all.map((card) => card.scrollHeight - card.clientHeight))) expect(spills).toBeLessThanOrEqual(1); // prettier-ignore
  expect(await pageCount(page, 'A4')).toBe(1);
  expect(wrong).toEqual([]);
});

test('what was kept of the words and is none counts for nothing', async ({ page }) => {
  const wrong = watch(page);
  await page.addInitScript(() => {
    localStorage.setItem('malt-spirit-handbook/words-language', '__proto__');
    localStorage.setItem('malt-spirit-handbook/words-off', '{"a":1');
  });
  await open(page, '/words/');
  await expect(page.locator('#words-language')).toHaveValue('fr');
  await expect(page.locator('.words-desk')).toContainText('51 of 51 words');
  expect(wrong).toEqual([]);
});
