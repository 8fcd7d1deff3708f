// The register of casks in use: totals, a group added, changed and taken out, a bottling, tables in and out, and what is nonsense.
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import type { CaskGroup } from '../../src/core/stock/group.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open } from './pages.ts';

const KEY = 'malt-spirit-handbook/house';
const stored = async (page: Page) =>
  JSON.parse((await page.evaluate((key) => localStorage.getItem(key), KEY)) ?? '{}') as {
    parts?: { stock?: { groups: CaskGroup[]; emptied?: number } };
  };
const titled = (page: Page, id: string) => page.locator(`section[aria-labelledby="${id}-title"]`);
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const result = (page: Page, id: string, label: string) =>
  titled(page, id).locator('dl > div', { has: page.locator('dt', { hasText: label }) }).locator('dd'); // prettier-ignore
const heading = 'Name;Casks;Size (L);Filled on;Filled with (L);Filled at (% vol)';

/** Opens the page with a house of the reader's own, and a register. */
async function withRegister(page: Page, stock?: object, others: object = {}) {
  const house = { name: 'Sallowby', house: builtInHouse, ...(stock ? { parts: { stock, ...others } } : {}) };
  await open(page, '/');
  await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [KEY, encodeHouse(house)] as const);
  await open(page, '/house/stock/');
}

test('Harrowmere’s register shows its casks, and a house of another name has none of them', async ({ page }) => {
  await open(page, '/house/stock/');
  await expect(result(page, 'stock', 'Casks').first()).toHaveText('3,419');
  await expect(page.locator('.groups tbody tr')).toHaveCount(10);
  await expect(page.locator('.groups tbody tr', { hasText: 'Butts 2017' }).locator('td').last()).toHaveText(/^7\d\d$/);
  await withRegister(page);
  await expect(titled(page, 'stock')).toContainText('Sallowby has no register yet.');
  await expect(result(page, 'stock', 'A barrel of 200 L')).toHaveText(/^\d+ bottles$/);
  await expect(result(page, 'stock', 'A butt of 500 L')).toHaveText(/^[\d,]+ bottles$/);
  await expect(page.locator('.groups')).toHaveCount(0);
  await expect(titled(page, 'stock-dump')).toHaveCount(0);
}); // prettier-ignore

test('a group is added, changed and taken out, nonsense is told at its field, and the last change can be put back', async ({ page }) => {
  await withRegister(page);
  await button(page, 'Add a group').click();
  await button(page, 'Put it in the register').click();
  await expect(page.locator('#group-casks-problem')).toContainText('Casks: nothing was given');
  await expect(page.locator('#group-casks')).toBeFocused();
  for (const [field, nonsense, says] of [
    ['casks', '2.5', 'whole number'],
    ['casks', '-4', 'from 1 to'],
    ['size', '9000', 'from 10 to 1,000'],
    ['size', 'a firkin or so', 'was given'],
    ['filled', '31/02/2016', 'was given'],
    ['filled', '2090', 'has not come yet'],
    ['filledVolume', '900', 'do not go into a cask'],
    ['filledStrength', '96', 'from 20 to 94.8'],
  ] as const) {
    for (const [name, sound] of [['casks', '40'], ['size', '125'], ['filled', '14/03/2016'], ['filledVolume', '120,5'], ['filledStrength', '63.5 %']] as const)
      await page.locator(`#group-${name}`).fill(name === field ? nonsense : sound);
    await expect(page.locator(`#group-${field}-problem`), `${field} ${nonsense}`).toContainText(says);
    await page.locator(`#group-${field}`).press('Enter');
    expect((await stored(page)).parts).toBeUndefined();
  }
  await page.locator('#group-filledStrength').fill('63.5');
  await page.locator('#group-name').fill('Small ones');
  await page.locator('.group-form summary').click();
  await page.locator('#group-wood').selectOption('european');
  await button(page, 'Put it in the register').click();
  await expect(page.locator('.said')).toContainText('Small ones is in the register.');
  await expect.poll(async () => (await stored(page)).parts?.stock?.groups).toEqual([{ name: 'Small ones', casks: 40, size: 125, filled: '2016-03-14', filledVolume: 120.5, filledStrength: 63.5, wood: 'european' }]);
  await button(page, 'Change Small ones').click();
  await page.locator('#group-casks').fill('39');
  await button(page, 'Keep the change').click();
  await expect(result(page, 'stock', 'Casks').first()).toHaveText('39');
  await button(page, 'Change Small ones').click();
  await button(page, 'Take the group out').click();
  await expect(page.locator('.groups')).toHaveCount(0);
  await button(page, 'Put it back as it was').click();
  await expect(result(page, 'stock', 'Casks').first()).toHaveText('39');
}); // prettier-ignore

test('casks for a bottling: the youngest gives the age, the law is named, and the casks leave the register', async ({ page }) => {
  const old: CaskGroup = { name: 'Old', casks: 20, size: 200, filled: '2010-01-01', filledVolume: 195, filledStrength: 63.5 };
  await withRegister(page, { opened: 2009, emptied: 100, groups: [old, { ...old, name: 'Young', filled: '2024-06-01' }] });
  await page.locator('#dump-day').fill('2026-05-31');
  await expect(result(page, 'stock-dump', 'Age the label may state')).toHaveText('16 years');
  await page.locator('#dump-add').selectOption({ label: 'Young' });
  await expect(result(page, 'stock-dump', 'Age the label may state')).toHaveText('1 year');
  await expect(titled(page, 'stock-dump')).toContainText('at least three years (Single malt Scotch whisky; Scotch whisky');
  await page.locator('#dump-day').fill('2027-06-01');
  await expect(result(page, 'stock-dump', 'Age the label may state')).toHaveText('3 years');
  for (const nonsense of ['21', '1.5', '-1', 'all']) {
    await page.locator('#dump-1').fill(nonsense);
    await expect(page.locator('#dump-1-problem')).toContainText('There are 20 casks in this group');
  }
  await page.locator('#dump-1').fill('20');
  await button(page, 'Take these casks out of the register').click();
  await expect.poll(async () => (await stored(page)).parts?.stock).toMatchObject({ emptied: 130, groups: [{ name: 'Old', casks: 10 }] });
}); // prettier-ignore

test('three sizes and 55,000 counted casks, most fillings laid elsewhere, come in as a table and explain the difference', async ({ page }) => {
  await withRegister(page);
  const rows = ['Barrels;40000;200;2012;195;63.5', 'Hogsheads;12000;250;2010;245;63.5', 'Butts;3000;500;2008;490;63.5', 'Wrong;-3;200;2012;195;63.5'];
  await page.locator('#stock-text').fill([heading, ...rows].join('\n'));
  await expect(page.locator('.table-read')).toContainText('3 groups can be taken, 55,000 casks.');
  await expect(page.locator('.table-read .problem')).toHaveText('Row 5 (“Wrong”): Casks: “-3” was given; it can be from 1 to 100,000.');
  expect((await stored(page)).parts).toBeUndefined();
  await button(page, 'Put them in place of the register').click();
  await expect(result(page, 'stock', 'Casks').first()).toHaveText('55,000');
  await page.locator('#stock-opened').fill('2011');
  await expect(page.locator('#stock-opened-problem')).toContainText('before the house opened');
  await page.locator('#stock-opened').fill('2006');
  await page.locator('#stock-laidElsewhere').fill('118000');
  await page.locator('#stock-emptied').fill('a few');
  await expect(page.locator('#stock-emptied-problem')).toContainText('a few');
  await page.locator('#stock-emptied').fill('7,000');
  await expect(result(page, 'stock-counted', 'Counted in this register')).toHaveText('55,000');
  await expect(result(page, 'stock-counted', 'laid elsewhere')).toHaveText('118,000');
  await button(page, 'Keep 55,000 as the casks counted in your house').click();
  await expect.poll(async () => JSON.stringify((await stored(page)).parts)).toContain('"casksInStore":55000');
  await titled(page, 'stock-counted').locator('summary').click();
  await expect(titled(page, 'stock-counted').locator('tbody tr')).toHaveCount(3);
}); // prettier-ignore

test('one trial group takes nothing away from what the house has counted', async ({ page }) => {
  const one: CaskGroup = { casks: 1, size: 200, filled: '2016-03-14', filledVolume: 195, filledStrength: 63.5 };
  const known = { given: {}, counted: { casksInStore: 55_000 } };
  await withRegister(page, { opened: 2006, groups: [one] }, { known });
  await expect(page.locator('#dump-0')).toHaveValue('1');
  await expect(page.locator('#dump-0-problem')).toHaveCount(0);
  await expect(result(page, 'stock-counted', 'Counted in your house')).toHaveText('55,000');
  await expect(result(page, 'stock-counted', 'So there should be, an estimate')).toBeVisible();
  await expect(titled(page, 'stock-counted')).toContainText('Your house has 55,000 counted; this register has 1.');
  await expect(button(page, 'Keep 1 as the casks counted in your house')).toHaveCount(0);
  await expect(button(page, 'Put 1 in place of your house’s 55,000')).toBeVisible();
}); // prettier-ignore

test('the register goes to a table that opens again as it was', async ({ page }) => {
  await open(page, '/house/stock/');
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, 'Save the register as CSV').click()]);
  const path = (await download.path())!;
  expect(download.suggestedFilename()).toBe('harrowmere-casks.csv');
  expect(readFileSync(path, 'utf8')).toContain('Name,Casks,Size (L),Filled on');
  await page.locator('#stock-file').setInputFiles({ name: 'casks.csv', mimeType: 'text/csv', buffer: readFileSync(path) });
  await expect(page.locator('.table-read')).toContainText('10 groups can be taken, 3,419 casks.');
  await expect(page.locator('.table-read .problem')).toHaveCount(0);
}); // prettier-ignore

test('a file of fifty megabytes is refused in a sentence, and changes nothing', async ({ page }) => {
  const big = test.info().outputPath('big.csv');
  await open(page, '/house/stock/');
  writeFileSync(big, Buffer.alloc(50_000_000, 'x'));
  await page.locator('#stock-file').setInputFiles(big);
  await expect(titled(page, 'stock-table').locator('.problem')).toHaveText(/big\.csv is 50000 kB; a table has at most 1000 kB. Nothing was changed\./);
  await expect(page.locator('.table-read')).toHaveCount(0);
}); // prettier-ignore

test('a register of 300 groups shows a page of them at a time, within eight screens of a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const groups = Array.from({ length: 300 }, (_, i) => ({ name: `Group ${i + 1}`, casks: 200, size: [125, 200, 250, 500][i % 4]!, filled: `${1990 + (i % 34)}-05-14`, filledVolume: [120, 195, 245, 490][i % 4]!, filledStrength: 63.5 }));
  await withRegister(page, { opened: 1988, groups });
  await expect(result(page, 'stock', 'Casks').first()).toHaveText('60,000');
  await expect(page.locator('.groups tbody tr')).toHaveCount(12);
  await button(page, 'Those after').click();
  await expect(page.locator('.groups tbody tr').first()).toContainText('Group 13');
  expect(await page.evaluate(() => document.documentElement.scrollHeight / 844)).toBeLessThanOrEqual(8);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
}); // prettier-ignore
