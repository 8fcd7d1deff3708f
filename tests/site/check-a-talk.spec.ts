// The page that reads a talk: what it gives to the house, how what is put right shows, what it counts, and how it prints.
import { expect, test, type Page } from '@playwright/test';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { knownOf, type Known } from '../../src/house/parts/known.ts';
import { broken, open, watch } from './pages.ts';

const KEY = 'malt-spirit-handbook/house';
const talk =
  'Each mash is 1,800 kilos of malt. It ferments for 56 hours. We bottle at 43 per cent. The mash stands at 63 to 64 degrees.';

/** Has the browser keep a house of which so much is known, and its talk typed. */
async function withHouse(page: Page, given: Known['given'], text = talk): Promise<void> {
  await page.addInitScript(
    ([key, kept]) => localStorage.getItem(key!) ?? localStorage.setItem(key!, kept!),
    [KEY, encodeHouse({ name: 'Thornwath', house: builtInHouse, parts: { known: { given, counted: {} } } })] as const, // prettier-ignore
  );
  await open(page, '/script/');
  await page.locator('#script-text').fill(text);
}
const keptHouse = async (page: Page) =>
  decodeHouse((await page.evaluate((key) => localStorage.getItem(key), KEY))!);

test('the figures of a talk that the house has not are given to it by one touch, and put back by one more', async ({
  page,
}) => {
  const wrong = watch(page);
  await withHouse(page, { bottlingStrength: 'set' });
  const part = page.locator('.script-give');
  await expect(part.getByRole('link', { name: 'Walk with this talk' })).toHaveAttribute('href', '../walk/');
  await expect(part.getByRole('link', { name: 'Pocket cards' })).toHaveAttribute('href', '../cards/');
  await expect(part).toContainText('Not among them: mash temperature (told as a range).');
  // What is not sure is not given until it is answered.
  await expect(part.getByRole('button', { name: 'Give this figure to Thornwath' })).toBeVisible();
  await page.locator('.script-ask').getByRole('button', { name: 'Hours in the washback' }).click();
  await part.getByRole('button', { name: 'Give these 2 figures to Thornwath' }).click();
  await expect(part.getByRole('status')).toHaveText('2 figures given to Thornwath.');
  await expect(part.getByRole('status')).toBeFocused();
  await part.locator('summary').click();
  await expect(part.locator('dl > div').first()).toHaveText(/Malt a mash\s*1,800 kg \(before: 1,500 kg, Harrowmere’s\)/);
  await expect(part.getByRole('button', { name: /^Give/ })).toHaveCount(0);
  await expect.poll(async () => (await keptHouse(page)).house.maltPerMash).toBe(1800);
  const own = await keptHouse(page);
  expect([own.house.fermentationHours, own.house.bottlingStrength]).toEqual([56, builtInHouse.bottlingStrength]);
  expect(Object.keys(knownOf(own).given).toSorted()).toEqual(['bottlingStrength', 'fermentationHours', 'maltPerMash']);
  expect(await broken(page, '.script-give')).toEqual([]);
  await part.getByRole('button', { name: 'Put all back' }).click();
  await expect(part.getByRole('status')).toHaveText('Put back: Thornwath is as it was.');
  await expect.poll(async () => (await keptHouse(page)).house).toEqual(builtInHouse);
  expect(Object.keys(knownOf(await keptHouse(page)).given)).toEqual(['bottlingStrength']);
  expect(wrong).toEqual([]);
}); // prettier-ignore

test('with no house of the reader’s own one is begun; a talk of another house gives nothing', async ({ page }) => {
  await open(page, '/script/');
  await page.locator('#script-text').fill(talk);
  const part = page.locator('.script-give');
  await part.getByRole('button', { name: 'Begin your own house with these 2 figures' }).click();
  await expect(part.getByRole('status')).toHaveText('2 figures given to My house.');
  await expect(page.locator('.against-house')).toContainText('All 2 figures are as at My house');
  await part.getByRole('button', { name: 'Put all back' }).click();
  await expect(page.locator('.against-house')).toContainText('Compare with Harrowmere');
  await page.locator('#script-against-house').check();
  await page.locator('#script-against-house').uncheck();
  await expect(part.getByRole('button')).toHaveCount(0);
}); // prettier-ignore

test('what is put right is said and ticked on its mark; what is no figure of the house looks other than what nothing checks', async ({
  page,
}) => {
  await open(page, '/script/');
  await page
    .locator('#script-text')
    .fill('Each mash is 1,800 kilos of malt. It ferments for 56 hours. We bottle at 43 per cent. The mash tun came here in 1967.');
  const [malt, year, hours] = ['1,800', '1967', '56 hours'].map((words) =>
    page.locator('.marked .mark', { hasText: words }),
  );
  const lineUnder = (of: typeof malt) =>
    of!.evaluate((mark) => {
      const { borderBlockEndStyle, borderInlineStartStyle } = getComputedStyle(mark);
      return [borderBlockEndStyle, borderInlineStartStyle];
    });
  const tick = (of: typeof malt) => of!.evaluate((mark) => getComputedStyle(mark, '::after').content);
  expect(await lineUnder(malt)).toEqual(['dotted', 'none']);
  expect(await lineUnder(year)).toEqual(['none', 'solid']);
  expect(await lineUnder(hours)).toEqual(['dashed', 'none']);
  await expect(page.locator('.legend')).toContainText('Between bars: no figure of the house');
  expect(await tick(hours)).toBe('none');
  await page.locator('.script-ask').getByRole('button', { name: 'Hours in the washback' }).click();
  await expect(page.locator('#announcer')).toContainText('“56 hours” is hours in the washback, as you say.');
  await expect.poll(() => tick(hours)).toContain('as you say');
  await malt!.click();
  await page.locator('.marked .taken').getByRole('button', { name: 'Not ours' }).click();
  await expect(page.locator('#announcer')).toContainText('“1,800 kilos” is no figure of the house, as you say.');
  await expect.poll(() => tick(malt)).toContain('as you say');
  expect(await lineUnder(malt)).toEqual(['none', 'solid']);
  expect(await tick(year)).toBe('none');
}); // prettier-ignore

test('a house of which nothing is given overrules no word of the talk, says so, and leads to where it can be given', async ({
  page,
}) => {
  await withHouse(page, { bottlingStrength: 'set' }, `${talk} New spirit from a mash is 600 litres.`);
  const against = page.locator('.against-house');
  await expect(against).toContainText('One figure is not as at Thornwath.');
  await expect(against.locator('li')).toHaveText(['Bottling strength: you say 43 % vol; Thornwath has 46 % vol.']);
  await expect(against).toContainText(/Thornwath has no figure of its own yet for malt a mash, .*new spirit from a mash/);
  // What its line reckons of 1,500 kg that nobody gave, some 950 L, is no word against 600 L.
  await page.locator('.marked .mark', { hasText: '600 litres' }).click();
  await expect(page.locator('.marked .taken')).toContainText('Thornwath has no figure of its own for it yet.');
  await expect(page.locator('.marked .taken')).not.toContainText('Thornwath has 9');
  await against.getByRole('link', { name: 'Give it yours' }).click();
  await expect(page.getByRole('button', { name: /^Give .* to Thornwath$/ })).toBeInViewport();
}); // prettier-ignore

test('a printed talk carries its name, and nothing that is of no use on paper', async ({ page }) => {
  await withHouse(page, { bottlingStrength: 'set' });
  await page.getByText('Name, save, and other talks').click();
  await page.locator('#script-name').fill('Tuesday at the mill');
  await page.locator('#script-name').press('Tab');
  await expect(page.locator('.talk-printed')).toBeHidden();
  for (const shown of ['.test-behind', '.against-house a', '.script-give']) await expect(page.locator(shown)).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.talk-printed')).toHaveText('Tuesday at the mill');
  for (const there of ['.talk-printed', '.marked', '.script-verdict > p', '.script-card dd'])
    await expect(page.locator(there).first()).toBeVisible();
  for (const gone of ['main h1', '.summary', '.test-behind', '.against-house a', '.script-give', '.script-reader .working a'])
    await expect(page.locator(gone).first()).toBeHidden();
}); // prettier-ignore
