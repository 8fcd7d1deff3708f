// What is known of a house: entered on a phone, marked in the book, left off the cards, kept and printed.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { houseSchema } from '../../src/house/schema.ts';
import { open, ready } from './pages.ts';
import { layOut, pageCount } from './paper.ts';

test.use({ viewport: { width: 390, height: 844 } });

const KEY = 'malt-spirit-handbook/house';
const stored = (page: Page) => page.evaluate((key) => localStorage.getItem(key) ?? '', KEY);
const progress = (page: Page) => page.locator('.progress').first();
const value = (page: Page, figure: string) => page.locator(`#house-${figure}`).inputValue();
async function type(page: Page, id: string, text: string) {
  await page.locator(`#${id}`).fill(text);
  await page.locator(`#${id}`).press('Tab');
}
/** The sheet of every figure, on a page of its own, once the house is kept as it stands. */
async function sheet(page: Page) {
  await open(page, '/house/figures/');
  return page.locator('.house-sheet');
}
async function nameIt(page: Page) {
  await open(page, '/house/');
  await type(page, 'house-name', 'Sallowby');
  await expect(progress(page)).toContainText(
    'You have given 0 of 43 figures; the other 43 are Harrowmere’s.',
  );
}

test('malt, wort and gravity stand as typed, and a gravity that moves asks what stays', async ({ page }) => {
  await open(page, '/house/');
  await expect(progress(page)).toContainText('All 43 figures are Harrowmere’s own.');
  await expect(page.locator('.mark.not-known')).toHaveCount(0);
  await nameIt(page);
  await type(page, 'house-maltPerMash', '6.5 t');
  await type(page, 'house-wortVolume', '32,000');
  await type(page, 'house-originalGravity', '1.058');
  await expect.poll(() => value(page, 'maltPerMash')).toBe('6500'); // the reader of words comes with the first touch
  expect(await value(page, 'wortVolume')).toBe('32000');
  await expect(progress(page)).toContainText('You have given 3 of 43 figures');
  await type(page, 'house-heartEnd', '61');
  await type(page, 'house-originalGravity', '1.060');
  const ways = page.getByRole('group', { name: 'What stays as it is' });
  await expect(ways.getByRole('button')).toHaveCount(3);
  await expect(ways).toBeInViewport();
  await ways.getByRole('button', { name: /^Keep both/ }).click();
  expect([await value(page, 'maltPerMash'), await value(page, 'wortVolume')]).toEqual(['6500', '32000']);
  await ways.getByRole('button', { name: /^Keep the volume/ }).click();
  expect(await value(page, 'wortVolume')).toBe('32000');
  expect(await value(page, 'originalGravity')).toBe('1.060');
  expect(Number(await value(page, 'maltPerMash'))).toBeGreaterThan(6500);
  await expect((await sheet(page)).locator('.given tr', { hasText: 'Malt' }).filter({ hasText: 'follows from the rest' })).toHaveCount(1); // prettier-ignore
});

test('more than an extract that nobody has given could hold is taken as read, and readings can be held', async ({ page }) => {
  await nameIt(page);
  for (const [field, text] of [['maltPerMash', '6.5 t'], ['wortVolume', '33,500'], ['originalGravity', '1.060']] as const) await type(page, `house-${field}`, text);
  await expect.poll(() => value(page, 'wortVolume')).toBe('33500');
  expect([await value(page, 'maltPerMash'), await value(page, 'originalGravity')]).toEqual(['6500', '1.060']);
  await expect(page.locator('.what-moved')).toContainText('changes with it');
  await page.goto('/house/mashing/');
  await page.locator('#house-holds').selectOption('readings');
  await page.reload();
  await expect(page.locator('#house-holds')).toHaveValue('readings');
}); // prettier-ignore

test('“the same at ours”, “put back” and “undo” tell what is known, and it is kept', async ({ page }) => {
  await nameIt(page);
  await page.getByRole('button', { name: 'The same at ours: Bottling strength' }).click();
  await type(page, 'house-heartEnd', '60');
  await expect(progress(page)).toContainText('You have given 2 of 43 figures');
  await expect.poll(() => stored(page)).toContain('"given":{"bottlingStrength":"set","heartEnd":"set"}');
  await page.reload();
  await ready(page);
  await expect(progress(page)).toContainText('You have given 2 of 43 figures');
  await page.getByTitle('Put Bottling strength back').click();
  await expect(progress(page)).toContainText('You have given 1 of 43 figures');
  await type(page, 'house-fillingStrength', '62');
  await expect(progress(page)).toContainText('You have given 2 of 43 figures');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(progress(page)).toContainText('You have given 1 of 43 figures');
  await page.getByRole('button', { name: /Put all figures back/ }).click();
  await expect(progress(page)).toContainText('You have given 0 of 43 figures');
});

test('what was counted stands beside what is computed, and does not move it', async ({ page }) => {
  await nameIt(page);
  const meaning = page.locator('#counted-casksInStore-meaning');
  await expect(meaning).toContainText('Our estimate');
  const estimate = /Our estimate: ([\d,]+)/.exec((await meaning.innerText()) ?? '')![1]!;
  for (const [text, says] of [
    ['-5', '“-5” was given; it can be from 1 to 50,000,000.'],
    ['lots', '“lots” was given'],
    ['9e99', '“9e99” was given'],
  ] as const) {
    await type(page, 'counted-casksInStore', text);
    await expect(page.locator('#counted-casksInStore-problem')).toContainText(says);
  }
  await type(page, 'counted-casksInStore', '2,000');
  const times = Number(estimate.replaceAll(',', '')) / 2000;
  await expect(meaning).toHaveText(`Our estimate: ${estimate}: ${times.toFixed(1)} times as many`); // counting it makes the years no better known
  await expect.poll(() => stored(page)).toContain('2000');
  const row = (await sheet(page)).locator('.counted tr', { hasText: 'Casks in store' });
  await expect(row).toContainText('2,000');
  await expect(row).toContainText(estimate);
  await open(page, '/house/');
  await type(page, 'counted-casksInStore', '');
  await expect(meaning).toHaveText(`Our estimate: ${estimate}`);
  await expect.poll(() => stored(page)).not.toContain('casksInStore');
});

test('a number that is refused gives back the one before it, and what was only on the way to it is nobody’s', async ({
  page,
}) => {
  await nameIt(page);
  await type(page, 'house-mashesPerWeek', '18');
  await page.locator('#house-mashesPerWeek').click();
  await page.locator('#house-mashesPerWeek').press('ControlOrMeta+a');
  await page.keyboard.type('2000'); // by way of a 2 and a 20
  await expect(page.locator('#house-mashesPerWeek-problem')).toContainText('“2000” was given');
  await expect.poll(() => stored(page)).toContain('"mashesPerWeek":18');
  await page.locator('#house-bottlingStrength').click();
  await page.locator('#house-bottlingStrength').press('ControlOrMeta+a');
  await page.keyboard.type('400'); // by way of a 4 and a 40; nobody has given it
  await expect(page.locator('#house-bottlingStrength-problem')).toContainText('“400” was given');
  await expect(progress(page)).toContainText('You have given 1 of 43 figures');
  await type(page, 'counted-casksInStore', '55,000');
  await page.locator('#counted-casksInStore').click();
  await page.locator('#counted-casksInStore').press('ControlOrMeta+a');
  await page.keyboard.type('5 or more');
  await expect(page.locator('#counted-casksInStore-problem')).toBeVisible();
  await expect.poll(() => stored(page)).toContain('55000');
});

test('malt, wort and gravity that were given stay given when one of them is put right', async ({ page }) => {
  await nameIt(page);
  for (const [figure, text] of [['maltPerMash', '6.5 t'], ['wortVolume', '32,000'], ['originalGravity', '1.062']] as const)
    await type(page, `house-${figure}`, text);
  await expect.poll(() => value(page, 'maltPerMash')).toBe('6500');
  await type(page, 'house-originalGravity', '1.061');
  await expect.poll(() => value(page, 'originalGravity')).toBe('1.061');
  expect([await value(page, 'wortVolume'), await value(page, 'maltPerMash')]).toEqual(['32000', '6500']);
  await expect(page.getByRole('group', { name: 'What stays as it is' }).getByRole('button')).toHaveCount(2); // or the malt, or the volume
  await expect((await sheet(page)).locator('.given tr', { hasText: '32,000' })).toHaveCount(1);
  await expect(page.locator('.house-sheet .given tr', { hasText: 'follows from the rest' })).toHaveCount(0);
}); // prettier-ignore

test('the book marks what is not known, and cards leave it out', async ({ page }) => {
  await nameIt(page);
  await type(page, 'house-maltPerMash', '6500');
  await type(page, 'counted-casksInStore', '55,000');
  await expect.poll(() => stored(page)).toContain('55000');

  await open(page, '/sums/what-if/');
  await expect(page.locator('.field:has(#what-if-heartEnd) .mark')).toHaveText('Harrowmere’s');
  await page.locator('#what-if-heartEnd').fill('61');
  await expect(page.locator('.field:has(#what-if-heartEnd) .mark')).toHaveText('house');

  await open(page, '/maturing/');
  await expect(page.locator('.foot')).toContainText(
    '2 of its 43 figures are known; the other 41 are Harrowmere’s.',
  );
  await expect(page.locator('.ledger-brief')).toContainText('estimate');
  await expect(page.locator('main .figure.doubt').first()).toBeAttached();

  await open(page, '/cards/');
  await expect(page.locator('.left-out')).toContainText('bottling strength');
  const cards = page.locator('.cards .card');
  await expect(cards.filter({ hasText: 'Casks in store' })).toContainText(/55,000 casks/);
  await expect(cards.filter({ hasText: 'Casks in store' })).toContainText(/counted; computed [\d,]+/);
  const cask = cards.locator('dl > div', { hasText: 'Bottles from a cask' });
  await expect(cask.first()).toContainText('our estimate');
  await expect(cards.locator('dl > div', { hasText: 'Bottling strength' })).toHaveCount(0);
  await expect(cards.locator('dl > div', { hasText: 'Malt a mash' }).first()).not.toContainText('estimate');
});

test('all figures go to a file that says how each is known, and the house to one sheet', async ({ page }) => {
  await nameIt(page);
  await type(page, 'house-maltPerMash', '6500');
  await type(page, 'counted-casksInStore', '55,000');
  await expect.poll(() => stored(page)).toContain('55000');
  await page.getByRole('link', { name: 'Every figure' }).first().click();
  await expect(page.locator('.house-sheet .beside').first()).toContainText('our estimate');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all figures' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('sallowby.figures.json');
  const file = JSON.parse(readFileSync((await download.path())!, 'utf8')) as { figures: { id: string }[] };
  const of = (id: string) => file.figures.find((each) => each.id === id);
  expect(file).toMatchObject({ format: 'malt-spirit-handbook/figures', version: 1, name: 'Sallowby' });
  expect(of('maltPerMash')).toMatchObject({ label: 'Malt a mash', value: 6500, unit: 'kg', standing: 'set' });
  expect(of('husk')).toMatchObject({ value: 20, standing: 'not known' });
  expect(of('heartVolume')).toMatchObject({ unit: 'L', standing: 'our estimate' });
  expect(of('casksInStore')).toMatchObject({ value: 55_000, standing: 'counted' });
  await layOut(page, 'A4');
  await expect(page.locator('.house-sheet')).toBeVisible();
  await expect(page.locator('.house-stages')).toBeHidden();
  expect(await pageCount(page, 'A4')).toBeLessThanOrEqual(2);
});

test('the schema of a house’s file is served as it is made', async ({ request }) => {
  const answer = await request.get('/house.schema.json');
  expect(await answer.json()).toEqual(JSON.parse(JSON.stringify(houseSchema)));
});
