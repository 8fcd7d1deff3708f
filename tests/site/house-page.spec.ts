// The house page: several houses, files and links; a shared link is a visit until it is kept.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse, type FigureName } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { open, ready } from './pages.ts';

const KEY = 'malt-spirit-handbook/house';
const textOf = (name: string, change: Partial<Record<FigureName, number>>) =>
  encodeHouse({ name, house: { ...builtInHouse, ...change } as typeof builtInHouse });
const stored = (page: Page) => page.evaluate((key) => localStorage.getItem(key), KEY);
const give = (page: Page, name: string, text: string) =>
  page
    .locator('#house-file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

test('a house is named, copied, changed, and the first one opened again', async ({ page }) => {
  await open(page, '/house/');
  await page.locator('#house-name').fill('Sallowby');
  await page.locator('#house-name').press('Tab');
  await page.locator('#house-heartEnd').fill('60');
  await expect.poll(async () => (await stored(page)) ?? '').toContain('"heartEnd":60');
  await page.getByRole('button', { name: 'Work on a copy' }).click();
  await page.locator('#house-heartEnd').fill('64');
  await page.getByRole('button', { name: 'Open Sallowby', exact: true }).click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
  await page.getByRole('button', { name: 'Open Sallowby, copy' }).click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('64');
});

test('a house goes to a file and comes back', async ({ page }) => {
  await open(page, '/house/');
  await page.locator('#house-heartEnd').fill('61');
  await expect.poll(async () => (await stored(page)) ?? '').toContain('"heartEnd":61');
  await open(page, '/house/hand-on/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  const text = readFileSync((await download.path())!, 'utf8');
  expect(JSON.parse(text)).toMatchObject({ format: KEY, version: 2, figures: { heartEnd: 61 } });
  await open(page, '/house/');
  await page.getByRole('button', { name: /Put all figures back/ }).click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
  await open(page, '/house/hand-on/');
  await give(page, 'back.json', text);
  await expect(page.locator('#hand-on-open-said')).toContainText('is open, from back.json');
  await open(page, '/house/');
  await expect(page.locator('#house-heartEnd')).toHaveValue('61');
});

for (const [what, text, says] of [
  ['damaged', '{"format":', 'damaged'],
  ['foreign', '{"beer":1}', 'not a house'],
  ['newer', textOf('X', {}).replace('"version":2', '"version":9'), 'version 9'],
  ['huge', `"${'x'.repeat(2_200_000)}"`, 'at most'],
  ['markup', '<script>alert(1)</script>', 'damaged'],
] as const) {
  test(`a ${what} file is refused in a sentence and changes nothing`, async ({ page }) => {
    await open(page, '/house/');
    await page.locator('#house-heartEnd').fill('61');
    await expect.poll(async () => (await stored(page)) ?? '').toContain('"heartEnd":61');
    const before = await stored(page);
    await open(page, '/house/hand-on/');
    await give(page, 'wrong.json', text);
    await expect(page.locator('#hand-on-open-said')).toContainText(says);
    expect(await stored(page)).toBe(before);
    await open(page, '/house/');
    await expect(page.locator('#house-heartEnd')).toHaveValue('61');
  });
}

test('a shared link is a visit: shown on every page, kept only when asked, never sent', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await open(page, '/house/');
  await page.locator('#house-heartEnd').fill('61');
  await expect.poll(async () => (await stored(page)) ?? '').toContain('"heartEnd":61');
  const own = await stored(page);

  await page.goto(`/distilling/work/${linkOf(textOf('Thornwath', { heartEnd: 58 }))}`);
  await page.reload();
  await ready(page);
  await expect(page.locator('.visit')).toContainText('Thornwath');
  await expect(page.locator('#house-heartEnd')).toHaveValue('58');
  await page.locator('#house-feintsEnd').fill('2');
  await open(page, '/maturing/');
  await expect(page.locator('.visit')).toContainText('Thornwath');
  expect(await stored(page)).toBe(own);
  expect(asked.every((url) => !url.includes('house='))).toBe(true);

  await page.getByRole('button', { name: 'Go back to my own figures' }).click();
  await open(page, '/distilling/work/');
  await expect(page.locator('#house-heartEnd')).toHaveValue('61');
});

for (const hostile of [
  '#house=%%%',
  '#house=AAAA',
  `#house=${'A'.repeat(60_000)}`,
  linkOf('{"__proto__":{"x":1}}'),
  linkOf('\ud800'),
]) {
  test(`a hostile link (${hostile.slice(0, 24)}…) is told of and does no harm`, async ({ page }) => {
    const wrong: string[] = [];
    page.on('pageerror', (error) => wrong.push(error.message));
    await page.goto(`/house/${hostile}`);
    await ready(page);
    await expect(page.locator('.troubles')).toContainText(/damaged|not a house/);
    await expect(page.locator('#house-heartEnd')).toHaveValue('62');
    expect(wrong).toEqual([]);
  });
}
