// Sums that live beside the calculators: the law, the random rounds, the unit that a reader likes, the ± of a result.
import { expect, test } from '@playwright/test';
import { strength } from '../../src/core/quantity.ts';
import { HOUSE_KEY } from '../../src/browser/browser-store.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, pageWith, ready } from './pages.ts';

test('the house is held against the law, point by point', async ({ page }) => {
  await open(page, pageWith('LawCheck'));
  const scotch = page.locator('.definition', { hasText: 'Single malt Scotch whisky' });
  await expect(scotch).toHaveAttribute('data-qualifies', 'yes');
  await page.locator('#law-wood').selectOption('other wood');
  await expect(scotch).toHaveAttribute('data-qualifies', 'no');
  await expect(scotch.locator('summary')).toContainText('1 point is not met');
  await expect(
    page.locator('.definition', { hasText: 'Whisky or whiskey in the European Union' }),
  ).toHaveAttribute('data-qualifies', 'yes');
});

test('on a phone, a weak and flavoured Irish whiskey misses two points, and a rule read long ago says so', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.clock.setFixedTime(new Date('2028-01-01T12:00:00Z'));
  await page.goto('/');
  await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [
    HOUSE_KEY,
    encodeHouse({ name: 'Sallowby', house: { ...builtInHouse, bottlingStrength: strength(37.5) } }),
  ] as const);
  await open(page, pageWith('LawCheck'));
  for (const where of ['madeIn', 'maturedIn', 'bottledIn'])
    await page.locator(`#law-${where}`).selectOption('Ireland');
  await page.locator('#law-added').selectOption('sweetening or flavouring');
  const irish = page.locator('.definition', { hasText: 'Irish whiskey' });
  await expect(irish.locator('summary')).toContainText('2 points are not met');
  await irish.locator('summary').click();
  await expect(irish.locator('.missed')).toHaveText([
    /nothing added but water and plain caramel/,
    /40 % vol or more/,
  ]);
  await expect(irish).toContainText('read more than a year ago');
});

test('ten thousand rounds are drawn off the main thread, with progress', async ({ page }) => {
  test.setTimeout(90_000);
  await open(page, pageWith('RoundSpread'));
  await page.getByRole('button', { name: /Draw 10,000 rounds/ }).click();
  await expect(page.locator('progress')).toBeVisible();
  const row = page.locator('section[aria-labelledby="round-spread-title"] tr', {
    hasText: 'Heart, L pure alcohol',
  });
  await expect(row).toBeVisible({ timeout: 80_000 });
  await expect(row).toContainText(/59\d\.\d/);
});

test('rounds drawn for an earlier house say so, and a drawing that fails says so and can be begun again', async ({
  page,
}) => {
  test.setTimeout(120_000);
  // The first worker fails, as one whose file has not come or whose sum has thrown does.
  await page.addInitScript(() => {
    let first = true;
    window.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (first) setTimeout(() => this.dispatchEvent(new ErrorEvent('error')), 50);
        first = false;
      }
    };
  });
  await open(page, pageWith('RoundSpread'));
  const part = page.locator('section[aria-labelledby="round-spread-title"]');
  const draw = part.getByRole('button', { name: /Draw 10,000 rounds/ });
  await draw.click();
  await expect(part).toContainText('The rounds could not be drawn');
  await expect(part.locator('progress')).toHaveCount(0);
  await draw.click();
  await expect(part.locator('tbody tr').first()).toBeVisible({ timeout: 80_000 });
  await expect(part).not.toContainText('could not be drawn');
  await expect(part).not.toContainText('earlier house');
  const other = await page.context().newPage(); // the house is changed in another tab
  await open(other, '/distilling/work/');
  await other.locator('#house-heartEnd').fill('61');
  await expect(part).toContainText('Drawn for an earlier house: draw again.');
  await expect(part.locator('table')).toHaveAttribute('data-stale', '');
  await expect(draw).toHaveText(/again/);
  await other.locator('#house-heartEnd').fill('62');
  await expect(part).not.toContainText('earlier house');
  await part.locator('#round-spread-heartEnd').fill('0.5');
  await expect(part).toContainText('Drawn for an earlier house: draw again.');
});

test('a still fitted to its own runs gives the house its reflux, and readings that do not go together say so', async ({
  page,
}) => {
  await open(page, '/sums/fit-stills/');
  const part = page.locator('section[aria-labelledby="fit-stills-title"]');
  await part.locator('#fit-stills-known').selectOption('strength');
  await part.locator('#fit-stills-lowWinesStrength').fill('24.2');
  await part.getByRole('button', { name: 'Use 0.07 in my house' }).click(); // 24.2 % vol is what a reflux of 0.07 gives, tests/core/fit-stills.test.ts
  await expect(part).toContainText('0.07 is in my house');
  await part.locator('#fit-stills-safe-0-strength').fill('60');
  await expect(part).toContainText('Spirit still: The safe would rise from 60.0 % vol');
  await expect(part.locator('#fit-stills-safe-0-strength')).toHaveValue('60');
  await open(page, '/house/distilling/');
  await expect(page.locator('#house-washReflux')).toHaveValue('0.07');
});

test('foreshots that are far too many are told of in the field and on the ledger', async ({ page }) => {
  await open(page, '/distilling/work/');
  await page.locator('#house-foreshotsBy').selectOption('strength');
  await page.locator('#house-foreshotsStrength').fill('72');
  const told = /The foreshots hold 4\d % of the charge’s alcohol/;
  await expect(
    page.locator('.figure-of-house', { has: page.locator('#house-foreshotsStrength') }),
  ).toContainText(told);
  await expect(page.locator('.ledger')).toContainText(told);
  await page.locator('#house-foreshotsBy').selectOption('volume');
  await expect(page.locator('#house-foreshotsVolume')).toHaveValue('40');
  await expect(page.locator('.ledger')).not.toContainText(told);
});

test('a unit once chosen holds for its kind, on every page', async ({ page }) => {
  await open(page, '/sums/reduce-to-strength/');
  const field = page.locator('.field:has(#reduce-to-strength-to)');
  await field.locator('select.unit').selectOption('° US proof');
  await expect(field.locator('input.number')).toHaveValue(/^126\.\d/); // twice 63.5 % vol, less the change from 20 °C to 60 °F
  await page.reload();
  await ready(page);
  await expect(field.locator('input.number')).toHaveValue(/^126\.\d/);
  await open(page, '/house/');
  await page.locator('#house-fillingStrength').fill('120');
  await open(page, '/sums/reduce-to-strength/');
  await expect(field.locator('input.number')).toHaveValue(/^120/);
  await open(page, '/sums/strength-from-gravities/');
  await expect(
    page.locator('section[aria-labelledby="strength-from-gravities-title"] .results dd').first(),
  ).toContainText('US proof');
});

test('a ± on a figure shows on every result', async ({ page }) => {
  await open(page, '/sums/predicted-spirit-yield/');
  const calculator = page.locator('section[aria-labelledby="predicted-spirit-yield-title"]');
  await calculator.locator('.how-sure > summary').click();
  await calculator.locator('#predicted-spirit-yield-extract-plus-minus').fill('0.5');
  // 408.6 × 0.5 ÷ 77.5 = 2.6: the rule for products in JCGM 100, by hand.
  await expect(calculator.locator('dd', { hasText: 'L pure alcohol/t' })).toContainText('± 2.6');
});
