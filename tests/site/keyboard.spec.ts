// Everything by keyboard alone: fields, choices, cuts, terms, search, practice and sheets; the focus is seen, kept and never hidden.
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { talk } from '../walk/harrowmere-talk.ts';
import { open, pageWith, ready, sumsOf } from './pages.ts';

/** Presses Tab until an element has the focus; fails when a whole round does not reach it. */
async function tabTo(page: Page, selector: string, key = 'Tab'): Promise<void> {
  for (let i = 0; i < 400; i++) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} does not reach ${selector}.`);
}
const focused = (page: Page) => page.locator(':focus');

for (const [address, width, height] of [
  ['/ingredients/', 390, 700],
  ['/strength-and-volume/', 320, 256],
  ['/practice/', 1280, 800],
] as const)
  test(`Tab walks ${address} at ${width} × ${height} to its end and back: seen, above all bars, no trap`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await open(page, address);
    const walk = async (key: string) => {
      const seen: string[] = [];
      for (let i = 0; i < 500; i++) {
        await page.keyboard.press(key);
        const stop = await page.evaluate(async () => {
          for (let frame = 0; frame < 5; frame++) await new Promise(requestAnimationFrame); // the reader sees it after a moment
          const at = document.activeElement;
          if (!at || at === document.body) return undefined;
          const all = [...document.querySelectorAll('*')];
          const box = at.getBoundingClientRect();
          const style = getComputedStyle(at);
          const marked = (element: Element | null) => {
            const { outlineStyle, outlineWidth } = getComputedStyle(element!);
            return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
          };
          const ring = marked(at) || marked(at.closest('label') ?? at);
          // Somewhere of what has the focus must lie on top, in sight.
          const points = [0.1, 0.3, 0.5, 0.7, 0.9].flatMap((down) =>
            [0.02, 0.3, 0.5, 0.98].map((across) =>
              document.elementFromPoint(box.left + across * box.width, box.top + down * box.height),
            ),
          );
          const inSight = points.some(
            (top) => top && (at.contains(top) || at.closest('label')?.contains(top)),
          );
          return {
            key: String(all.indexOf(at)),
            ring,
            inSight,
            inMeaning: at.closest('.term-says') !== null,
            name: `${at.tagName} ${at.id || at.textContent!.slice(0, 30)} ${style.outlineStyle}`,
          };
        });
        if (!stop) return seen;
        if (stop.key === seen[0] && seen.length > 1) return seen; // round the browser's end, and back at the beginning
        if (seen.includes(stop.key)) throw new Error(`${stop.name} has the focus twice.`);
        expect(stop, stop.name).toMatchObject({ ring: true, inSight: true });
        if (!stop.inMeaning) seen.push(stop.key); // the link in a meaning is there only while its word is in use
      }
      throw new Error('There is no end to it.');
    };
    const there = await walk('Tab');
    expect(there.length).toBeGreaterThan(20);
    const back = await walk('Shift+Tab');
    expect(back.reverse()).toEqual(there);
  });

test('the ring of the focus stands out from the page, 3 to 1, light and dark', async ({ page }) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await open(page, '/house/');
    await page.locator('#house-heartEnd').focus();
    const outline = await focused(page).evaluate((at) => getComputedStyle(at).outline);
    expect(outline).toMatch(/\bsolid [2-9]px$/);
    const contrast = await page.evaluate(() => {
      const light = (colour: string) => {
        const [r, g, b] = colour.match(/[\d.]+/g)!.map((part) => {
          const share = Number(part) / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
      };
      const ring = light(getComputedStyle(document.activeElement!).outlineColor);
      return ['html', '.house-figures', '.figure-of-house input'].map((ground) => {
        const under = light(getComputedStyle(document.querySelector(ground)!).backgroundColor);
        return (Math.max(ring, under) + 0.05) / (Math.min(ring, under) + 0.05);
      });
    });
    for (const ratio of contrast) expect(ratio, colorScheme).toBeGreaterThanOrEqual(3);
  }
});

test('number and choice fields, and what puts a figure back', async ({ page }) => {
  await open(page, '/distilling/work/');
  await tabTo(page, '#house-heartEnd');
  await page.keyboard.press('ArrowUp');
  await expect(focused(page)).toHaveValue('62.1');
  await page.keyboard.press('PageDown');
  await expect(focused(page)).toHaveValue('61.1');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('900');
  await expect(focused(page)).toHaveAttribute('aria-invalid', 'true');
  await expect(focused(page)).toHaveAccessibleDescription(/“900” was given; it can be from/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('60');
  await expect(focused(page)).toHaveAttribute('aria-invalid', 'false');
  await tabTo(page, '.figure-of-house:has(#house-heartEnd) .reset');
  await page.keyboard.press('Enter');
  await expect(page.locator('#house-heartEnd')).toBeFocused();
  await expect(focused(page)).toHaveValue('62');
  await tabTo(page, '#house-foreshotsBy', 'Shift+Tab');
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('#house-foreshotsVolume')).toBeVisible();
});

test('the cuts of the spirit run: arrows, page, Home and End; and a field instead of a drag', async ({
  page,
}) => {
  await open(page, pageWith('SpiritRun'));
  await tabTo(page, '.heart-ends .cut-handle');
  // Right and up raise the figure, as on the front page; End is as high as the house allows.
  const at = async () =>
    Number(/at ([\d.]+) % vol/.exec((await focused(page).getAttribute('aria-valuetext'))!)![1]);
  await page.keyboard.press('ArrowRight');
  expect(await at()).toBeCloseTo(62.1, 5);
  await page.keyboard.press('PageDown');
  expect(await at()).toBeCloseTo(61.1, 5);
  await page.keyboard.press('End');
  const last = await at();
  expect(last).toBeGreaterThan(66);
  await page.keyboard.press('ArrowRight');
  expect(await at()).toBe(last); // and no farther
  await page.keyboard.press('Home');
  expect(await at()).toBeLessThan(40);
  await expect(focused(page)).toHaveAccessibleName('Heart ends');
  // The same without a drag and without the drawing.
  await open(page, '/distilling/work/');
  await page.locator('#house-heartEnd').focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('61');
  await open(page, pageWith('SpiritRun'));
  await expect(page.locator('.heart-ends .cut-handle')).toHaveAttribute('aria-valuetext', /at 61\.0 % vol/);
});

test('rows come and go with the focus beside them', async ({ page }) => {
  await open(page, '/sums/size-curve/');
  for (let i = 0; i < 2; i++) {
    await page.locator('section[aria-labelledby="size-curve-title"] .rows > button').focus();
    await page.keyboard.press('Enter');
    await expect(page.locator(`#size-curve-sieves-${5 + i}-opening`)).toBeFocused();
  }
  await page.locator('section[aria-labelledby="size-curve-title"] .rows li button').last().focus();
  await page.keyboard.press('Space');
  await expect(focused(page)).toHaveText('Row 7 is removed.'); // and the way back is the next stop
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveText('Row 7 is back.');
  await expect(page.locator('#size-curve-sieves-6-opening')).toBeVisible();
});

test('a term says its meaning on focus; Escape puts it away; it stands clear of what it explains', async ({
  page,
}) => {
  for (const width of [320, 390, 800, 1280]) {
    await page.setViewportSize({ width, height: width === 320 ? 256 : 800 });
    await open(page, '/milling/');
    await tabTo(page, '.term-name');
    const says = page.locator('.term:focus-within .term-says');
    await expect(says).toBeVisible();
    const [name, box] = [(await focused(page).boundingBox())!, (await says.boundingBox())!];
    expect(box.y, 'above the top edge').toBeGreaterThanOrEqual(0);
    expect(box.x + box.width, 'over the side').toBeLessThanOrEqual(width);
    expect(name.y + name.height <= box.y + 4 || name.y >= box.y + box.height - 4, 'the word is covered').toBe(
      true,
    );
    await page.keyboard.press('Escape');
    await expect(page.locator('.term-says').first()).toBeHidden();
    await expect(focused(page)).toHaveClass('term-name');
  }
});

test('practice: a question wrong, the next one, another stage', async ({ page }) => {
  await open(page, sumsOf.fermenting);
  await tabTo(page, '#practice-answer');
  await page.keyboard.type('soon');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveAttribute('aria-invalid', 'true');
  await expect(focused(page)).toHaveAccessibleDescription(/“soon” cannot be read/);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('1');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveId('practice-answer'); // a second try
  await expect(focused(page)).toHaveAccessibleDescription(/Try once more/);
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveText('Next question');
  await page.keyboard.press('Enter');
  await expect(page.locator('.mark-of')).toHaveCount(0);
  await expect(focused(page)).toHaveId('practice-answer');
  await tabTo(page, '.asking .actions button:last-child');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveId('practice-answer');
  await tabTo(page, '.record-so-far a[href="#topic=safety"]');
  await page.keyboard.press('Enter');
  await expect(page.locator('.practice h2')).toHaveText('Safety');
  await expect(focused(page)).toHaveId('practice-answer');
});

test('a guide goes from the front page to a named house, a walk that prints, a corrected talk and an answer', async ({ page }) => {
  await page.addInitScript(() => (window.print = () => (document.documentElement.dataset['printed'] = 'yes')));
  await open(page, '/');
  await tabTo(page, '.readers a');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/house\/$/);
  await ready(page);
  await tabTo(page, '#house-name');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('Sallowby');
  await page.keyboard.press('Tab');
  await expect(page.locator('.masthead [data-house-name]')).toHaveText('Sallowby');
  await expect(focused(page)).toHaveCount(1); // what named the house takes no focus away
  for (const [figure, value] of [['maltPerMash', '2000'], ['wortVolume', '10000'], ['heartEnd', '61']] as const) {
    await tabTo(page, `#house-${figure}`);
    await page.keyboard.press('Control+a');
    await page.keyboard.type(value);
    await page.keyboard.press('Tab');
    await expect(focused(page)).toHaveCount(1);
  }
  await page.waitForTimeout(400); // it is written once it has been quiet

  await open(page, '/walk/');
  await tabTo(page, '#walk-text');
  await page.keyboard.insertText(talk);
  await expect(page.locator('.walk-talk')).not.toContainText('Paste your talk first.');
  await tabTo(page, '.walk-rooms button');
  for (let i = 0; i < 100 && (await focused(page).textContent()) !== 'Print the walk'; i++) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('html')).toHaveAttribute('data-printed', 'yes');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(focused(page)).toHaveCount(1);

  await open(page, '/script/');
  await tabTo(page, '#script-text');
  await page.keyboard.insertText(talk);
  await expect(page.locator('.marked .mark').nth(3)).toBeVisible();
  for (const words of ['four and a half per cent', '1.8 tonnes']) {
    const at = await page.locator('.marked .mark', { hasText: words }).first().getAttribute('data-at');
    await tabTo(page, `.marked .mark[data-at='${at}']`);
    await page.keyboard.press('Enter');
    await expect(focused(page)).toHaveId('script-taken');
    for (let i = 0; i < 40 && (await focused(page).textContent()) !== 'Not ours'; i++) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(focused(page)).toContainText(words);
  }

  await tabTo(page, '.masthead a[href$="search/"]', 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/search\/$/);
  await ready(page);
  await tabTo(page, '#search-words');
  await page.keyboard.type('how much malt is in a bottle');
  await expect(page.locator('main')).toContainText(/Malt: [\d.]+\s*kg a bottle/);
}); // prettier-ignore

test('a sheet is made, begun and handed in', async ({ page }) => {
  await open(page, '/sheets/');
  await tabTo(page, '.choices input[type=checkbox]');
  await page.keyboard.press('Space');
  await tabTo(page, '#sheet-count');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('3');
  await expect(page.locator('.preview .questions > li')).toHaveCount(3);
  await expect.poll(() => page.url()).toContain('.3.sheet-4.');
  await page.goto(`/sheet/${new URL(page.url()).hash}`);
  await tabTo(page, '.taking button');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveText('Version 1');
  await tabTo(page, '.taking .actions button');
  await page.keyboard.press('Enter');
  await expect(page.locator('.taking')).toContainText('Press again to hand in all the same.');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveClass('handed-in');
});

test('what a pressed button takes away does not take the focus with it', async ({ page }) => {
  await open(page, '/house/');
  await tabTo(page, '.house-desk .actions button');
  await page.keyboard.press('Enter');
  await tabTo(page, '.shelf button:last-child');
  await page.keyboard.press('Enter');
  await expect(page.locator('.house-desk > .shelf')).toHaveCount(0);
  await expect(focused(page)).toHaveText(/is removed/);

  const thornwath = encodeHouse({
    name: 'Thornwath',
    house: { ...builtInHouse, heartEnd: 58 } as typeof builtInHouse,
  });
  await page.goto(`/milling/${linkOf(thornwath)}`);
  await tabTo(page, '.visit button:last-child');
  await page.keyboard.press('Enter');
  await expect(page.locator('.visit')).toHaveCount(0);
  await expect(focused(page)).toHaveId('main');

  await open(page, '/cross-check/');
  await page.locator('#quoted-add').selectOption('washStrength');
  await expect(focused(page)).toHaveId('quoted-text');
  await page.keyboard.type('9.0, 40 % by and by');
  await expect(page.locator('.marked .mark')).toHaveCount(2);
  await tabTo(page, '.marked .mark:last-of-type');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveId('script-taken');
  await page.keyboard.press('Escape');
  await expect(focused(page)).toHaveText('40 %');
  await page.keyboard.press('Enter');
  await tabTo(page, '.taken button:last-child');
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveText('40 %');
  await page.locator('.cross-check .actions button:last-child').focus();
  await page.keyboard.press('Enter');
  await expect(focused(page)).toHaveId('quoted-text');

  await open(page, pageWith('RoundSpread'));
  await page.getByRole('button', { name: 'Draw 10,000 rounds' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('section:has(> #round-spread-title) tbody tr').first()).toBeVisible({
    timeout: 60_000,
  });
  await expect(focused(page)).toHaveText('Draw 10,000 rounds');
});
