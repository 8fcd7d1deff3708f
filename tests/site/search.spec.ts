// Search and answers: chapters, terms, calculators and questions, by keyboard alone.
import { expect, test } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, watch } from './pages.ts';

const words = '#search-words';

for (const [asked, title, where] of [
  ['lyne arm', 'lyne arm', 'Term'],
  ['first water', 'The first water', 'Calculator, Mashing'],
  ['angels', 'What is the angels’ share?', 'A visitor’s question'],
  ['hurt you fermenting', 'What can hurt you', 'Section of Fermenting'],
  ['steeping', 'steeping', 'Term'],
  ['low wines wash question', 'low wines', 'Question to practise'],
] as const) {
  test(`finds ${asked}`, async ({ page }) => {
    await open(page, '/search/');
    await page.locator(words).fill(asked);
    await expect(
      page
        .locator('.found li', { hasText: where })
        .filter({ hasText: new RegExp(title, 'i') })
        .first(),
    ).toBeVisible();
  });
}

test('keyboard first: the field has the focus, the arrows walk, Enter opens', async ({ page }) => {
  const wrong = watch(page);
  await open(page, '/search/');
  await expect(page.locator(words)).toBeFocused();
  await page.keyboard.type('strength');
  await expect(page.locator('.search .count')).toContainText('places found');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('.found a').first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('.found a').nth(1)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(page.locator(words)).toBeFocused();
  await page.keyboard.press('ArrowDown');
  const target = await page.locator('.found a').first().getAttribute('href');
  await page.keyboard.press('Enter');
  await page.waitForURL(new URL(target!, page.url()).href);
  expect(wrong).toEqual([]);
});

test('what cannot be found is said, and nothing in the field is markup', async ({ page }) => {
  await open(page, '/search/');
  await page.locator(words).fill('<img src=x onerror=alert(1)>zzzz');
  await expect(page.locator('.search .answer')).toContainText('I do not know that');
  await expect(page.locator('.search img')).toHaveCount(0);
});

test('every place that the index knows is on its page', async ({ page, request }) => {
  const index = (await (await request.get('/search-index.json')).json()) as {
    storedFields: Record<string, { at: string }>;
  };
  const places = Object.values(index.storedFields).map(({ at }) => at);
  expect(places.length).toBeGreaterThan(400);
  const pages = new Map<string, string>();
  for (const at of places) {
    const [path, hash] = at.split('#') as [string, string?];
    if (!pages.has(path)) pages.set(path, await (await request.get(`/${path}`)).text());
    if (hash && !hash.includes('=')) expect(pages.get(path), at).toContain(`id="${hash}"`);
  }
  await page.close();
});

test('a question is answered at once, with its sum and its place, and said once', async ({ page }) => {
  const wrong = watch(page);
  await open(page, '/search/');
  await page.locator(words).fill('how many bottles from one field?');
  await expect(page.locator('.answer .breath')).toContainText(/A hectare gives about [\d,]+ of our bottles/);
  await expect(page.locator('.answer .reckoned')).toContainText('÷');
  await expect(page.locator('#announcer')).toContainText(/A hectare gives about [\d,]+ of our bottles/);
  await expect(page.locator('main [role=status]')).toHaveCount(0);
  await page.locator('.answer a').click();
  await expect(page).toHaveURL(/ingredients\/check\/#how-big-a-field/);
  expect(wrong).toEqual([]);
});

test('what was told is told in the unit asked for, and numbers of one’s own are reckoned with', async ({
  page,
}) => {
  await open(page, '/search/');
  await page.locator(words).fill('how much spirit from one run?');
  await expect(page.locator('.answer .breath')).toContainText(/heart of one mash is \d+\sL/);
  await page.locator(words).fill('what’s that in US gallons?');
  await expect(page.locator('.answer .breath')).toContainText('US gal');
  await page.locator(words).fill('how much alcohol is in 3 litres at 63 %?');
  await expect(page.locator('.answer .breath')).toContainText(/1\.89\sL/);
});

test('what is not known is said, and the nearest can be asked', async ({ page }) => {
  await open(page, '/search/');
  await page.locator(words).fill('where do herons sleep beside the yeast?');
  await expect(page.locator('.answer')).toContainText('I do not know that.');
  const nearest = page.locator('.answer button').first();
  const asked = (await nearest.textContent())!;
  await nearest.click();
  await expect(page.locator(words)).toHaveValue(asked);
  await expect(page.locator('.answer .breath')).toBeVisible();
});

test('the answer follows the reader’s own house', async ({ page }) => {
  await open(page, '/house/');
  await page.locator('#house-bottlingStrength').fill('40');
  await expect
    .poll(() => page.evaluate(() => JSON.stringify({ ...localStorage })))
    .toContain('bottlingStrength');
  await open(page, '/search/#for=how%20strong%20is%20it%20in%20the%20bottle');
  await expect(page.locator('.answer .breath')).toContainText(/40\.0/);
});

test('what a house has counted is told beside what is reckoned', async ({ page }) => {
  const kept = encodeHouse({ name: 'Thornwath', house: builtInHouse, parts: { known: { given: {}, counted: { heartStrength: 68 } } } }); // prettier-ignore
  await page.addInitScript((house) => localStorage.setItem('malt-spirit-handbook/house', house), kept);
  await open(page, '/search/#for=what%20strength%20does%20the%20heart%20come%20off%20at');
  await expect(page.locator('.answer')).toContainText(/As counted at Thornwath.*68/);
});

test('so do the places that are listed below the answer', async ({ page }) => {
  await open(page, '/search/#for=first%20water');
  const listed = page.locator('.found li p', { hasText: /A mash is .* of malt in/ }).first();
  await page.locator('#search-words').fill('figures to know mash');
  await expect(listed).toContainText(/A mash is 1,500.kg of malt in 6,000.L of first water/);
  await open(page, '/house/');
  await page.locator('#house-maltPerMash').fill('1600');
  await expect.poll(() => page.evaluate(() => JSON.stringify({ ...localStorage }))).toContain('maltPerMash');
  await open(page, '/search/#for=figures%20to%20know%20mash');
  await expect(listed).toContainText(/A mash is 1,600.kg of malt in 6,400.L of first water/);
  await expect(page.locator('.found')).not.toContainText(/[{};]{2}|;bare/);
});
