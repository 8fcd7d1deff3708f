// Nonsense in every field: one sentence by the field, the last good result stays, nothing saved is lost.
import { expect, test, type Page } from '@playwright/test';
import { calculators } from '../../src/calculators/index.ts';
import { chapters, open, watch } from './pages.ts';

const NONSENSE = ['', 'abc', '-99999', '1e99', '999999999999999', 'NaN', '--', '1.2.3', '<b>1</b>'];

/** Types each text into each number field, on the page itself, and tells what the field then said. */
function typeNonsense(texts: readonly string[]) {
  const type = (input: HTMLInputElement, text: string) => {
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  };
  const fields = [...document.querySelectorAll<HTMLElement>('.field:has(input.number)')];
  const results = () => [...document.querySelectorAll('.results')].map((list) => list.textContent);
  return fields.flatMap((field) => {
    const input = field.querySelector<HTMLInputElement>('input.number')!;
    const [good, before] = [input.value, JSON.stringify(results())];
    const said = texts.map((text) => {
      type(input, text);
      return {
        id: input.id,
        text,
        problem: field.querySelector('.problem')?.textContent ?? '',
        invalid: input.getAttribute('aria-invalid'),
        stands: JSON.stringify(results()) === before,
      };
    });
    type(input, good);
    return [
      ...said,
      {
        id: input.id,
        text: good,
        problem: field.querySelector('.problem')?.textContent ?? '',
        invalid: 'back',
        stands: JSON.stringify(results()) === before,
      },
    ];
  });
}

/** Touches a field, with which the reader of all that is no plain figure comes, and leaves it as it was. */
async function touch(page: Page): Promise<void> {
  const field = page.locator('.field:has(input.number):visible').first();
  const input = field.locator('input.number');
  const good = await input.inputValue();
  await input.fill('abc');
  await expect(field.locator('.problem')).toContainText('“abc”');
  await input.fill(good);
  await expect(field.locator('.problem')).toHaveCount(0);
}

/** Where figures are typed: the house's of each chapter, and every calculator. */
const places = [
  ...chapters.map((chapter) => `/${chapter}/work/`),
  ...calculators.map(({ id }) => `/sums/${id}/`),
];
for (const address of places) {
  test(`every field of ${address} refuses nonsense in a sentence`, async ({ page }) => {
    test.setTimeout(120_000);
    const wrong = watch(page);
    await open(page, address);
    const house = () => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house'));
    const before = await house();
    await touch(page);
    const said = await page.evaluate(typeNonsense, NONSENSE);
    expect(said.length).toBeGreaterThan(NONSENSE.length);
    for (const { id, text, problem, invalid, stands } of said) {
      const what = `${id} given “${text}”`;
      if (invalid === 'back') {
        expect(problem, what).toBe('');
        continue;
      }
      expect(problem, what).toContain('it can be from');
      expect(problem, what).toContain(text === '' ? 'nothing was given' : `“${text}”`);
      expect(invalid, what).toBe('true');
      expect(stands, what).toBe(true);
    }
    expect(await page.locator('body').innerText()).not.toMatch(/NaN|Infinity/);
    expect(await house()).toBe(before);
    expect(wrong).toEqual([]);
  });
}

test('contradictory figures are refused by the field, and the result greyed', async ({ page }) => {
  await open(page, '/sums/strength-from-gravities/');
  const calculator = page.locator('.calculator', { has: page.locator('#strength-from-gravities-final') });
  await page.locator('#strength-from-gravities-original').fill('1.03');
  await page.locator('#strength-from-gravities-final').fill('1.035');
  const field = calculator.locator('.field', { has: page.locator('#strength-from-gravities-final') });
  await expect(field.locator('.problem')).toContainText(
    'The final gravity 1.035 is not below the original 1.03',
  );
  await expect(calculator.locator('.results')).toHaveAttribute('data-stale', '');
  const kept = () =>
    page.evaluate(
      (key) => JSON.parse(localStorage.getItem(key) ?? '{"figures":{}}').figures.finalGravity as unknown,
      'malt-spirit-handbook/house',
    );
  await page.waitForTimeout(300);
  expect(await kept()).not.toBe(1.035); // a figure that cannot be is no figure of the house
  await page.locator('#strength-from-gravities-original').fill('1.06');
  await expect(field.locator('.problem')).toHaveCount(0);
  await expect.poll(kept).toBe(1.035);
});

test('a heart cut above what the still gives is refused in a sentence', async ({ page }) => {
  await open(page, '/distilling/work/');
  await page.locator('#house-heartEnd').fill('80');
  const field = page.locator('.field', { has: page.locator('#house-heartEnd') });
  await expect(field.locator('.problem')).toContainText('80 % vol');
  await expect(page.locator('.ledger [data-station="heart"]')).not.toBeEmpty();
  expect(await page.locator('body').innerText()).not.toContain('NaN');
});

test('a number that was refused is tried again in the unit that is chosen next', async ({ page }) => {
  await open(page, '/house/');
  const field = page.locator('.field', { has: page.locator('#house-maltPerMash') });
  await page.locator('#house-maltPerMash').fill('4');
  await expect(field.locator('.problem')).toContainText('“4” was given');
  await page.getByLabel('Unit of Malt in a mash').selectOption('t');
  await expect(field.locator('.problem')).toHaveCount(0);
  await expect(page.locator('#house-maltPerMash')).toHaveValue('4');
});
