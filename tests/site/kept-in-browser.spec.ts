// The house is kept across pages, reloads and tabs; islands never keep the built text by mistake; nothing saved is lost.
import { expect, test, type Locator, type Page } from '@playwright/test';
import { format } from '../../src/core/format.ts';
import { gravity } from '../../src/core/quantity.ts';
import { strengthFromGravities } from '../../src/core/wort/attenuation.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, ready } from './pages.ts';

const KEY = 'malt-spirit-handbook/house';
const saved = (figures: object) =>
  JSON.stringify({ format: KEY, version: 1, name: 'Sallowby', figures: { ...builtInHouse, ...figures } });

test('a saved house is in every island and sentence after hydration', async ({ page }) => {
  await page.addInitScript(
    ([key, text]) => localStorage.setItem(key!, text!),
    [KEY, saved({ originalGravity: 1.064, finalGravity: 0.997 })],
  );
  await open(page, '/house/fermenting/');
  await expect(page.locator('#house-finalGravity')).toHaveValue('0.997');
  await open(page, '/sums/strength-from-gravities/');
  await expect(page.locator('#strength-from-gravities-final')).toHaveValue('0.997');
  await expect(page.locator('#strength-from-gravities-original')).toHaveValue('1.064');
  const strength = strengthFromGravities({ original: gravity(1.064), final: gravity(0.997) });
  await expect(
    page.locator('section[aria-labelledby="strength-from-gravities-title"] .results dd').first(),
  ).toHaveText(format(strength, 'strength', 2));
  await expect(page.locator('.ledger caption')).toContainText('Sallowby');
  await open(page, '/fermenting/');
  await expect(page.locator('[data-figure="house.originalGravity"]').first()).toHaveText('1.064');
  await open(page, '/');
  await expect(page.locator('[data-house-name]').first()).toHaveText('Sallowby');
  await expect(page.locator('.foot [data-own-house]')).toContainText(
    'as you have put or moved them, under the name Sallowby',
  );
});

test('a change survives a reload', async ({ page }) => {
  await open(page, '/maturing/work/');
  await page.locator('#house-yearsInWood').fill('12');
  await page.reload();
  await ready(page);
  await expect(page.locator('#house-yearsInWood')).toHaveValue('12');
});

test('two tabs stay together', async ({ context }) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  await open(one, '/maturing/work/');
  await open(two, '/distilling/work/');
  const before = await one.locator('.ledger [data-station="charge"]').textContent();
  await one.locator('#house-fillingStrength').fill('62');
  await two.locator('#house-heartEnd').fill('60.5');
  await expect(one.locator('.ledger [data-station="charge"]')).not.toHaveText(before!);
  await expect
    .poll(() => one.evaluate((key) => JSON.parse(localStorage.getItem(key)!).figures.heartEnd, KEY))
    .toBe(60.5);
  await expect
    .poll(() => two.evaluate((key) => JSON.parse(localStorage.getItem(key)!).figures.fillingStrength, KEY))
    .toBe(62);
});

test('a field in use keeps what is typed, but follows a change of its figure in another tab', async ({
  context,
}) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  for (const tab of [one, two]) await open(tab, '/distilling/work/');
  const [here, there] = [one, two].map((tab) => tab.locator('#house-heartEnd')) as [Locator, Locator];
  await here.fill('61.50');
  await expect(there).toHaveValue('61.5');
  await expect(here).toHaveValue('61.50');
  await there.fill('60');
  await expect(here).toHaveValue('60');
});

test('two tabs change what cannot be together: one holds in both, the other is told of and on the shelf', async ({
  context,
}) => {
  const start = saved({ foreshotsBy: 'strength', foreshotsStrength: 75 });
  await context.addInitScript(
    ([key, text]) => localStorage.getItem(key!) ?? localStorage.setItem(key!, text!),
    [KEY, start],
  );
  // Neither tab hears of the other before both have changed and written the house.
  await context.addInitScript(() => {
    const unheard: StorageEvent[] = [];
    const wait = (event: StorageEvent) => {
      event.stopImmediatePropagation();
      unheard.push(event);
    };
    addEventListener('storage', wait);
    addEventListener('hear-now', () => {
      removeEventListener('storage', wait);
      for (const { key, newValue } of unheard) dispatchEvent(new StorageEvent('storage', { key, newValue }));
    });
  });
  const tabs = [await context.newPage(), await context.newPage()] as const;
  for (const tab of tabs) await open(tab, '/distilling/work/');
  const changes = ['#house-foreshotsStrength', '#house-heartEnd'] as const;
  for (const [i, value] of ['72', '68'].entries()) {
    await tabs[i]!.locator(changes[i]!).fill(value);
    const [, figure] = changes[i]!.split('-');
    await expect
      .poll(() =>
        tabs[i]!.evaluate(
          (key) => JSON.parse(localStorage.getItem(key)!).figures as Record<string, number>,
          KEY,
        ),
      )
      .toMatchObject({ [figure!]: Number(value) });
  }
  for (const tab of tabs) await tab.evaluate(() => void dispatchEvent(new Event('hear-now')));

  const told = (tab: Page) =>
    tab.locator('.troubles').filter({ hasText: 'Another tab changed the house too' });
  await expect.poll(async () => (await told(tabs[0]).count()) + (await told(tabs[1]).count())).toBe(1);
  const figures = async (tab: Page) => Promise.all(changes.map((field) => tab.locator(field).inputValue()));
  await expect
    .poll(async () => JSON.stringify(await figures(tabs[0])))
    .toBe(JSON.stringify(await figures(tabs[1])));
  const holds = await figures(tabs[0]);
  expect([
    ['72', '62'],
    ['75', '68'],
  ]).toContainEqual(holds);
  const shelf = await tabs[0].evaluate(
    () => JSON.parse(localStorage.getItem('malt-spirit-handbook/shelf')!) as Record<string, string>,
  );
  const [, aside] = Object.entries(shelf).find(([name]) => name.endsWith(', set aside'))!;
  const { foreshotsStrength, heartEnd } = (JSON.parse(aside) as { figures: Record<string, number> }).figures;
  expect([foreshotsStrength, heartEnd].map(String)).toEqual(holds[0] === '72' ? ['75', '68'] : ['72', '62']);
});

test('saved figures that cannot be used are told of, and kept aside word for word', async ({ page }) => {
  const text = saved({ heartEnd: 400, portions: 3, finalGravity: 0.999 });
  await page.addInitScript(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
  await open(page, '/distilling/work/');
  await expect(page.locator('.troubles')).toContainText(
    'Heart ends at: “400” was given; it can be from 20 to 85 % vol.',
  );
  await expect(page.locator('.troubles')).toContainText('“portions” is not a figure of this handbook.');
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
  expect(await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/kept-aside'))).toBe(text);
});

test('damaged storage is told of and does not stop the page', async ({ page }) => {
  await page.addInitScript((key) => localStorage.setItem(key, '{"format":"malt-sp'), KEY);
  await open(page, '/distilling/work/');
  await expect(page.locator('.troubles')).toContainText('damaged');
  await expect(page.locator('#house-heartEnd')).toHaveValue('62');
});

test('forbidden storage is told of and the page works on', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await open(page, '/maturing/work/');
  await page.locator('#house-bottlingStrength').fill('43');
  await expect(page.locator('[data-figure="bottling.strength"]').first()).toHaveText(/^43\D/);
  await expect(page.locator('.troubles')).toContainText('does not let the handbook keep your figures');
});
