// A corrected book tells what it tells otherwise of the reader's house: once, above the text, with the way to new cards; and all that is printed says by which book.
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { stampOf } from '../../src/build/stamp.ts';
import { broken, open } from './pages.ts';
import { faultsOf, layOut } from './paper.ts';

const sixty = { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse;
const TOLD = 'malt-spirit-handbook/told';
const kept = (page: Page) => page.evaluate((key) => localStorage.getItem(key), TOLD);

/** Makes what is remembered to be what an older book told, with its low wines a little stronger. */
const byAnOlderBook = (page: Page) =>
  page.evaluate((key) => {
    const all = JSON.parse(localStorage.getItem(key)!) as [
      string,
      { book: string; figures: Record<string, string> },
    ][];
    for (const [, told] of all) {
      told.book = '0.0.9-000000';
      told.figures['lowWines.strength'] = '23.9 % vol';
    }
    localStorage.setItem(key, JSON.stringify(all));
    const told = localStorage.getItem(`${key}-by`)!;
    localStorage.setItem(`${key}-by`, told.replace(/^\S+/, '0.0.9-000000'));
  }, TOLD);

for (const [name, house] of [
  ['Harrowmere', undefined],
  ['Sallowby', sixty],
] as const)
  test(`a corrected figure of ${name} reaches the reader once, and can be put away`, async ({ page }) => {
    if (house)
      await page.addInitScript(
        (text) => localStorage.setItem('malt-spirit-handbook/house', text),
        encodeHouse({ name, house }),
      );
    await open(page, '/malting/');
    await page.waitForFunction((key) => localStorage.getItem(key) !== null, TOLD);
    await open(page, '/milling/'); // a first page has nothing yet to compare with
    await expect.poll(() => kept(page)).toContain('lowWines.strength');
    await expect(page.locator('.corrected')).toHaveCount(0);
    await expect
      .poll(() => page.evaluate((key) => localStorage.getItem(`${key}-by`), TOLD))
      .toContain(stampOf());
    await byAnOlderBook(page);
    await open(page, '/mashing/');
    const says = page.locator('.corrected');
    await expect(says).toContainText(
      `This book was corrected: one of the figures of ${name} is told otherwise.`,
    );
    await expect(says.locator('li')).toHaveText(/^Low-wines strength: 23\.9 % vol → \d\d\.\d\s%\svol$/);
    await expect(says.getByRole('link', { name: 'print new ones' })).toHaveAttribute('href', /\/cards\/$/);
    await expect(page.locator('#announcer')).toContainText('This book was corrected');
    expect(await broken(page, '.corrected')).toEqual([]);
    await open(page, '/cards/'); // until it is put away
    await says.getByRole('button').click();
    await expect(says).toHaveCount(0);
    await open(page, '/mashing/');
    await page.waitForTimeout(600);
    await expect(says).toHaveCount(0);
    expect(await kept(page)).toContain(stampOf());
  });

test('what the reader changed is no correction', async ({ page }) => {
  await open(page, '/malting/');
  await page.waitForFunction((key) => localStorage.getItem(key) !== null, TOLD);
  await open(page, '/house/distilling/');
  await expect.poll(() => kept(page)).toContain('lowWines.strength');
  await page.locator('#house-heartEnd').fill('61');
  await page.waitForTimeout(400);
  await open(page, '/malting/');
  await expect.poll(() => kept(page)).toContain('\\"heartEnd\\":61');
  await expect(page.locator('.corrected')).toHaveCount(0);
});

for (const [address, where] of [
  ['/cards/', '.card .side:first-child .foot'],
  ['/mashing/', '.stamp'],
  ['/distilling/work/', '.stamp'],
  ['/house/', '.stamp'],
  ['/cross-check/', '.stamp'],
  ['/safety/still-house/', '.stamp'],
] as const)
  test(`printed, ${address} says whose figures they are, and by which book`, async ({ page }) => {
    await page.addInitScript(
      (text) => {
        localStorage.setItem('malt-spirit-handbook/house', text);
      },
      encodeHouse({ name: 'Sallowby', house: sixty }),
    );
    await open(page, address);
    await layOut(page, 'A4');
    await expect(page.locator(where).first()).toBeVisible();
    await expect(page.locator(where).first()).toContainText(`Sallowby · book ${stampOf()}`);
    expect(await faultsOf(page, 'A4')).toEqual([]);
  });

test('a printed sheet and a printed record say by which book', async ({ page }) => {
  await page.addInitScript(() => (window.print = () => undefined));
  await open(page, '/sheets/');
  await expect(page.locator('.preview .sheet-paper .small').first()).toContainText(`By book ${stampOf()}`);
  await open(page, '/practice/');
  await page.getByRole('button', { name: 'Print the record to sign' }).click();
  await expect(page.locator('.paper.record .small')).toContainText(`Book ${stampOf()}`);
});
