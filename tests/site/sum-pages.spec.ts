// Every calculator on its own page, in the hand: the first result is in sight with the first field, and with whatever field is in use.
import { expect, test, type Locator, type Page } from '@playwright/test';
import { calculators } from '../../src/calculators/index.ts';
import { open } from './pages.ts';

test.use({ viewport: { width: 390, height: 844 } });

/** Where a thing is seen, between the top of the window and the bar at its foot. */
async function seen(page: Page, thing: Locator) {
  const box = (await thing.boundingBox())!;
  const bar = page.locator('.ledger');
  const foot = (await bar.count()) > 0 ? (await bar.boundingBox())!.y : 844;
  return { top: box.y, end: box.y + box.height, foot };
}

for (const { id } of calculators)
  test(`${id}: field and result are on one screen`, async ({ page }) => {
    await open(page, `/sums/${id}/`);
    const fields = page.locator('.given > .inputs :is(input[type=text], select:not(.unit))');
    const strip = page.locator('.headline');
    const [first, result] = [await seen(page, fields.first()), await seen(page, strip)];
    expect(first.top).toBeGreaterThanOrEqual(0);
    expect(first.end, 'the strip is over the first field').toBeLessThanOrEqual(result.top);
    expect(result.end, 'the first result').toBeLessThanOrEqual(result.foot + 0.5);

    for (const field of await fields.all()) {
      await field.focus();
      const [at, found] = [await seen(page, field), await seen(page, strip)];
      const what = (await field.getAttribute('id'))!;
      expect(at.top, what).toBeGreaterThanOrEqual(-0.5);
      expect(at.end, `${what} is under the strip`).toBeLessThanOrEqual(found.top + 0.5);
      expect(found.end, what).toBeLessThanOrEqual(found.foot + 0.5);
    }
    expect(await fields.count(), 'fields in sight').toBeGreaterThan(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });

test('no calculator shows more than five inputs at once', () => {
  for (const { id, inputs, main } of calculators)
    if (Object.keys(inputs).length > 5) {
      const shown = (main ?? Object.keys(inputs)).filter((name) => !('usedWhen' in inputs[name]!));
      expect(shown.length, id).toBeLessThanOrEqual(5);
    }
});

test('what is folded says that it was changed, and opens when it holds a problem', async ({ page }) => {
  await open(page, '/sums/washback-heat/');
  const more = page.locator('details.more');
  await expect(more).not.toHaveAttribute('open');
  await more.locator('summary').click();
  await page.locator('#washback-heat-air').fill('11');
  await more.locator('summary').click();
  await expect(more.locator('summary')).toHaveText('More figures: 1 changed');
  await page.locator('#washback-heat-air').evaluate((field: HTMLInputElement) => {
    field.value = 'warm';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await expect(more).toHaveAttribute('open');
  await expect(page.locator('#washback-heat-air-problem')).toBeVisible();
});

test('at a desk the results stand beside the inputs', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 844 });
  await open(page, '/sums/kiln/');
  const [given, found] = [
    (await page.locator('.given').boundingBox())!,
    (await page.locator('.headline').boundingBox())!,
  ];
  expect(found.x).toBeGreaterThanOrEqual(given.x + given.width);
  expect(found.y).toBeLessThan(given.y + 20);
});

test('the figures of a chart stay in the page and apart when letters are twice as large', async ({
  page,
}) => {
  for (const { id, chart } of calculators) {
    if (!chart) continue;
    await page.goto(`/sums/${id}/`);
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    const wrong = await page.evaluate(() => {
      const seen = [...document.querySelectorAll<SVGTextElement>('.plot text')]
        .filter((text) => getComputedStyle(text).display !== 'none')
        .map((text) => ({
          box: text.getBoundingClientRect(),
          says: text.textContent,
          of: text.closest('svg'),
        }));
      return seen.flatMap(({ box, says, of }, i) => [
        ...(box.left < 0 || box.right > 390.5 ? [`${says} is off the page`] : []),
        ...seen
          .slice(i + 1)
          .filter(
            (other) =>
              other.of === of &&
              box.left < other.box.right - 1 &&
              other.box.left < box.right - 1 &&
              box.top < other.box.bottom - 1 &&
              other.box.top < box.bottom - 1,
          )
          .map((other) => `${says} meets ${other.says}`),
      ]);
    });
    expect(wrong, id).toEqual([]);
  }
});

test('the pages of the house are short', async ({ page }) => {
  for (const part of ['', 'malting/', 'milling/', 'mashing/', 'fermenting/', 'distilling/', 'maturing/']) {
    await open(page, `/house/${part}`);
    expect(await page.evaluate(() => document.documentElement.scrollHeight / innerHeight)).toBeLessThan(8);
  }
});

test('a link carries a calculator’s figures to another reader, and what cannot be used is told', async ({
  page,
}) => {
  await page.addInitScript(() => Object.defineProperty(navigator, 'clipboard', { value: undefined })); // so that the link is shown
  await open(page, '/sums/blend-two-spirits/');
  const field = page.locator('.given input[type=text]').first();
  await field.fill('1500');
  await page.getByRole('button', { name: 'Copy a link with these figures' }).click();
  const link = (await page.getByText('Copy this link: ').textContent())!.replace('Copy this link: ', '');
  const found = await page.locator('.headline').textContent();
  const other = await page.context().browser()!.newPage();
  await open(other, link);
  await expect(other.locator('.given input[type=text]').first()).toHaveValue('1500');
  await expect(other.locator('.headline')).toHaveText(found!);
  await open(other, `${link},nobody:1`);
  await other.reload();
  await expect(other.locator('.calculator .problem')).toContainText(
    '“nobody” is nothing that this sum takes',
  );
  await other.close();
});
