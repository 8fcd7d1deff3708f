// Takes the README's pictures of the built site: `npm run pictures`, after a build.
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { whileServed } from './bench/served.ts';
import { findChromium } from './chromium.ts';

const desk = { width: 1280, height: 860 };
const phone = { width: 390, height: 860 };
const pictures = [
  { name: 'home', page: '/', size: desk, colorScheme: 'light', at: undefined },
  { name: 'distilling', page: '/distilling/work/', size: desk, colorScheme: 'dark', at: '.run' },
  { name: 'mashing', page: '/sums/conversion/', size: phone, colorScheme: 'light', at: '.calculator' },
  { name: 'cross-check', page: '/cross-check/', size: desk, colorScheme: 'light', at: undefined },
  { name: 'practice', page: '/practice/', size: phone, colorScheme: 'dark', at: undefined },
] as const;

await whileServed(async (address) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  for (const { name, page: where, size, colorScheme, at } of pictures) {
    const page = await browser.newPage({ viewport: size, colorScheme, serviceWorkers: 'block' });
    await page.goto(address + where, { waitUntil: 'networkidle' });
    if (at) {
      await page.locator(at).first().scrollIntoViewIfNeeded();
      await page
        .locator(at)
        .first()
        .evaluate((element) => element.scrollIntoView({ block: 'start' }));
    }
    await page.waitForTimeout(1000); // what comes into sight is laid out and takes over from the built text
    await page.screenshot({ path: join(import.meta.dirname, 'pictures', `${name}.png`) });
    await page.close();
  }
  await browser.close();
});
