// Stills and vessels: entered on a phone, kept in the browser, and told of where they are too small.
import { expect, test } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { open, watch } from './pages.ts';

/** 6.5 t a mash, 18 a week; wort in proportion to the built-in house's 7,500 L from 1.5 t. */
const large = { ...builtInHouse, maltPerMash: 6500, wortVolume: 32_500, mashesPerWeek: 18, yeast: 130 };
const link = linkOf(encodeHouse({ name: 'Sallowby', house: large as typeof builtInHouse, parts: {} }));

test.use({ viewport: { width: 390, height: 844 } });

test('a house names its vessels, hears what does not fit, and finds them again', async ({ page }) => {
  const wrong = watch(page);
  await open(page, `/house/plant/${link}`);
  await page.getByRole('button', { name: 'Keep' }).first().click();
  const says = page.locator('.plant-says');
  await expect(says).toHaveText('No vessel of Sallowby is named yet.');
  const fill = (id: string, value: string) => page.locator(`#plant-${id}`).fill(value);
  const add = (kind: string) => page.locator(`#plant-add-${kind}`).click();
  await add('mashTuns');
  await add('washbacks');
  await fill('washbacks-0-number', '8');
  await fill('washbacks-0-full', '38,000');
  await fill('washbacks-0-working', '32,000');
  await add('washStills');
  await fill('washStills-0-number', '2');
  await fill('washStills-0-charge', '16,500');
  await add('spiritStills');
  await fill('spiritStills-0-number', '2');
  await fill('spiritStills-0-charge', '9,000');
  await expect(says).toHaveText('Washback: a mash is 32,500 L, and it is filled to 32,000 L: 500 L too little.');
  await expect(page.locator('.plant-found')).toContainText('Not named yet, and not judged: low wines and feints receiver, spirit receiver.');
  await expect(page.locator('.plant-found a')).toHaveAttribute('href', /week/);
  await expect(page.locator('.plant-charges')).toContainText('36 charges a week of 16,136 L; a mash makes 2 charges');
  await page.waitForTimeout(400); // it is written once it has been quiet
  await open(page, '/house/plant/');
  await expect(page.locator('.plant-charges')).toContainText('36 charges a week');
  await page.getByRole('button', { name: 'Take all vessels away' }).click();
  await expect(says).toHaveText('No vessel of Sallowby is named yet.');
  await page.getByRole('button', { name: 'Start from Harrowmere’s vessels' }).click();
  await expect(says).toContainText('too little');
  expect(wrong).toEqual([]);
}); // prettier-ignore

test('three distillations ask for an intermediate still, and then show what goes on and what comes back', async ({
  page,
}) => {
  await open(page, '/house/plant/');
  await page.locator('#plant-scheme').selectOption('thrice');
  await expect(page.locator('.plant-says')).toContainText('a third distillation needs one');
  await page.locator('#plant-add-intermediateStills').click();
  await expect(page.locator('.plant-mash')).toContainText('Strong feints, to the spirit stills');
  await expect(page.locator('.plant-mash')).toContainText('Weak feints, back');
  // The rest of the book goes by them too: new spirit of 79 to 85 % vol, where two distillations make about 70.
  await open(page, '/distilling/check/');
  await expect(page.locator('[data-figure="heart.strength"]').first()).toHaveText(/^(79|8[0-5])\.\d/);
});
