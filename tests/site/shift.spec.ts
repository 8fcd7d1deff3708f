// A charge of the spirit still, played whole: by keyboard, by touch and by mouse; what is kept, set by a link and refused.
import { expect, test, type Page } from '@playwright/test';
import { decodeStill } from '../../src/shift/still/text.ts';
import { injections } from '../hostile-texts.ts';
import { open, ready, watch } from './pages.ts';

const SEED = 11; // a request for the manhole and a warm jar, neither a blocked line nor warm water
const sign = (page: Page) => page.locator('.shift-sign');
const clock = (page: Page) => page.locator('.shift .time');
const gauge = (page: Page, name: string) =>
  page.locator('.gauges > div', { has: page.locator('dt', { hasText: new RegExp(`^${name}$`) }) }).locator('dd'); // prettier-ignore
const button = (page: Page, name: string | RegExp) => page.locator('.shift').getByRole('button', { name });
const kept = async (page: Page) => {
  const read = decodeStill((await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/shift')))!);
  if ('problem' in read) throw new Error(read.problem);
  return read;
};

/** How one asks for something at the still: each of the three ways does the same run. */
interface Hand {
  readonly steam: (page: Page, by: number) => Promise<void>;
  readonly water: (page: Page, by: number) => Promise<void>;
  readonly press: (page: Page, what: 'go-on' | 'spout' | 'haze' | 'read' | 'charging' | 'air' | 'manhole' | 'discharge' | 'no' | 'fast' | 'minute' | 'slow') => Promise<void>; // prettier-ignore
}
const keys = { 'go-on': 'g', spout: 't', haze: 'z', read: 'h', charging: 'c', air: 'a', manhole: 'm', discharge: 'o', no: 'n', fast: '1', minute: '2', slow: '3' } as const; // prettier-ignore
const byKeyboard: Hand = {
  steam: async ({ keyboard }, by) => {
    for (let i = 0; i < Math.abs(by); i++) await keyboard.press(by > 0 ? 'e' : 'd');
  },
  water: async ({ keyboard }, by) => {
    for (let i = 0; i < Math.abs(by); i++) await keyboard.press(by > 0 ? 'r' : 'f');
  },
  press: ({ keyboard }, what) => keyboard.press(keys[what]),
};
const byHand = (how: 'tap' | 'click'): Hand => {
  const on = (page: Page, key: string) => page.locator(`.shift [aria-keyshortcuts="${key}"]`)[how]();
  return {
    steam: async (page, by) => {
      for (let i = 0; i < Math.abs(by); i++) await on(page, by > 0 ? 'e' : 'd');
    },
    water: async (page, by) => {
      for (let i = 0; i < Math.abs(by); i++) await on(page, by > 0 ? 'r' : 'f');
    },
    press: (page, what) => on(page, keys[what]),
  };
};

/** Steps until the sign, or a gauge, says what is waited for. */
async function until(page: Page, hand: Hand, is: () => Promise<boolean>, most = 400): Promise<void> {
  for (let i = 0; i < most; i++) {
    if (await is()) return;
    await hand.press(page, 'go-on');
  }
  throw new Error(`Nothing of the kind by ${await clock(page).innerText()}: ${await sign(page).innerText()}`);
}
const says = (page: Page, words: RegExp) => async () => words.test(await sign(page).innerText());

/** Runs a whole charge as the page asks for, and hands in what it made. */
async function runCharge(page: Page, hand: Hand): Promise<void> {
  test.slow(); // some hundred presses
  for (const valve of ['charging', 'air', 'manhole'] as const) await hand.press(page, valve);
  await hand.water(page, 5);
  await hand.steam(page, 8);
  await hand.press(page, 'fast');
  await until(page, hand, says(page, /begins to boil/));
  await hand.steam(page, -5);
  await hand.press(page, 'minute');
  await until(page, hand, says(page, /First drops/));
  await hand.press(page, 'go-on');
  await hand.press(page, 'haze');
  await expect(sign(page)).toContainText('hazy');
  // The foreshots are over when the sample stays clear with water.
  for (let i = 0; i < 40 && !(await says(page, /stays clear/)()); i++) {
    await hand.press(page, 'go-on');
    await hand.press(page, 'haze');
  }
  await expect(sign(page)).toContainText('stays clear');
  await hand.press(page, 'spout');
  await expect(gauge(page, 'Spout')).toHaveText('on spirit');
  await hand.press(page, 'fast');
  const answered = async () => {
    if (await says(page, /manhole/)()) await hand.press(page, 'no');
  };
  for (let i = 0; i < 12; i++) {
    await hand.press(page, 'go-on');
    await answered();
  }
  await hand.press(page, 'read');
  await expect(page.locator('#shift-read')).toBeFocused();
  const [, over, whole] = /is ([\d]+(?: and a half)?) marks of 0\.2 above (\d+)/.exec((await page.locator('.shift-reading svg').getAttribute('aria-label'))!)!; // prettier-ignore
  const shown = Number(whole) + parseInt(over!, 10) * 0.2 + (over!.includes('half') ? 0.1 : 0);
  // The table beside the glass, straight between its rows.
  const rows = await page.locator('.shift-reading tbody tr').evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => Number(cell.textContent))),
  ); // prettier-ignore
  const i = rows.findIndex(([mark], k) => mark! <= shown && (rows[k + 1]?.[0] ?? 0) > shown);
  const at20 = rows[i]![1]! + (shown - rows[i]![0]!) * (rows[i + 1]![1]! - rows[i]![1]!);
  await page.locator('#shift-read').fill(shown.toFixed(1));
  await page.locator('#shift-at20').fill(at20.toFixed(1));
  await page.locator('#shift-at20').press('Enter');
  await expect(sign(page)).toContainText('The reading is in the log');
  await until(page, hand, async () => {
    await answered();
    return parseInt((await gauge(page, 'Come over').innerText()).replace(',', ''), 10) > 480;
  });
  await hand.press(page, 'spout');
  await hand.steam(page, 3);
  await until(page, hand, async () => {
    await answered();
    return says(page, /feints are at their end/)();
  });
  await hand.steam(page, -6);
  await hand.press(page, 'go-on');
  await hand.press(page, 'discharge'); // the air valve is still shut
  await expect(sign(page)).toContainText('Air first');
  await hand.press(page, 'air');
  await hand.press(page, 'discharge');
  await expect(page.locator('#shift-end-title')).toContainText(/The shift is done: \d+ of 100/);
}

const begin = async (page: Page, seed = SEED) => {
  await open(page, `/shift/#shift=${seed}`);
  await expect(page.locator('#shift-seed')).toHaveValue(String(seed));
  await page.locator('#shift-begin').click();
  await expect(page.locator('#shift-go')).toBeFocused();
};

test('by keyboard: a charge from steam on to the lees, its points, and the next round with what came back', async ({
  page,
}) => {
  const wrong = watch(page);
  await begin(page);
  await runCharge(page, byKeyboard);
  await expect(page.locator('#shift-end-title')).toBeFocused();
  const shift = await kept(page);
  expect(shift.log.map(({ action }) => action.do)).toContain('read');
  await expect(page.locator('.points')).toContainText('1 of 1 readings right');
  await expect(page.locator('.shift-end')).toContainText('Air first'); // what went wrong, with why
  await expect(page.locator('.result-line')).toHaveText(/^Shift 11, still [0-9A-Z]{7}, charge 1: \d+ of 100, \d{4}-\d\d-\d\d$/); // prettier-ignore
  await page.locator('.shift-log summary').click();
  await expect(page.locator('.shift-log li')).toHaveCount(await page.locator('.shift-log li').count());
  await expect(page.locator('.shift-log ol')).toContainText('First drops at the safe.');
  await page.locator('#shift-next').click();
  await expect(sign(page)).toContainText('round 2');
  const next = await kept(page);
  expect(next.done).toHaveLength(1);
  expect(next.charge.volume).toBeGreaterThan(shift.charge.volume + 100);
  expect(wrong).toEqual([]);

  // It is kept: after a reload the shift goes on where it stood.
  await page.keyboard.press('c');
  await page.keyboard.press('g');
  await expect(clock(page)).toContainText('0:05:00');
  await page.reload();
  await ready(page);
  await button(page, /Go on with shift 11, round 2/).click();
  await expect(clock(page)).toContainText('0:05:00');
  await expect(button(page, /Open charging/)).toBeVisible();
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });
  test('by touch: still and controls are on one screen, and a charge is run with the thumb alone', async ({
    page,
  }) => {
    await open(page, `/shift/#shift=${SEED}`);
    await page.locator('#shift-begin').tap();
    await expect(clock(page)).toBeVisible();
    const seen = await page.evaluate(() => {
      const box = (part: string) => document.querySelector(part)!.getBoundingClientRect();
      return { top: box('.shift-clock').top, foot: box('.shift-controls').bottom, width: document.documentElement.scrollWidth }; // prettier-ignore
    });
    expect(seen.top).toBeGreaterThanOrEqual(0);
    expect(seen.foot).toBeLessThanOrEqual(844);
    expect(seen.width).toBe(390);
    const small = await page.locator('.shift button').evaluateAll((all) =>
      all.filter((each) => { const { width, height } = each.getBoundingClientRect(); return width > 0 && (width < 44 || height < 44); }).length,
    ); // prettier-ignore
    expect(small).toBe(0);
    await runCharge(page, byHand('tap'));
  });
});

test('by mouse: the clock runs by itself, stops when something happens, and one asks for the manhole in vain', async ({
  page,
}) => {
  await begin(page);
  await button(page, /^Shut charging/).click();
  await page.locator('[aria-keyshortcuts="e"]').click();
  await expect(sign(page)).toContainText('No steam yet: the air valve and the manhole are open');
  await button(page, /^Shut air/).click();
  await button(page, /^Shut manhole/).click();
  for (let i = 0; i < 5; i++) await page.locator('[aria-keyshortcuts="r"]').click();
  for (let i = 0; i < 8; i++) await page.locator('[aria-keyshortcuts="e"]').click();
  await page.locator('[aria-keyshortcuts="1"]').click();
  await button(page, /^Go/).click();
  await expect(button(page, /^Pause/)).toBeVisible();
  await expect(sign(page)).toContainText('The charge begins to boil.', { timeout: 40_000 });
  await expect(button(page, /^Go/)).toBeVisible();
  await expect(page.locator('#announcer')).toContainText('The charge begins to boil.');
  await button(page, /^Open manhole/).click();
  await expect(sign(page)).toContainText('stays shut: the still is hot');
  await expect(button(page, /^Open manhole/)).toBeVisible();
  expect((await kept(page)).log.at(-1)).toMatchObject({ action: { do: 'manhole', open: true } });
});

test('by mouse, the whole charge', async ({ page }) => {
  await begin(page);
  await runCharge(page, byHand('click'));
});

test('a look at the clock holds the page far less than 50 ms', async ({ page }) => {
  await begin(page);
  for (const key of 'camrrrrreeeeeee1') await page.keyboard.press(key);
  // The main thread's own time, so that what else the machine does is not counted.
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const spent = async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')!.value * 1000;
  };
  const before = await spent();
  await page.keyboard.press('p');
  await expect(clock(page)).toContainText(/0:[3-4]\d:/, { timeout: 30_000 });
  await page.keyboard.press('p');
  const looks = (30 * 60) / (300 * 0.2); // half an hour at five minutes a second, a look each fifth of a second
  console.log(`a look at the clock: ${(((await spent()) - before) / looks).toFixed(1)} ms`);
  expect(((await spent()) - before) / looks).toBeLessThan(50);
});

test('a number that is none, a link that is none, a kept text that is none: each refused in a sentence', async ({ page }) => {
  await open(page, '/shift/');
  for (const text of ['', '0', '1000000', 'seven', ...injections.slice(0, 3)]) {
    await page.locator('#shift-seed').fill(text);
    await page.locator('#shift-begin').click();
    await expect(page.locator('#shift-seed-problem')).toContainText('it can be a whole number from 1 to 999999');
  }
  await open(page, '/shift/?#shift=0');
  await page.evaluate(() => localStorage.setItem('malt-spirit-handbook/shift', '{"format":"malt-spirit-shift","version":9}'));
  await page.reload();
  await ready(page);
  const told = page.locator('.shift .problem').first();
  await expect(told).toContainText('The link says shift “0”');
  await expect(told).toContainText('version: “9” was given; it can be 1');
  await page.locator('#shift-begin').click();
  await expect(clock(page)).toBeVisible();
  expect(await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/shift-kept-aside'))).toContain('"version":9');
  expect(await page.evaluate(() => 'hurt' in window)).toBe(false);
}); // prettier-ignore

test('a glass read wrongly is taken, nonsense is not', async ({ page }) => {
  await begin(page);
  for (const key of 'camrrrrreeeeeeee1') await page.keyboard.press(key);
  await until(page, byKeyboard, says(page, /begins to boil/));
  await page.keyboard.press('h');
  await expect(sign(page)).toContainText('Nothing runs, so there is nothing to read.');
  for (const key of 'ddddd2') await page.keyboard.press(key);
  await until(page, byKeyboard, says(page, /First drops/));
  await page.keyboard.press('h');
  await page.locator('#shift-read').fill('lots');
  await page.locator('#shift-at20').fill('900');
  await button(page, 'Write it down').click();
  await expect(page.locator('#shift-read-problem')).toContainText('“lots” was given');
  await expect(page.locator('#shift-read-problem')).toContainText('“900” was given');
  await page.locator('#shift-read').fill('50');
  await page.locator('#shift-at20').fill('49,5');
  await button(page, 'Write it down').click();
  expect((await kept(page)).log.at(-1)?.action).toEqual({ do: 'read', read: 50, corrected: 49.5 });
});
