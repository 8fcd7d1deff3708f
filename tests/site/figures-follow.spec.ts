// The main job: a reader changes one figure, and every figure in the handbook follows.
import { expect, test, type Page } from '@playwright/test';
import { formatNumber } from '../../src/core/format.ts';
import { changeHouse } from '../../src/core/line/change.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { gravity } from '../../src/core/quantity.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { figureText } from '../../src/house/prose.ts';
import { open } from './pages.ts';

/** The line of Harrowmere with some figures changed. */
function changed(figures: object): Line {
  const result = line({ ...builtInHouse, ...figures });
  if ('refused' in result) throw new Error(result.refused);
  return result;
}
const figure = (page: Page, path: string) =>
  page.locator(`[data-figure="${path}"]:not([data-per]):not([data-digits]):not([data-bare])`).first();
const station = (page: Page, name: string) => page.locator(`.ledger [data-station="${name}"]`);
const litres = (value: number) => `${formatNumber(value, value < 100 ? 1 : 0)} L`;
/** A station whose alcohol has moved also says what it was. */
const nowLitres = (value: number) => new RegExp(`^${litres(value).replace('.', '\\.')}(was|$)`);

/** Goes to a chapter by the door in the head. */
async function follow(page: Page, chapter: string): Promise<void> {
  await page.locator('.door summary', { hasText: 'Learn' }).press('Enter');
  await page.locator(`.door[open] a[href$="/${chapter}/"]`).first().press('Enter');
  await page.waitForURL(`**/${chapter}/`);
}

test('gravity changed in fermenting changes the heart in distilling and the bottles in maturing', async ({
  page,
}) => {
  const keptVolume = changeHouse(builtInHouse, 'originalGravity', gravity(1.062), 'maltPerMash');
  if ('refused' in keptVolume) throw new Error(keptVolume.refused);
  const after = changed(keptVolume.house);
  expect(after.heart.volume).toBeGreaterThan(builtInLine().heart.volume + 30);

  await open(page, '/plant/distilling/');
  const placedWash = (await page.locator('[data-moves="wash.strength"]').getAttribute('transform'))!;
  await open(page, '/fermenting/');
  await expect(figure(page, 'wash.alcohol')).toHaveText(figureText(builtInLine(), 'wash.alcohol'));
  await open(page, '/sums/strength-from-gravities/');
  await page.locator('#strength-from-gravities-original').fill('1.062');
  await page.getByRole('button', { name: /^Keep the volume/ }).click();
  await expect(station(page, 'wash')).toHaveText(nowLitres(after.wash.alcohol));
  await follow(page, 'fermenting');
  await expect(figure(page, 'wash.alcohol')).toHaveText(figureText(after, 'wash.alcohol'));
  // The curve under the washbacks begins higher: 62 points above water where it was 58, 1.1 units each.
  await expect(page.locator('[data-moves="house.originalGravity"]').last()).toHaveAttribute(
    'transform',
    'translate(62 305.8)',
  );

  await follow(page, 'distilling');
  await expect(figure(page, 'heart.volume')).toHaveText(figureText(after, 'heart.volume'));
  await open(page, '/distilling/work/');
  await expect(page.locator('.run-figures .heart-volume td').last()).toHaveText(
    formatNumber(after.heart.volume, 0),
  );

  await follow(page, 'maturing');
  await expect(figure(page, 'bottling.bottles')).toHaveText(figureText(after, 'bottling.bottles'));
  await expect(station(page, 'bottles')).toHaveText(nowLitres(after.bottling.alcohol));

  await open(page, '/plant/distilling/');
  // The dot of the wash on the curve of vapour has gone to the right and up: stronger, and so is its vapour.
  const dot = page.locator('[data-moves="wash.strength"]');
  await expect(dot).not.toHaveAttribute('transform', placedWash);
  const [was, now] = [placedWash, (await dot.getAttribute('transform'))!].map((at) =>
    at.match(/[\d.]+/g)!.map(Number),
  );
  expect(now![0]!).toBeGreaterThan(was![0]!);
  expect(now![1]!).toBeLessThan(was![1]!);
});

test('a sentence follows each of five changes on one page, and not only the first two', async ({ page }) => {
  await open(page, '/');
  const less = page.locator('[data-steps="heart-ends"]').getByRole('button').first();
  const sentence = page.locator('main [data-figure="charge.alcohol"]').first();
  for (const heartEnd of [61.5, 61, 60.5, 60, 59.5]) {
    await less.click();
    await expect(sentence).toHaveText(figureText(changed({ heartEnd }), 'charge.alcohol'));
  }
});

test('dragging the heart’s end changes the ledger while it moves', async ({ page }) => {
  await open(page, '/distilling/work/');
  const knob = page.locator('.cut.heart-ends .cut-handle');
  await knob.hover(); // waits until it stands still
  const before = await station(page, 'charge').textContent();
  const box = (await knob.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  let last = before!;
  for (const step of [1, 2, 3, 4]) {
    await page.mouse.move(x + 12 * step, y + 4 * step);
    await expect(station(page, 'charge')).not.toHaveText(last); // the button is still down
    last = (await station(page, 'charge').textContent())!;
  }
  await page.mouse.up();
  const end = async () => Number(await page.locator('#house-heartEnd').inputValue());
  await expect.poll(end).toBeLessThan(61);
  await expect(async () =>
    expect((await station(page, 'charge').textContent())!.split('was')[0]).toBe(
      litres(changed({ heartEnd: await end() }).charge.alcohol),
    ),
  ).toPass();
});

test('cuts move by keyboard, and say where they stand', async ({ page }) => {
  await open(page, '/distilling/work/');
  const knob = page.getByRole('slider', { name: 'Heart ends', exact: true });
  await knob.focus();
  await page.keyboard.press('PageDown');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator('#house-heartEnd')).toHaveValue('61');
  await expect(knob).toHaveAttribute('aria-valuetext', /heart ends at 61\.0 % vol/);
  await page.getByRole('slider', { name: 'Heart begins', exact: true }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('#house-foreshotsShare')).toHaveValue('3.1');
  await expect(page.locator('.run-figures .foreshots-volume td').last()).toHaveText(
    formatNumber(changed({ heartEnd: 61, foreshotsShare: 3.1 }).foreshots.volume, 0),
  );
});

test('a figure a year, a tonne or a mash, and a sentence of some houses, follow the house that was kept', async ({
  page,
}) => {
  const own = { ...builtInHouse, mashesPerWeek: 7, fillingStrength: 75 } as typeof builtInHouse;
  await page.addInitScript(
    ([key, text]) => localStorage.setItem(key!, text!),
    ['malt-spirit-handbook/house', encodeHouse({ name: 'Sallowby', house: own })],
  );
  await open(page, '/mashing/');
  const malt = page.locator('td [data-figure="malt.mass"]');
  await expect(malt.nth(0)).toHaveText('1,500 kg');
  await expect(malt.nth(1)).toHaveText('483,000 kg'); // 1,500 kg a mash, seven mashes a week, 46 weeks
  await open(page, '/maturing/work/');
  const sentence = (when: string) => page.locator(`[data-when="${when}"]`).first();
  await expect(sentence('filled-as-it-comes')).toBeVisible(); // 75 % vol is more than the heart has
  await expect(sentence('reduced-for-filling')).toBeHidden();
});

test('the ledger keeps four paces', async ({ page }) => {
  await open(page, '/malting/');
  await expect(page.locator('.ledger details')).toHaveAttribute('open', '');
  for (const [label, factor] of [
    ['a year', 276],
    ['a week', 6],
    ['a tonne of malt', 1 / 1.5],
    ['a mash', 1],
  ] as const) {
    await page.locator('.ledger .pace label', { hasText: label }).click();
    await expect(station(page, 'wash')).toHaveText(litres(builtInLine().wash.alcohol * factor));
  }
});
