// The four doors of the head: by touch and by key, on a phone and at a desk, every page is in reach without going to the foot; and old addresses lead on.
import { expect, test, type Page } from '@playwright/test';
import { calculators } from '../../src/calculators/index.ts';
import { addresses, broken, chapters, open, parts } from './pages.ts';

const DOORS = ['Learn', 'Quote', 'Teach', 'Look up'] as const;
const door = (page: Page, name: string) =>
  page.locator('.door', { has: page.locator('summary', { hasText: name }) });
const handle = (page: Page, name: string) => door(page, name).locator('summary');

for (const width of [390, 1280])
  test.describe(`at ${width} px`, () => {
    test.use({ viewport: { width, height: 844 }, hasTouch: true });

    test('each door opens by touch and by key, shows its pages whole, and shuts the one before', async ({
      page,
    }) => {
      await open(page, '/sources/');
      for (const name of DOORS) {
        await expect(handle(page, name)).toBeInViewport({ ratio: 1 });
        await handle(page, name).tap();
        await expect(page.locator('.door[open]')).toHaveCount(1);
        const links = door(page, name).locator('a[href]');
        expect(await links.count()).toBeGreaterThan(3);
        for (const link of await links.all()) await expect(link).toBeInViewport({ ratio: 1 });
        const { width: wide } = (await door(page, name).locator('.behind').boundingBox())!;
        expect(wide).toBeLessThanOrEqual(width);
      }
      await handle(page, 'Look up').tap();
      await expect(page.locator('.door[open]')).toHaveCount(0);
      for (const [name, key] of [
        ['Learn', 'Enter'],
        ['Teach', 'Space'],
      ] as const) {
        await handle(page, name).focus();
        await page.keyboard.press(key);
        await page.keyboard.press('Tab');
        await expect(door(page, name).locator('a[href]').first()).toBeFocused();
      }
    });

    test('a door shuts on Escape with the focus on its handle, on a touch beside it, and when the focus goes on', async ({
      page,
    }) => {
      await open(page, '/sources/');
      await handle(page, 'Quote').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Escape');
      await expect(page.locator('.door[open]')).toHaveCount(0);
      await expect(handle(page, 'Quote')).toBeFocused();

      await handle(page, 'Quote').tap();
      await door(page, 'Quote').locator('.behind > p').tap(); // inside it
      await expect(page.locator('.door[open]')).toHaveCount(1);
      await page.touchscreen.tap(width / 2, 800);
      await expect(page.locator('.door[open]')).toHaveCount(0);

      await handle(page, 'Quote').focus();
      await page.keyboard.press('Enter');
      const stops: string[] = [];
      for (let i = 0; i < 20 && (await page.locator('.door[open]').count()) > 0; i++) {
        await page.keyboard.press('Tab');
        stops.push(await page.locator(':focus').innerText());
      }
      // Its pages in order, then the next door.
      const links = (await door(page, 'Quote').locator('a[href]').allTextContents()).map((text) =>
        text.trim(),
      );
      expect(stops).toEqual([...links, 'Teach']);
      await expect(handle(page, 'Teach')).toBeFocused();
    });

    test('the accessibility rules hold with a door open', async ({ page }) => {
      await open(page, '/distilling/check/');
      for (const name of DOORS) {
        await handle(page, name).click();
        await expect(page.locator('.door[open]')).toHaveCount(1);
        expect(await broken(page, '.masthead'), name).toEqual([]);
      }
    });

    for (const [who, way] of [
      ['a guide to the house', ['Quote', '/house/']],
      ['a guide to the check of a talk', ['Quote', '/script/']],
      ['a starter to malting', ['Learn', '/malting/']],
      ['a starter to safety', ['Learn', '/safety/']],
      ['a trainer to a sheet', ['Teach', '/sheets/']],
    ] as const)
      test(`${who}: in two touches from the front page`, async ({ page }) => {
        await open(page, '/');
        const [name, address] = way;
        await handle(page, name).tap();
        await door(page, name).locator(`a[href$="${address}"]`).tap();
        await page.waitForURL(`**${address}`);
        await expect(page.locator('h1')).toBeInViewport();
      });
  });

test('every page stands behind a door, or one step on: on a tab of its chapter or in a list of calculators', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.goto('/');
  /** Where the links lead that a reader has at the head of a page, or in its text. */
  const linked = (part: string) =>
    page
      .locator(`${part} a[href]`)
      .evaluateAll((all) => all.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
  const inHead = new Set(await linked('.masthead'));
  const reached = new Set(inHead);
  for (const address of inHead) {
    await page.goto(address);
    for (const next of await linked('main')) reached.add(next);
  }
  // A sheet to be taken is opened by the link that a trainer gives.
  const given = ['/sheet/', '/sheet/own/', '/sheet/sealed/'];
  expect(addresses.filter((address) => !reached.has(address) && !given.includes(address))).toEqual([]);
});

test('the list of headings goes with Escape, a touch beside it, and once it has led somewhere', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '/malting/');
  const list = page.locator('.contents');
  await list.locator('summary').click();
  await page.keyboard.press('Escape');
  await expect(list).not.toHaveAttribute('open');
  await expect(list.locator('summary')).toBeFocused();
  await list.locator('summary').click();
  const last = list.locator('a').last();
  const id = (await last.getAttribute('href'))!;
  await last.click();
  await expect(list).not.toHaveAttribute('open');
  await expect(page.locator(id)).toBeInViewport();
});

for (const chapter of chapters)
  test(`old addresses of ${chapter} lead on: headings of its other pages, its cautions, its calculators`, async ({
    page,
  }) => {
    for (const part of parts.slice(1)) {
      await page.goto(`/${chapter}/${part}`);
      const id = (await page.locator('main h2[id]').first().getAttribute('id'))!;
      await page.goto('about:blank');
      await page.goto(`/${chapter}/#${id}`);
      await page.waitForURL(`**/${chapter}/${part}#${id}`);
      await expect(page.locator(`[id="${id}"]`)).toBeInViewport();
    }
    for (const { id } of calculators.filter(({ stage }) => stage === chapter)) {
      await page.goto('about:blank');
      await page.goto(`/${chapter}/#${id}-title`);
      await page.waitForURL(`**/sums/${id}/**`);
    }
    const places = JSON.parse(
      (await (await page.request.get(`/${chapter}/`)).text())
        .match(/data-moved="([^"]*)"/)![1]!
        .replaceAll('&quot;', '"')
        .replaceAll('&#34;', '"'),
    ) as Record<string, string>;
    expect(Object.keys(places).length).toBeGreaterThan(10);
    for (const [id, path] of Object.entries(places)) {
      const response = await page.request.get(
        new URL(path, `${new URL(page.url()).origin}/${chapter}/`).href,
      );
      expect(response.status(), id).toBe(200);
      if (!path.includes('sums/')) expect(await response.text(), id).toContain(`id="${id}"`);
    }
  });
