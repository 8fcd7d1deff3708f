// A screen that is touched: nothing on it tells of keys.
import { expect, test, type Page } from '@playwright/test';
import { open } from './pages.ts';

/** The hints of keys on a page, once there is something that keys do. */
const hints: readonly (readonly [string, (page: Page) => Promise<void>, string])[] = [
  ['/shift/', (page) => page.locator('#shift-begin').click(), '.shift kbd'],
  [
    '/walk/',
    async (page) => {
      await page.locator('#walk-text').fill('Each mash is 1,800 kilos of malt. The wash still is of copper.');
    },
    '#walk-keys',
  ],
];

for (const [address, begin, hint] of hints)
  for (const hasTouch of [true, false])
    test.describe(`${address} ${hasTouch ? 'touched' : 'with a mouse'}`, () => {
      test.use({ hasTouch, isMobile: hasTouch, viewport: { width: 390, height: 844 } });
      test(hasTouch ? 'tells of no keys' : 'tells of them', async ({ page }) => {
        await open(page, address);
        await begin(page);
        await expect(page.locator(hint).first()).toBeAttached();
        await expect(page.locator(hint).first()).toBeVisible({ visible: !hasTouch });
      });
    });
