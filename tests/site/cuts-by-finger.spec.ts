// The main job on a phone: a gravity, a cut moved by a finger, and the heart that follows, all on one screen.
import { expect, test, type Locator, type Page } from '@playwright/test';
import { lineOf } from '../../src/house/line-of.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { formatNumber } from '../../src/core/format.ts';
import { open } from './pages.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const WORK = '/distilling/work/';
const centre = async (of: Locator) => {
  const { x, y, width, height } = (await of.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
};

/** A finger that is put down, moved in small steps and, unless it is to stay, taken away. */
async function finger(page: Page) {
  const devtools = await page.context().newCDPSession(page);
  let at = { x: 0, y: 0 };
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd') =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [at] });
  return {
    down: async (place: { x: number; y: number }) => {
      at = place;
      await send('touchStart');
    },
    by: async (x: number, y: number, steps = 20) => {
      for (let i = 0; i < steps; i++) {
        at = { x: at.x + x / steps, y: at.y + y / steps };
        await send('touchMove');
        await page.waitForTimeout(16);
      }
    },
    up: () => send('touchEnd'),
  };
}

/** Where the page stands once the run is brought to its head. */
async function toTheRun(page: Page): Promise<number> {
  await open(page, WORK);
  const run = page.locator('.run');
  await run.evaluate((element) => element.scrollIntoView());
  await page.locator('.heart-ends .cut-knob').click({ trial: true }); // until it stands still
  return page.evaluate(() => scrollY);
}

for (const [cut, x, y, row] of [
  ['heart-begins', 60, 2, 'foreshots-volume'],
  ['heart-ends', 24, 16, 'heart-volume'],
  ['heart-ends', -40, -8, 'heart-volume'],
  ['feints-end', -36, -30, 'feints-volume'],
] as const)
  test(`a finger drags ${cut} by ${x}, ${y}, and the page stays`, async ({ page }) => {
    const stood = await toTheRun(page);
    await page.evaluate(() => {
      const seen: string[] = [];
      for (const type of ['pointermove', 'pointercancel', 'pointerup'])
        addEventListener(type, () => seen.push(type), true);
      Object.assign(window, { seen });
    });
    const was = page.locator(`.run-figures .${row} td`).first();
    const now = page.locator(`.run-figures .${row} td`).last();
    const before = await now.innerText();
    const axis = page.locator('.run .axis');
    const scale = await axis.innerHTML();
    const touch = await finger(page);
    await touch.down(await centre(page.locator(`.${cut} .cut-knob`)));
    await touch.by(x, y);
    await expect(axis).toHaveJSProperty('innerHTML', scale); // under the finger the axis stands still
    await touch.up();
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    expect(seen).not.toContain('pointercancel');
    expect(seen.filter((type) => type === 'pointermove').length).toBeGreaterThan(10);
    expect(await page.evaluate(() => scrollY)).toBe(stood);
    await expect(now).not.toHaveText(before);
    await expect(was).toHaveText(before);
  });

test('a cut stays under the finger that holds it', async ({ page }) => {
  await toTheRun(page);
  const knob = page.locator('.heart-ends .cut-knob');
  const at = await centre(knob);
  const touch = await finger(page);
  await touch.down(at);
  await touch.by(30, 0);
  await expect.poll(async () => Math.abs((await centre(knob)).x - at.x - 30)).toBeLessThan(3);
  await touch.up();
});

test('beside a cut a finger scrolls the page, up and down', async ({ page }) => {
  const stood = await toTheRun(page);
  const box = (await page.locator('.run-curve').boundingBox())!;
  const end = await page.locator('.heart-ends .cut-handle').getAttribute('aria-valuetext');
  const touch = await finger(page);
  await touch.down({ x: box.x + 0.25 * box.width, y: box.y + 0.75 * box.height });
  await touch.by(0, -120);
  await touch.up();
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(stood + 60);
  expect(await page.locator('.heart-ends .cut-handle').getAttribute('aria-valuetext')).toBe(end);
});

test('gravity, cuts and the heart, was and now, stand on one screen', async ({ page }) => {
  await toTheRun(page);
  const gravity = page.locator('#run-originalGravity');
  await gravity.fill('1.062');
  const [before, after] = [
    lineOf(builtInHouse),
    lineOf({ ...builtInHouse, originalGravity: await keptGravity(page) }),
  ];
  expect(after.heart.alcohol).toBeGreaterThan(before.heart.alcohol);
  const cells = page.locator('.run-figures .heart-alcohol td');
  await expect(cells.first()).toHaveText(formatNumber(before.heart.alcohol, 1));
  await expect(cells.last()).not.toHaveText(formatNumber(before.heart.alcohol, 1));
  const [head, foot] = await page.evaluate(() => [
    document.querySelector('.wayfinder')!.getBoundingClientRect().bottom,
    document.querySelector('.ledger')!.getBoundingClientRect().top,
  ]);
  for (const part of [
    gravity,
    page.locator('.run-curve'),
    ...(await page.locator('.run .cut-knob').all()),
    page.locator('.run-figures'),
  ]) {
    const { y, height } = (await part.boundingBox())!;
    expect(y).toBeGreaterThanOrEqual(head! - 1);
    expect(y + height).toBeLessThanOrEqual(foot!);
  }
});
const keptGravity = async (page: Page) =>
  Number(await page.locator('#run-originalGravity').inputValue()) as (typeof builtInHouse)['originalGravity'];

test('with letters of twice the size nothing runs over, and the drawing’s letters grow', async ({ page }) => {
  await toTheRun(page);
  const size = () =>
    page
      .locator('.run .tick')
      .first()
      .evaluate((text) => text.getBoundingClientRect().height);
  const before = await size();
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  await expect.poll(size).toBeGreaterThan(1.6 * before); // the drawing itself grows a little narrower, between wider margins
  const over = await page
    .locator('.run')
    .evaluate((run) =>
      [...run.querySelectorAll('*')]
        .filter((part) => part.checkVisibility() && part.getBoundingClientRect().right > 390)
        .map((part) => part.outerHTML.slice(0, 80)),
    );
  expect(over).toEqual([]);
  expect(await page.locator('.run').evaluate((run) => run.scrollWidth - run.clientWidth)).toBe(0);
  // Names along the foot stay apart.
  const boxes = await page
    .locator('.run .tick[y="402"]')
    .evaluateAll((ticks) => ticks.map((tick) => tick.getBoundingClientRect().toJSON() as DOMRect));
  expect(boxes.length).toBeGreaterThan(2);
  for (const [i, { left }] of boxes.entries()) if (i > 0) expect(left).toBeGreaterThan(boxes[i - 1]!.right);
});

test('foreshots have their name, however few', async ({ page }) => {
  await toTheRun(page);
  await expect(page.locator('.run-curve text', { hasText: 'Foreshots' })).toBeVisible();
});
