// What can go wrong around the handbook: in each case the page says what it can, and nothing is lost.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { open, quote, ready, sumsOf } from './pages.ts';

const HOUSE = 'malt-spirit-handbook/house';
const PRACTICE = 'malt-spirit-handbook/practice';
const dist = join(import.meta.dirname, '..', '..', 'dist');
const sallowby = encodeHouse({
  name: 'Sallowby',
  house: { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse,
});
const kept = (page: Page, key: string) => page.evaluate((name) => localStorage.getItem(name), key);

test('storage full: the page says so, works on, and what was kept stays', async ({ page }) => {
  const practised =
    '{"format":"malt-spirit-handbook/practice","version":1,"standing":{},"log":[{"kind":"a","day":"2026-05-14","verdict":"right"}]}';
  await page.addInitScript(
    ([house, text, practice, log]) => {
      localStorage.setItem(house!, text!);
      localStorage.setItem(practice!, log!);
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
    [HOUSE, sallowby, PRACTICE, practised],
  );
  await open(page, '/distilling/work/');
  await page.locator('#house-heartEnd').fill('62');
  await expect(page.locator('.troubles').first()).toContainText(
    'does not let the handbook keep your figures',
  );
  await expect(page.locator('[data-figure="house.heartEnd"]').first()).toHaveText(/^62\D/);
  expect(await kept(page, HOUSE)).toBe(sallowby);
  await open(page, sumsOf.mashing);
  await page.locator('#practice-answer').fill('1');
  await page.getByRole('button', { name: 'Mark my answer' }).click();
  await expect(page.locator('.practice .problem').first()).toContainText(
    'does not let the handbook keep your practice; save it to a file',
  );
  await expect(page.locator('.record-so-far tr', { hasText: 'Mashing' })).toContainText('of 1');
  expect(await kept(page, PRACTICE)).toBe(practised);
});

test('storage full: the cross-check says that what is typed lasts as long as the page', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await open(page, '/cross-check/');
  await expect(page.locator('.cross-check .problem')).toHaveCount(0);
  await quote(page, { originalGravity: '1.060' });
  await expect(page.locator('.cross-check [role=status] .problem').first()).toContainText('does not let the handbook keep what you type');
  await expect(page.locator('.cross-check .note').first()).toContainText('lasts until the page is closed');
}); // prettier-ignore

for (const [address, change] of [
  ['/', async (page: Page) => page.locator('[data-handle="heart-ends"]').press('ArrowUp')],
  ['/sums/what-if/', async (page: Page) => page.locator('#what-if-heartEnd').fill('61')],
] as const)
  test(`storage full: ${address}, where no field of the house stands, says that a changed figure is not kept`, async ({
    page,
  }) => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await open(page, address);
    await expect(page.locator('.troubles')).toHaveCount(0);
    await change(page);
    await expect(page.locator('.troubles')).toHaveText(
      'This browser does not let the handbook keep your figures; they last until the page is closed.',
    );
  });

test('storage full: the cards, the talk and the codes say that they are not kept', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await open(page, '/cards/');
  await page.locator('.choices .tick').first().click();
  await expect(page.locator('.choices .problem')).toContainText('does not let the handbook keep');
  await open(page, '/script/');
  await page.locator('#script-text').fill('We fill 9 casks a week.');
  await expect(page.locator('.script-reader [role=status] .problem').first()).toContainText(
    'does not let the handbook keep your talk',
  );
  await open(page, '/sheets/');
  await page.locator('#result-codes').fill('x');
  await expect(page.locator('#result-problems')).toContainText('does not keep the codes');
});

test('written by a newer version: told of, kept aside word for word, and not taken apart', async ({
  page,
}) => {
  const newer = sallowby.replace(/"version":\d+/, '"version":7');
  await page.addInitScript(
    ([key, text]) => localStorage.getItem(key!) ?? localStorage.setItem(key!, text!),
    [HOUSE, newer],
  );
  await open(page, '/distilling/work/');
  await expect(page.locator('.troubles').first()).toContainText('version 7');
  await page.locator('#house-heartEnd').fill('63');
  await expect.poll(() => kept(page, HOUSE)).toContain('"heartEnd":63');
  expect(await kept(page, 'malt-spirit-handbook/kept-aside')).toBe(newer);
});

test('practice written by a newer version is told of and kept aside', async ({ page }) => {
  const newer = '{"format":"malt-spirit-handbook/practice","version":7,"boxes":[]}';
  await page.addInitScript(
    ([key, text]) => localStorage.getItem(key!) ?? localStorage.setItem(key!, text!),
    [PRACTICE, newer],
  );
  await open(page, sumsOf.mashing);
  await expect(page.getByRole('alert')).toContainText('another version');
  await page.locator('#practice-answer').fill('1');
  await page.getByRole('button', { name: 'Mark my answer' }).click();
  await expect.poll(() => kept(page, PRACTICE)).toContain('"version":1');
  expect(await kept(page, `${PRACTICE}-kept-aside`)).toBe(newer);
});

for (const [what, time] of [
  ['far behind', '1971-01-02T03:04:05'],
  ['far ahead', '2199-12-31T23:59:59'],
] as const) {
  test(`the clock ${what}: practice goes on, and goes on when the clock is right again`, async ({ page }) => {
    await page.clock.setFixedTime(new Date(time));
    await open(page, '/practice/#topic=law');
    for (let i = 0; i < 2; i++) {
      await expect(page.locator('.question')).toBeVisible();
      const field = page.locator('#practice-answer');
      if ((await field.getAttribute('type')) === 'text') await field.fill('1');
      else await page.locator('.question .tick').first().click();
      await page.getByRole('button', { name: 'Mark my answer' }).click();
      const [shows, next] = ['Show the answer', 'Next question'].map((name) =>
        page.getByRole('button', { name }),
      );
      await shows!.or(next!).waitFor();
      if (await shows!.isVisible()) await shows!.click();
      await next!.click();
    }
    await page.clock.setFixedTime(new Date('2026-05-14T12:00:00'));
    await page.reload();
    await ready(page);
    await expect(page.locator('.question')).toBeVisible();
    await expect(page.locator('.record-so-far tr', { hasText: 'Law' })).toContainText('of 2');
  });
}

test('two tabs: an answer in one is not lost by an answer in the other', async ({ context }) => {
  const tabs = await Promise.all([context.newPage(), context.newPage()]);
  for (const [i, tab] of tabs.entries()) await open(tab, [sumsOf.mashing, sumsOf.fermenting][i]!);
  for (const tab of tabs) {
    await tab.locator('#practice-answer').fill('1');
    await tab.getByRole('button', { name: 'Mark my answer' }).click();
    await expect(tab.getByRole('button', { name: 'Show the answer' })).toBeVisible();
  }
  const answers = async () =>
    (JSON.parse((await kept(tabs[0]!, PRACTICE)) ?? '{"log":[]}') as { log: unknown[] }).log.length;
  await expect.poll(answers).toBe(2);
});

test('a page shown again by the Back button has what was changed and answered meanwhile, and loses none of it', async ({
  context,
}) => {
  const [away, other] = [await context.newPage(), await context.newPage()];
  await away.addInitScript(() =>
    addEventListener('storage', (event) => event.stopImmediatePropagation(), true),
  ); // as a page that lies in the browser's memory hears nothing
  await open(away, '/distilling/work/');
  await open(other, '/maturing/work/');
  await other.locator('#house-fillingStrength').fill('62');
  await expect.poll(() => kept(other, HOUSE)).toContain('"fillingStrength":62');
  const back = () => dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
  await away.evaluate(back);
  await away.locator('#house-heartEnd').fill('60.5');
  await expect.poll(() => kept(other, HOUSE)).toContain('"heartEnd":60.5');
  expect(await kept(other, HOUSE)).toContain('"fillingStrength":62');

  await open(away, sumsOf.mashing);
  await open(other, sumsOf.fermenting);
  const answer = async (page: Page) => {
    await page.locator('#practice-answer').fill('1');
    await page.getByRole('button', { name: 'Mark my answer' }).click();
    await expect(page.getByRole('button', { name: 'Show the answer' })).toBeVisible();
  };
  await answer(other);
  await away.evaluate(back);
  await answer(away);
  expect((JSON.parse((await kept(other, PRACTICE)) ?? '') as { log: unknown[] }).log).toHaveLength(2);
});

test('what reads a talk does not come: the page says so, keeps the talk, and reads it when it comes', async ({
  page,
}) => {
  await page.route(/script-reading\.worker/, (route) => route.abort());
  await open(page, '/script/');
  await page.locator('#script-text').fill('We fill 9 casks a week.');
  await expect(page.locator('.script-reader .problem')).toContainText('What you typed is untouched');
  await page.unroute(/script-reading\.worker/);
  await page.reload();
  await expect(page.locator('.marked .mark')).toHaveText('9 casks');
  await expect(page.locator('.script-reader .problem')).toHaveCount(0);
});

test('opened from a file system: text, tables and drawings are there, and the page says what is not', async ({
  page,
}) => {
  await page.goto(pathToFileURL(join(dist, 'distilling', 'index.html')).href);
  await expect(page.locator('.script-file')).toBeVisible();
  await expect(page.locator('.script-file')).toContainText('opened straight from a disk');
  await expect(page.locator('[data-figure="heart.alcohol"]').first()).toHaveText(/L\spure\salcohol/);
  await page.locator('.door summary', { hasText: 'Learn' }).click();
  await page.locator('.door[open] a', { hasText: 'Mashing' }).click();
  await expect(page.locator('h1')).toHaveText('Mashing');
});

test('no script comes: the page says so, and fields, results and doors are there all the same', async ({
  page,
}) => {
  for (const scripts of [/_astro\/islands\..*\.js/, /_astro\/.*\.js/]) {
    await page.route(scripts, (route) => route.abort());
    await page.goto('/sums/what-if/');
    await expect(page.locator('.script-lost')).toBeVisible();
    await expect(page.locator('.calculator form :is(input, select)').first()).toBeVisible();
    await expect(page.locator('.calculator .results dd').first()).not.toBeEmpty();
    await page.locator('.door summary', { hasText: 'Look up' }).click();
    await expect(page.locator('.door[open] a').first()).toBeVisible();
  }
});

test('a script that fails half way: the page says so, the rest works, what was saved is untouched', async ({
  page,
}) => {
  await page.addInitScript(([key, text]) => localStorage.setItem(key!, text!), [HOUSE, sallowby]);
  await page.route(/_astro\/SpiritRun\./, (route) => route.abort());
  await page.goto('/distilling/work/');
  await expect(page.locator('.script-lost')).toBeVisible();
  await expect(page.locator('.script-lost')).toContainText('What you saved is untouched');
  await expect(page.locator('[data-figure="house.heartEnd"]').first()).toHaveText(/^60\D/);
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
  expect(await kept(page, HOUSE)).toBe(sallowby);
});

for (const [what, script, address] of [
  ['the script of every page', /_astro\/book\./, '/distilling/'],
  ['what a calculator reckons', /_astro\/what-if\./, '/sums/what-if/'],
  ['the first question', /_astro\/moisture-on-dry-basis\./, '/practice/#topic=malting'],
  ['a kind of question', /_astro\/energy-of-a-bottle\./, '/sheets/'],
] as const)
  test(`${what} does not come to ${address}: the page says so, and what was saved is untouched`, async ({
    page,
  }) => {
    const practised =
      '{"format":"malt-spirit-handbook/practice","version":1,"standing":{},"log":[{"kind":"a","day":"2026-05-14","verdict":"right"}]}';
    const keep = { [HOUSE]: sallowby, [PRACTICE]: practised };
    await page.addInitScript((texts) => {
      for (const [key, text] of Object.entries(texts)) localStorage.setItem(key, text);
    }, keep);
    await page.route(script, (route) => route.abort());
    await page.goto(address);
    await expect(page.locator('.script-lost')).toBeVisible();
    for (const [key, text] of Object.entries(keep)) expect(await kept(page, key)).toBe(text);
  });
