// How much work a control's move takes before it is seen, with the processor slowed four times: `npm run repaint`, after a build.
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { whileServed } from './served.ts';

const SLOWED = 4;
const MOVES = 40;
const FRAME = 1000 / 60; // ms
/** A control of each sort, with the keys that move it to and fro. */
const controls = [
  {
    what: 'a cut on the curve',
    page: '/distilling/',
    control: '.cut-handle',
    keys: ['ArrowUp', 'ArrowDown'],
  },
  {
    what: 'the gravity',
    page: '/mashing/',
    control: '#house-originalGravity',
    keys: ['ArrowUp', 'ArrowDown'],
  },
  { what: 'a calculator’s slider', page: '/malting/', control: '.slide', keys: ['ArrowRight', 'ArrowLeft'] },
  {
    what: 'a figure on the house page',
    page: '/house/',
    control: '#house-heartEnd',
    keys: ['ArrowUp', 'ArrowDown'],
  },
] as const;

/** Notes, for each key, the work from the key to the end of its handlers and from the frame's beginning to after its paint, ms. */
function watchFrames(): void {
  const frames: number[] = [];
  Object.assign(globalThis, { frames });
  let pressed = 0;
  addEventListener('keydown', () => (pressed = performance.now()), true);
  addEventListener('keydown', () => {
    const handled = performance.now() - pressed;
    requestAnimationFrame(() => {
      const begun = performance.now();
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => frames.push(handled + performance.now() - begun);
      port2.postMessage(undefined);
    });
  });
}

async function work(page: Page, keys: readonly string[]): Promise<readonly number[]> {
  for (let i = 0; i < MOVES; i++) {
    await page.keyboard.press(keys[i % 2]!);
    await page.waitForTimeout(300);
  }
  const frames = await page.evaluate(() => (globalThis as unknown as { frames: number[] }).frames.splice(0));
  return frames.sort((a, b) => a - b);
}

await whileServed(async (address) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(
    `Chromium ${browser.version()}, 390 × 844, processor slowed ${SLOWED} times; a frame is ${FRAME.toFixed(1)} ms.`,
  );
  for (const { what, page: where, control, keys } of controls) {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      serviceWorkers: 'block',
    });
    await page.addInitScript(watchFrames);
    await page.goto(address + where, { waitUntil: 'networkidle' });
    await page.evaluate(() => dispatchEvent(new Event('figures-changed'))); // brings every island, as the first change does
    await page.locator(control).first().scrollIntoViewIfNeeded();
    await page.waitForFunction(
      (selector) => !document.querySelector(selector)!.closest('astro-island')!.hasAttribute('ssr'),
      control,
    );
    await page.locator(control).first().focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press(keys[0]!); // away from the built-in house, of which the page says that it is
    await work(page, keys); // the first moves bring the other islands and warm the code
    const inspector = await page.context().newCDPSession(page);
    await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    const frames = await work(page, keys);
    const [middle, most] = [0.5, 0.95].map((part) => frames[Math.floor(part * (frames.length - 1))]!);
    console.log(
      `${what.padEnd(28)} ${middle!.toFixed(1)} ms of work in the middle, ${most!.toFixed(1)} ms in 19 of 20 moves: ${(most! / FRAME).toFixed(2)} of a frame`,
    );
    await page.close();
  }
  await browser.close();
});
