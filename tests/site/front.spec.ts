// The front page: the line, moved by mouse, finger and keys, with its ghost; without scripts; and the way back to where a reader left off.
import { expect, test, type Page } from '@playwright/test';
import { formatNumber } from '../../src/core/format.ts';
import { changeHouse } from '../../src/core/line/change.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { flowsOfLine } from '../../src/islands/line-flows.ts';
import { open } from './pages.ts';

const bottlesOf = ({ bottling }: Line) => formatNumber(Math.floor(bottling.bottlesPerYear), 0);
const bottles = (page: Page) => page.locator('.bottles-a-year b');
const knob = (page: Page, id: string) => page.locator(`[data-handle="${id}"]`);
const value = (page: Page, id: string) => page.locator(`[data-steps="${id}"] b`);
const shape = (page: Page, part: string) => page.locator(`.ribbon:visible .${part}`);
const outline = async (page: Page, part: string) => (await shape(page, part).getAttribute('d'))!;

/** The line of Harrowmere with one figure moved as the front page moves it. */
function moved(figure: 'maltPerMash' | 'heartEnd', to: number): Line {
  const changed = changeHouse(builtInHouse, figure, to as never);
  if ('refused' in changed) throw new Error(changed.refused);
  const result = line(changed.house);
  if ('refused' in result) throw new Error(result.refused);
  return result;
}
/** Across the ribbon at its end, as drawn: litres in bottles. */
const widthAtEnd = (path: string, isDown: boolean) => {
  const points = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
  const across = (point: readonly number[]) => point[isDown ? 0 : 1]!;
  return across(points.at(-1)!) - across(points[0]!);
};
const middleOf = async (page: Page, id: string) => {
  await knob(page, id).scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await knob(page, id).boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
};

test('the heart’s end follows the mouse while it is held, with the loop, the bottles and a ghost', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page, '/');
  await expect(bottles(page)).toHaveText(bottlesOf(builtInLine()));
  await expect(shape(page, 'ghost')).toBeHidden();
  const [loop, spirit] = [await outline(page, 'round'), await outline(page, 'spirit')];
  const { x, y } = await middleOf(page, 'heart-ends');
  await page.mouse.move(x, y);
  await page.mouse.down();
  let last = loop;
  for (const up of [4, 8, 12]) {
    await page.mouse.move(x, y - up);
    await expect(shape(page, 'round')).not.toHaveAttribute('d', last); // the button is still down
    last = await outline(page, 'round');
  }
  await page.mouse.up();
  const end = Number((await value(page, 'heart-ends').innerText()).replace(/[^\d.]/g, ''));
  expect(end).toBeGreaterThan(63);
  const after = moved('heartEnd', end);
  await expect(bottles(page)).toHaveText(bottlesOf(after));
  await expect(page.locator('.bottles-a-year s')).toContainText(bottlesOf(builtInLine()));
  await expect(page.locator('li.spirit-still .station')).toContainText(
    `loop ${formatNumber(flowsOfLine(after).round, 0)}`,
  );
  await expect(knob(page, 'heart-ends')).toHaveAttribute(
    'aria-valuetext',
    new RegExp(`heart ends at ${end.toFixed(1)}`),
  );
  // The ghost is the drawing of before, so the scale has stood still.
  await expect(shape(page, 'ghost')).toBeVisible();
  expect(await outline(page, 'ghost')).toContain(loop);
  expect(await outline(page, 'ghost')).toContain(spirit);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(bottles(page)).toHaveText(bottlesOf(builtInLine()));
  await expect(shape(page, 'ghost')).toBeHidden();
});

test('malt moves by keys and by plus and minus; the wort gives way, or the gravity when the reader wants', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page, '/');
  const was = widthAtEnd(await outline(page, 'spirit'), false);
  await knob(page, 'malt').focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowUp');
  await page.getByRole('button', { name: 'Malt in a mash: up' }).click();
  await expect(value(page, 'malt')).toHaveText(/1,700/);
  await expect(knob(page, 'malt')).toHaveAttribute('aria-valuetext', /1,700/);
  const after = moved('maltPerMash', 1700);
  await expect(bottles(page)).toHaveText(bottlesOf(after));
  await expect(page.locator('.gave p')).toContainText('Wort collected: 7,500 L → 8,500 L'); // 7,500 × 1,700 / 1,500
  const is = widthAtEnd(await outline(page, 'spirit'), false);
  expect(is / was).toBeCloseTo(after.bottling.alcohol / builtInLine().bottling.alcohol, 3);
  await page.getByRole('button', { name: /^Keep the volume/ }).click();
  await expect(page.locator('.gave p')).toContainText('Original gravity: 1.058 →');
  await page.getByLabel('When a figure changes, keep').selectOption('readings');
  await knob(page, 'malt').press('PageDown');
  await expect(value(page, 'malt')).toHaveText(/1,700/); // a wort cannot hold more than the malt has
  await expect(page.locator('.gave .problem')).toContainText('more than all of it');
});

test.describe('in the hand', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test('a finger drags the heart’s end and the page stays where it is', async ({ page }) => {
    await open(page, '/');
    const { x, y } = await middleOf(page, 'heart-ends');
    const [scrolled, loop] = [await page.evaluate(() => scrollY), await outline(page, 'round')];
    const finger = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', down = 0) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + down }],
      });
    await touch('touchStart');
    for (let down = 1; down <= 6; down++) await touch('touchMove', down);
    await expect(shape(page, 'round')).not.toHaveAttribute('d', loop); // the finger is still down
    await touch('touchEnd');
    const end = Number((await value(page, 'heart-ends').innerText()).replace(/[^\d.]/g, ''));
    expect(end).toBeLessThan(61);
    await expect(bottles(page)).toHaveText(bottlesOf(moved('heartEnd', end)));
    await expect(shape(page, 'ghost')).toBeVisible();
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  });

  test('a finger that goes down and comes back leaves the figure and the page as they were', async ({
    page,
  }) => {
    await page.goto('/', { waitUntil: 'networkidle' }); // the script comes with the finger
    const { x, y } = await middleOf(page, 'heart-ends');
    const was = await value(page, 'heart-ends').innerText();
    const finger = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', down = 0) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + down }],
      });
    await touch('touchStart');
    for (let down = 1; down <= 20; down++) {
      await touch('touchMove', down);
      await page.waitForTimeout(16);
    }
    await expect(value(page, 'heart-ends')).not.toHaveText(was);
    for (let down = 19; down >= 0; down--) await touch('touchMove', down);
    await touch('touchEnd');
    await expect(value(page, 'heart-ends')).toHaveText(was);
    expect(await page.evaluate(() => scrollY)).toBe(0);
  });

  test('plus raises the foreshots and minus lowers them', async ({ page }) => {
    await open(page, '/');
    const share = async () => parseFloat(await value(page, 'heart-begins').innerText());
    const was = await share();
    await page.locator('[data-steps="heart-begins"] button').last().tap();
    await expect.poll(share).toBeGreaterThan(was);
    await page.locator('[data-steps="heart-begins"] button').first().tap();
    await page.locator('[data-steps="heart-begins"] button').first().tap();
    await expect.poll(share).toBeLessThan(was);
  });

  test('a first tap on plus counts, though the script comes with it', async ({ page }) => {
    await page.goto('/', { waitUntil: 'networkidle' });
    await page.getByRole('button', { name: 'Years in wood: up' }).tap();
    await expect(value(page, 'years')).toHaveText(/^11/);
  });

  test('the whole line and the three ways in stand on one screen', async ({ page }) => {
    await open(page, '/');
    for (const part of ['.bottles-a-year', 'li.malt', 'li.bottle', '.readers li:last-child'])
      await expect(page.locator(part), part).toBeInViewport({ ratio: 1 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
});

test('at a desk the line and the ways in stand on one screen', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page, '/');
  for (const part of ['.line', '.gave', '.readers', '.held'])
    await expect(page.locator(part), part).toBeInViewport({ ratio: 1 });
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });

  test('the same drawing stands, with the built-in house', async ({ page }) => {
    await page.goto('/');
    await expect(bottles(page)).toHaveText(bottlesOf(builtInLine()));
    const { wash, lowWines, bottles: bottled, lost } = flowsOfLine(builtInLine());
    const [from, to] = [
      (await outline(page, 'spirit')).length,
      widthAtEnd(await outline(page, 'spirit'), false),
    ];
    expect(from).toBeGreaterThan(100);
    expect(to).toBeGreaterThan(5);
    expect(wash - lowWines - lost.potAle).toBeCloseTo(0, 9);
    await expect(page.locator('li.bottle .station')).toContainText(formatNumber(bottled, 0));
    await expect(page.locator('.vessel')).toHaveCount(7);
    await expect(shape(page, 'ghost')).toBeHidden();
  });
});

test('a reader who comes back is led to where they left off', async ({ page }) => {
  await open(page, '/');
  await expect(page.locator('main [data-left-off]')).toBeHidden();
  await open(page, '/mashing/');
  const title = (await page.locator('h1').innerText()).trim();
  await open(page, '/');
  const link = page.locator('main [data-left-off] a');
  await expect(link).toHaveText(title);
  await expect(page.locator('header [data-left-off] a')).toHaveText(title);
  await link.click();
  await page.waitForURL('**/mashing/');
  const heading = page.locator('main h2[id]').last();
  await heading.evaluate((it) => it.scrollIntoView({ behavior: 'instant' }));
  await open(page, '/');
  await link.click();
  await page.waitForURL(/\/mashing\/#./);
  await expect(heading).toBeInViewport();
  await open(page, '/'); // which keeps nothing of itself
  await page.evaluate(() =>
    localStorage.setItem('malt-spirit-handbook/left-off', '{"path":"//elsewhere/","title":"x"}'),
  );
  await open(page, '/');
  await expect(page.locator('main [data-left-off]')).toBeHidden(); // not a page of this book
});

/** Opens the front page with the line's script held back; answers with what lets it come. */
async function withoutItsScript(page: Page): Promise<() => Promise<void>> {
  let come = () => {};
  const gate = new Promise<void>((resolve) => (come = resolve));
  await page.route('**/LiveLine*.js', async (route) => {
    await gate;
    await route.continue();
  });
  await page.goto('/', { waitUntil: 'load' });
  return async () => {
    come();
    await page.waitForFunction(() => document.querySelector('.front astro-island[ssr]') === null);
  };
}

test('a drag that begins before the line’s script has come counts from where it was pressed', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const letCome = await withoutItsScript(page);
  const { x, y } = await middleOf(page, 'years');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await letCome();
  await page.mouse.move(x, y - 6);
  await page.mouse.move(x, y - 30);
  await page.mouse.up();
  await expect(value(page, 'years')).not.toHaveText(/^10/);
}); // prettier-ignore

test('buttons and keys of the line that were pressed before its script has come are done then', async ({ page }) => {
  const letCome = await withoutItsScript(page);
  const years = page.locator('[data-steps="years"]');
  await years.getByRole('button').last().click();
  await page.locator('[data-handle="years"]').focus();
  await page.keyboard.press('ArrowUp');
  await expect(value(page, 'years')).toHaveText(/^10/);
  await letCome();
  await expect(value(page, 'years')).toHaveText(/^12/);
}); // prettier-ignore

test('the ways into the book are a few steps of the Tab key away', async ({ page }) => {
  await open(page, '/');
  await page.locator('.masthead summary').last().focus();
  await page.keyboard.press('Tab');
  await expect(page.locator('.live-line > .skip')).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.locator('.readers a').first()).toBeFocused();
  // Those who do not skip meet one stop for each station and one for each handle, its knob.
  await page.locator('.live-line > .skip').focus();
  let stops = 0;
  do {
    await page.keyboard.press('Tab');
    stops++;
  } while (
    !(await page
      .locator('.readers a')
      .first()
      .evaluate((way) => way === document.activeElement))
  );
  const [stations, handles] = [await page.locator('.station a').count(), await page.locator('.knob').count()];
  expect(stops).toBe(stations + handles + 1);
});
