// A washback, a mash tun and two casks, each played to its end by keyboard, by touch and by mouse, and kept.
import { expect, test, type Page } from '@playwright/test';
import { open, ready, watch } from './pages.ts';

const PHONE = { width: 390, height: 844 };
test.use({ viewport: PHONE, hasTouch: true });

const says = async (page: Page) => (await page.locator('.shift-sign').innerText()).replace(/\s+/g, ' ');
/** How one asks for something: by its key, or by a thumb or a mouse on the control that has this key. */
type Way = 'key' | 'tap' | 'click';
let way: Way = 'key'; // of the test that runs: a worker runs one at a time
let found = new Set<string>(); // controls that were seen to take a thumb or a mouse; pressed again they are not looked at anew
const by = (next: Way) => ([way, found] = [next, new Set()]);
test.beforeEach(() => void by('key'));
const press = async (page: Page, keys: string) => {
  for (const key of keys)
    if (way === 'key') await page.keyboard.press(key);
    else {
      await page.locator(`.shift [aria-keyshortcuts="${key}"]`)[way]({ force: found.has(key) });
      found.add(key);
    }
};
/** Presses a button by a thumb or a mouse; by keyboard, Enter in the field before it does the same. */
const pressOn = async (page: Page, id: string) => {
  if (way === 'key') await page.locator(id).press('Enter');
  else await page.locator(id)[way]();
};
const done = async (page: Page) => (await page.locator('#shift-end-title').count()) > 0;
const hours = async (page: Page) => {
  const [, hour, minute] = /(\d+):(\d\d)/.exec(await page.locator('.shift .time').innerText())!;
  return Number(hour) + Number(minute) / 60;
};
const begin = async (page: Page, address: string, seed: number) => {
  await open(page, `${address}#shift=${seed}`);
  await expect(page.locator('#shift-seed')).toHaveValue(String(seed));
  await pressOn(page, '#shift-begin');
  await expect(page.locator('#shift-go')).toBeFocused();
  if (way === 'click') return; // at a desk there is no one screen
  // Clock and controls are on one screen.
  const foot = await page.evaluate(() => document.querySelector('.shift-controls')!.getBoundingClientRect().bottom);
  expect(foot).toBeLessThanOrEqual(844);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
}; // prettier-ignore
/** Reads the glass as it is drawn, and brings the reading to 20 °C straight between the rows of its table. */
async function read(page: Page): Promise<void> {
  await page.keyboard.press('h');
  await expect(page.locator('#shift-read')).toBeFocused();
  const told = (await page.locator('.shift-reading svg').getAttribute('aria-label'))!;
  const [, over, whole] = /is (\d+(?: and a half)?) marks of 0\.001 above ([\d.]+?)\.? The/.exec(told)!;
  const shown = Number(whole) + parseInt(over!, 10) * 0.001 + (over!.includes('half') ? 0.0005 : 0);
  const rows = await page.locator('.shift-reading tbody tr').evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => Number(cell.textContent))),
  ); // prettier-ignore
  const i = Math.max(0, rows.findLastIndex(([mark]) => mark! <= shown + 1e-9)); // prettier-ignore
  const [[m0, a0], [m1, a1]] = [rows[Math.min(i, 2)]!, rows[Math.min(i, 2) + 1]!];
  await page.locator('#shift-read').fill(shown.toFixed(4));
  await page.locator('#shift-at20').fill((a0! + ((shown - m0!) / (m1! - m0!)) * (a1! - a0!)).toFixed(4));
  if (way === 'key') await page.keyboard.press('Enter');
  else await page.getByRole('button', { name: 'Write it down' })[way]();
  await expect(page.locator('.shift-sign')).toBeVisible();
}
const total = async (page: Page) => Number(/(\d+) of 100/.exec(await page.locator('#shift-end-title').innerText())![1]); // prettier-ignore

async function playWashback(page: Page): Promise<void> {
  await begin(page, '/shift/washback/', 5); // the fan stops
  for (let i = 0; i < 6 && !/third of the wort/.test(await says(page)); i++) await press(page, 'g');
  await press(page, 'h'); // not before the gas was measured
  await expect(page.locator('.shift-sign')).toContainText('read the gas meter');
  await press(page, 'ys');
  let hasReported = false;
  const answer = async () => {
    const told = await says(page);
    if (/alarm sounds/.test(told) && !hasReported) {
      await press(page, 'x'); // what it shows is said beside the sign
      await expect(page.locator('.shift-sign')).toContainText(/Over the limit.*alarm sounds/);
      await press(page, 'k');
      hasReported = true;
    }
    if (/reach into|reach in/.test(told)) await press(page, 'n');
    if (/at 3[4-9]/.test(told)) await press(page, 'uuu');
  };
  for (let i = 0; i < 120 && (await hours(page)) < 65; i++) {
    await press(page, 'g');
    await answer();
  }
  expect(hasReported).toBe(true);
  for (let i = 0; i < 3; i++) {
    await press(page, 'x');
    await read(page);
    if (i < 2) await press(page, 'gggg');
    await answer();
  }
  for (let i = 0; i < 12 && !(await done(page)); i++) await press(page, 'go');
  await expect(page.locator('#shift-end-title')).toBeFocused();
  await expect(page.locator('.points')).toContainText('3 of 3 readings right');
  await expect(page.locator('.points')).toContainText('Two readings alike');
  expect(await total(page)).toBeGreaterThanOrEqual(85);
}
test('a washback, from the first wort to its charger', async ({ page }) => {
  test.slow();
  const wrong = watch(page);
  await playWashback(page);
  await expect(page.locator('.result-line')).toHaveText(/^Shift 5, washback [0-9A-Z]{7}, round 1: \d+ of 100, \d{4}-\d\d-\d\d$/); // prettier-ignore
  await page.locator('#shift-next').click();
  await expect(page.locator('.shift-sign')).toContainText('round 2');
  // What is kept is offered first, and is not lost unasked.
  await page.reload();
  await ready(page);
  await expect(page.locator('.shift button').first()).toHaveText('Go on with shift 5, round 2');
  await page.locator('#shift-begin').click();
  await expect(page.locator('.shift')).toContainText('Shift 5, round 2 is not done: it stands at 0:00');
  await expect(page.locator('#shift-keep')).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expect(page.locator('#shift-go')).toBeFocused();
  expect(wrong).toEqual([]);
});

async function playMash(page: Page): Promise<void> {
  await begin(page, '/shift/mash-tun/', 3); // grist at 17 °C; a bed that pulls
  const liquor = async (to: number) => {
    const now = Number(await page.locator('.turned output').first().innerText());
    await press(page, (to > now ? 'e' : 'd').repeat(Math.round(Math.abs(to - now) * 2)));
    await expect(page.locator('.turned output').first()).toHaveText(to.toFixed(1));
  };
  const until = async (pattern: RegExp, keys = '', most = 60) => {
    for (let i = 0; i < most && !pattern.test(await says(page)); i++) await press(page, `g${keys}`);
    expect(await says(page)).toMatch(pattern);
  };
  await press(page, 'r');
  await expect(page.locator('.shift-sign')).toContainText('the run-off stays shut');
  await liquor(68); // 64.5 °C wanted, grist at 17: 68.2 by the book's sum of the first water
  await press(page, 'y');
  await until(/The mash is in/);
  await expect(page.locator('.gauges')).toContainText('64.4 °C');
  await until(/keeps its own colour/, 'z');
  await press(page, 'rrrr');
  await until(/run-off is clear/);
  await press(page, 't');
  await until(/pulls down/);
  await press(page, 'ff');
  await press(page, 'ggg');
  await read(page);
  await press(page, 'r');
  await until(/sunk/);
  await liquor(75);
  await press(page, 'y');
  await until(/has drained/);
  await read(page);
  await press(page, 'w');
  await liquor(85);
  await press(page, 'y');
  await until(/water is in/);
  await until(/has drained/);
  await press(page, 'ffffo');
  await expect(page.locator('#shift-end-title')).toBeFocused();
  await expect(page.locator('.points')).toContainText('2 of 2 readings right');
  await expect(page.locator('.points')).toContainText('The bed never set');
  expect(await total(page)).toBeGreaterThanOrEqual(85);
}
test('a mash, from the first water to the draff', async ({ page }) => {
  test.slow();
  const wrong = watch(page);
  await playMash(page);
  // The weak wort is in the next first water.
  await page.locator('#shift-next').click();
  await expect(page.locator('.gauges')).toContainText(/\d weak/);
  expect(wrong).toEqual([]);
});

async function playCasks(page: Page): Promise<void> {
  await begin(page, '/shift/casks/', 1); // the second cask leaks; somebody asks for a flame
  await press(page, '1');
  let [hasLeaked, hasAsked] = [false, false];
  let isOld = false;
  for (let i = 0; i < 40 && !isOld; i++) {
    await press(page, 'g');
    const told = await says(page);
    isOld = /have the age/.test(told);
    if (/naked flame/.test(told)) {
      hasAsked = true;
      await press(page, 'n');
    }
    if (!/year is over/.test(told)) continue;
    await press(page, 'l');
    await press(page, 'i');
    if (/damp to the hand/.test(await says(page))) {
      hasLeaked = true;
      await press(page, 'j');
      await expect(page.locator('.shift-sign')).toContainText('tight');
    }
  }
  expect(hasLeaked && hasAsked).toBe(true);
  await press(page, 'r');
  await expect(page.locator('.shift-sign')).toContainText(/L at [\d.]+ % vol\. As expected/);
  await press(page, 'd');
  await expect(page.locator('.shift-sign')).toContainText('It noses');
  await press(page, 'tbv');
  await expect(page.locator('#shift-end-title')).toBeFocused();
  await expect(page.locator('.points')).toContainText('2 of 2 casks regauged');
  expect(await total(page)).toBeGreaterThanOrEqual(85);
}
test('two casks, year by year, until both are bottled', async ({ page }) => {
  const wrong = watch(page);
  await playCasks(page);
  await page.reload();
  await ready(page);
  await page.getByRole('button', { name: 'See how it went: shift 1, round 1' }).click();
  await expect(page.locator('#shift-end-title')).toBeFocused();
  await page.locator('#shift-next').click();
  await expect(page.locator('.shift-sign')).toContainText('round 2');
  expect(wrong).toEqual([]);
});

for (const [name, play] of [
  ['a washback', playWashback],
  ['a mash', playMash],
  ['two casks', playCasks],
] as const)
  test(`${name}, by touch on a phone and by mouse at a desk`, async ({ page }) => {
    test.slow();
    const wrong = watch(page);
    by('tap');
    await play(page);
    by('click');
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.goto('about:blank'); // the same shift again, from its beginning
    await play(page);
    expect(wrong).toEqual([]);
  });
