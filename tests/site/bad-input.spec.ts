// Nonsense in every field: one sentence by the field, the last good result stays, nothing saved is lost.
import { expect, test } from '@playwright/test';
import { calculators } from '../../src/calculators/index.ts';
import { chapters, open, watch } from './pages.ts';

const NONSENSE = ['', 'abc', '-5', '1e99', '99999999999', 'NaN', '--', '1.2.3', '<b>1</b>'];

for (const chapter of chapters) {
  test(`every field of ${chapter} refuses nonsense in a sentence`, async ({ page }) => {
    test.setTimeout(120_000);
    const wrong = watch(page);
    await open(page, `/${chapter}/`);
    const before = await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house'));
    const fields = page.locator('.field:has(input.number)');
    for (let i = 0; i < (await fields.count()); i++) {
      const field = fields.nth(i);
      const input = field.locator('input.number');
      const [good, label] = [
        await input.inputValue(),
        (await field.locator('label').innerText()).split('\n')[0]!,
      ];
      const results = await page.locator('.results').allInnerTexts();
      for (const text of NONSENSE) {
        // A negative temperature of the grist or of a spirit is no nonsense.
        if (text === '-5' && /grist|^temperature/i.test(label)) continue;
        await input.fill(text);
        const problem = field.locator('.problem');
        await expect(problem, `${label}: ${text}`).toContainText('it can be from');
        if (text.trim() !== '') await expect(problem).toContainText(`“${text}”`);
        await expect(input).toHaveAttribute('aria-invalid', 'true');
        await expect(field).toHaveAttribute('data-state', 'wrong');
      }
      expect(await page.locator('.results').allInnerTexts()).toEqual(results);
      await input.fill(good);
      await expect(field.locator('.problem')).toHaveCount(0);
    }
    expect(await page.locator('body').innerText()).not.toMatch(/NaN|Infinity/);
    expect(await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house'))).toBe(before);
    expect(wrong).toEqual([]);
  });
}

test('the test knows every chapter’s calculators', () => {
  expect(new Set(calculators.map(({ stage }) => stage)).size).toBe(chapters.length);
});

test('contradictory figures are refused by the field, and the result greyed', async ({ page }) => {
  await open(page, '/fermenting/');
  const calculator = page.locator('.calculator', { has: page.locator('#strength-from-gravities-final') });
  await page.locator('#strength-from-gravities-original').fill('1.03');
  await page.locator('#strength-from-gravities-final').fill('1.035');
  const field = calculator.locator('.field', { has: page.locator('#strength-from-gravities-final') });
  await expect(field.locator('.problem')).toContainText(
    'The final gravity 1.035 is not below the original 1.03',
  );
  await expect(calculator.locator('.results')).toHaveAttribute('data-stale', '');
  await expect(page.locator('#house-finalGravity')).toHaveValue('0.998');
  await page.locator('#strength-from-gravities-original').fill('1.06');
  await expect(field.locator('.problem')).toHaveCount(0);
  await expect(page.locator('#house-finalGravity')).toHaveValue('1.035');
});

test('a heart cut above what the still gives is refused in a sentence', async ({ page }) => {
  await open(page, '/distilling/');
  await page.locator('#house-heartEnd').fill('80');
  const field = page.locator('.field', { has: page.locator('#house-heartEnd') });
  await expect(field.locator('.problem')).toContainText('80 % vol');
  await expect(page.locator('.run table.parts tr.heart td').first()).not.toBeEmpty();
  expect(await page.locator('body').innerText()).not.toContain('NaN');
});
