// Numbers and units as people type them, in a field of the house and in the cross-check.
import { expect, test } from '@playwright/test';
import { numberFigures } from '../../src/house/figures.ts';
import { open, quote } from './pages.ts';

test('a field takes words, other units, times and ±, and says what it does not use', async ({ page }) => {
  await open(page, '/house/');
  /** Types a text and waits for what it is taken for: the reader of words comes with the first touch. */
  const typed = async (figure: string, text: string, value: string) => {
    const field = page.locator(`#house-${figure}`);
    await field.fill(text);
    await field.blur();
    await expect(field).toHaveValue(value);
  };
  await typed('maltPerMash', '6.5 tonnes', '6500');
  await typed('maltPerMash', 'six and a half thousand kilos', '6500');
  await typed('originalGravity', '58', '1.058');
  await typed('fillingStrength', '63,5 %', '63.5');
  await typed('maltPerMash', 'about 6 t', '6000');
  await expect(page.locator('#house-maltPerMash-note')).toHaveText(
    'Taken as 6000; “about” is not used here.',
  );
  await page.locator('#house-fillingStrength').fill('5 kg');
  const [low, high] = numberFigures.fillingStrength.range;
  await expect(page.locator('#house-fillingStrength-problem')).toHaveText(
    `Filling strength: “5 kg” was given, which is a mass; it can be from ${low} to ${high} % vol.`,
  );
  await open(page, '/house/fermenting/');
  await typed('fermentationHours', '60h30', '60.5');
});

test('proof is of the country whose units the reader has chosen, and is asked for otherwise', async ({
  page,
}) => {
  await open(page, '/house/');
  const field = page.locator('#house-fillingStrength');
  await field.fill('126 proof');
  await expect(page.locator('#house-fillingStrength-problem')).toContainText(
    /US proof .* or .* UK proof .*: say which/,
  );
  await page.evaluate(() => localStorage.setItem('malt-spirit-handbook/units', '{"volume20":"US gal"}'));
  await open(page, '/house/');
  await field.fill('126 proof');
  await field.blur();
  await expect.poll(async () => Number(await field.inputValue())).toBeCloseTo(63, 0); // twice the strength at 60 °F: 27 CFR 19.1
});

test('the cross-check reads a figure as it is said, and takes it for nothing that its unit cannot be', async ({ page }) => {
  await open(page, '/cross-check/');
  await quote(page, { maltPerYear: 'about 2 million', maltPerMash: '8.5 tonnes', originalGravity: '1058', bottleSize: '5 kg' });
  await expect(page.locator('.marked .mark')).toHaveCount(4);
  await expect(page.locator('.together tbody tr')).toHaveCount(3);
  await expect(page.locator('.together tbody')).not.toContainText('Bottle');
  await page.getByText('The test behind it').click();
  await expect(page.locator('.together tbody')).toContainText('2,000,000');
  await expect(page.locator('.together tbody')).toContainText('8,500');
  await expect(page.locator('.together tbody')).toContainText('1.058');
}); // prettier-ignore
