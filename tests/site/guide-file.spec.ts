// A new guide's file: the practice of telling by keyboard on a phone, the ten sums, a walk of one's own, and the whole of it on paper.
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { encodeWalk } from '../../src/walk/text.ts';
import { firstWalk, type Walk } from '../../src/walk/walk.ts';
import { open, ready, watch } from './pages.ts';
import { faultsOf, layOut, pageCount, paperNames } from './paper.ts';

const field = (page: Page) => page.locator('#telling-said');
const verdict = (page: Page) => page.locator('.telling .mark-of');
const keys = (page: Page, ...all: string[]) => all.reduce((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve()); // prettier-ignore

test('figures are told by keyboard on a phone, near and wrong ones come again, and it is kept', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const wrong = watch(page);
  await open(page, '/guide-file/tell/');
  await expect(page.locator('.telling .when')).toHaveText('Figure 1 of 24; 0 told right');
  await expect(page.locator('.telling')).not.toContainText('Harrowmere:');
  await field(page).focus();
  // Barley behind 1,500 kg of malt: 1,500 × 0.955 ÷ 0.9 ÷ 0.88 = 1,809 kg, by hand.
  await page.keyboard.type('plenty');
  await keys(page, 'Enter');
  await expect(page.locator('#telling-problem')).toContainText('“plenty” was given');
  await field(page).fill('just over one point eight tonnes');
  await keys(page, 'Enter');
  await expect(verdict(page)).toHaveAttribute('data-verdict', 'right');
  await expect(verdict(page)).toContainText('Right. Harrowmere: just over 1.8 tonnes; in the book 1,809 kg.');
  await expect(page.locator('#announcer')).toContainText('Right. Harrowmere');
  await expect(page.getByRole('button', { name: 'Next figure' })).toBeFocused();
  await keys(page, 'Enter');
  await expect(field(page)).toBeFocused();
  await expect(page.locator('.telling .when')).toHaveText('Figure 2 of 24; 1 told right');
  // Spirit that a tonne could give: 6.06 × 77.5 × 0.87 = 408.6 L; 380 is 7 % off.
  await page.keyboard.type('380');
  await keys(page, 'Enter');
  await expect(verdict(page)).toContainText('Near.');
  await keys(page, 'Enter');
  // Said aloud: nothing is written, the figure is shown, and the guide says how it went.
  await expect(field(page)).toBeFocused();
  await keys(page, 'Enter');
  await expect(verdict(page)).toContainText('Harrowmere: one and a half tonnes');
  await keys(page, 'Enter'); // “I said it right”
  await expect(page.locator('.telling .when')).toHaveText('Figure 4 of 24; 2 told right');

  await page.reload();
  await ready(page);
  await expect(page.locator('.telling .when')).toHaveText('Figure 4 of 24; 2 told right');
  await field(page).focus();
  for (let i = 4; i <= 24; i++) {
    await keys(page, 'Enter');
    await expect(page.getByRole('button', { name: 'I said it right' })).toBeFocused();
    await keys(page, 'Enter');
  }
  await expect(page.locator('#telling-title')).toHaveText('Told to the end');
  await expect(page.locator('.telling')).toContainText('23 of 24 are told right.');
  await page.getByRole('button', { name: 'Tell those again' }).press('Enter');
  await expect(page.locator('.telling .when')).toHaveText('Figure 2 of 24; 23 told right');
  await field(page).fill('about 410 litres of pure alcohol a tonne');
  await field(page).press('Enter');
  await keys(page, 'Enter');
  await expect(page.locator('.telling')).toContainText('All 24 are told right.');
  expect(wrong).toEqual([]);
});

test('a sum is tried, its slip is named, and its working and calculator are there', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const wrong = watch(page);
  await open(page, '/guide-file/sums/');
  await page.getByRole('button', { name: 'Next sum' }).click();
  await expect(page.locator('#redoing-title')).toHaveText('Strength of the wash');
  // Sixty degrees at 0.132 % vol: 7.92; counted to 1.000 only, 58 × 0.132 = 7.66.
  await page.locator('#guide-sum').fill('7.7');
  await page.locator('#guide-sum').press('Enter');
  await expect(page.locator('.redoing .verdict')).toContainText('counted to 1.000 only');
  await expect(page.locator('.redoing .steps')).toContainText('1,000 × (1.058 − 0.998) × 0.132');
  const to = await page.locator('.redoing a').getAttribute('href');
  expect(to).toBe('../../sums/strength-from-gravities/');
  await page.locator('.redoing a').click();
  await expect(page.locator('h1')).toHaveText('Strength of the wash from its gravities');
  expect(wrong).toEqual([]);
});

/** A walk of two rooms in words of its own. */
const own: Walk = {
  ...firstWalk('Short round'),
  rooms: firstWalk('').rooms.slice(4).map((room, i) => ({
    ...room,
    minutes: 20,
    line: i === 0 ? 'Copper is why we are here.' : '',
    rule: 'No flash <b>at all</b>',
    pieces: i === 0 ? [{ text: 'These are the stills. They are old.', long: false, figures: [] }] : [],
  })),
}; // prettier-ignore

test('the file is of the walk that is kept, and its words are only words', async ({ page }) => {
  const wrong = watch(page);
  await page.addInitScript(
    (text) => localStorage.setItem('malt-spirit-handbook/walk', text),
    encodeWalk(own),
  );
  await open(page, '/guide-file/');
  await expect(page.locator('.guide-rooms > li')).toHaveCount(2);
  await expect(page.locator('.guide-rooms > li').first()).toContainText('Say: Copper is why we are here. These are the stills.'); // prettier-ignore
  await expect(page.locator('.guide-rooms > li').first()).not.toContainText('They are old');
  await expect(page.locator('.guide-rooms > li').last()).toContainText('No flash <b>at all</b>');
  await open(page, '/guide-file/asked/');
  await expect(page.locator('.guide-room h2')).toHaveText(['Still house', 'Filling store and warehouse']);
  await open(page, '/guide-file/tell/');
  await expect(page.locator('.telling .when')).toContainText('of 12');
  expect(wrong).toEqual([]);
});

test('a walk of another house says so on each page, and its own house is opened from the shelf', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const text = encodeHouse({
    name: 'Kestrel Burn',
    house: { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse,
  });
  await page.addInitScript(
    ([walk, shelf]) => {
      localStorage.setItem('malt-spirit-handbook/walk', walk!);
      if (!localStorage.getItem('malt-spirit-handbook/shelf')) localStorage.setItem('malt-spirit-handbook/shelf', shelf!); // prettier-ignore
    },
    [encodeWalk({ ...own, house: 'Kestrel Burn' }), JSON.stringify({ 'Kestrel Burn': text })],
  );
  for (const address of ['/guide-file/asked/', '/guide-file/tell/', '/guide-file/figures/', '/guide-file/']) {
    await open(page, address);
    await expect(page.locator('.guide-file .remark')).toContainText('This walk was written for Kestrel Burn; the house here is Harrowmere. All figures on this page are those of Harrowmere.'); // prettier-ignore
  }
  await page.getByRole('button', { name: 'Open Kestrel Burn from your houses' }).click();
  await expect(page.locator('.guide-file .remark')).toHaveCount(0);
  // On paper the pieces are whole.
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.guide-paper .guide-rooms')).toContainText('They are old.');
});

test('on paper: a title, then each part on a page of its own, thirteen pages at most', async ({ page }) => {
  for (const paper of paperNames) {
    await open(page, '/guide-file/');
    await layOut(page, paper);
    const parts = page.locator('.guide-paper > section');
    await expect(parts).toHaveCount(6);
    await expect(parts.first()).toContainText('Harrowmere');
    await expect(parts.first()).toContainText(/20\d\d · Harrowmere · book /);
    const breaks = await parts.evaluateAll((all) => all.map((each) => getComputedStyle(each).breakBefore));
    expect(breaks.slice(1)).toEqual(Array.from({ length: 5 }, () => 'page'));
    await expect(page.locator('.guide-blank .key').nth(2)).toHaveText('just over 1.8 tonnes');
    await expect(page.locator('.guide-blank .blank')).toHaveCount(24);
    expect(await page.locator('.guide-blank .blank').allTextContents()).toEqual(Array.from({ length: 24 }, () => '')); // prettier-ignore
    expect(await faultsOf(page, paper)).toEqual([]);
    await page.emulateMedia({ media: null, colorScheme: null });
    const pages = await pageCount(page, paper);
    console.log(`${paper}: ${pages} pages`);
    expect(pages).toBeGreaterThanOrEqual(8);
    expect(pages).toBeLessThanOrEqual(13);
  }
});
