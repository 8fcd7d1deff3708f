// How much work a control's move takes, by the main thread's own time: `npm run repaint`, after a build.
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { whileServed } from './served.ts';

const HELD = 33; // ms between the repeats of a key that is held
const DRAGGED = 16; // ms between the moves of a pointer
const MOVES = 120; // of a gesture
const STRIDE = 6; // px by which a pointer moves
const MOST = 2.2; // a held move may take so many times the least that one takes on that page, with nothing that follows it

/** A control of each sort, with the keys that move it to and fro; and whether a pointer drags it. */
interface Control {
  readonly what: string;
  readonly page: string;
  readonly control: string;
  readonly keys: readonly [string, string];
  readonly isDragged?: boolean;
}
const controls: readonly Control[] = [
  {
    what: 'a handle of the front page’s line',
    page: '/',
    control: '[data-handle="heart-ends"]',
    keys: ['ArrowUp', 'ArrowDown'],
    isDragged: true,
  },
  {
    what: 'a cut on the curve',
    page: '/distilling/work/',
    control: '.cut-handle',
    keys: ['ArrowUp', 'ArrowDown'],
    isDragged: true,
  },
  {
    what: 'the gravity',
    page: '/mashing/work/',
    control: '#house-originalGravity',
    keys: ['ArrowUp', 'ArrowDown'],
  },
  {
    what: 'a calculator’s slider',
    page: '/sums/predicted-spirit-yield/',
    control: '.slide',
    keys: ['ArrowRight', 'ArrowLeft'],
    isDragged: true,
  },
  {
    what: 'a figure on the house page',
    page: '/house/',
    control: '#house-heartEnd',
    keys: ['ArrowUp', 'ArrowDown'],
  },
];

type Gesture = () => Promise<void>;

const hold =
  (page: Page, keys: readonly string[]): Gesture =>
  async () => {
    for (let i = 0; i < MOVES; i++) {
      await page.keyboard.press(keys[i % 2]!);
      await page.waitForTimeout(HELD);
    }
  };

/** Drags a control from where it stands to the right and back, again and again. */
const drag =
  (page: Page, control: string): Gesture =>
  async () => {
    const handle = page.locator(control).first();
    const { x, y, width, height } = (await handle.boundingBox())!;
    const [from, across] = [x + width / 2, y + height / 2];
    await page.mouse.move(from, across);
    await page.mouse.down();
    for (let i = 0; i < MOVES; i++) {
      await page.mouse.move(from + STRIDE * (10 - Math.abs((i % 20) - 10)), across);
      await page.waitForTimeout(DRAGGED);
    }
    await page.mouse.up();
  };

/** The main thread's own time for one move, ms: what other programs do at the same time is not in it. */
async function timeOf(page: Page, gesture: Gesture): Promise<number> {
  const inspector = await page.context().newCDPSession(page);
  await inspector.send('Performance.enable', { timeDomain: 'threadTicks' });
  const busy = async () => {
    const { metrics } = await inspector.send('Performance.getMetrics');
    return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value;
  };
  await gesture(); // the first moves bring the other islands and warm the code
  const before = await busy();
  await gesture();
  const taken = (await busy()) - before;
  await inspector.detach();
  return taken / MOVES;
}

/**
 * Puts a field and a word into a page without scripts, where a control stands, or into an empty page: the word follows the
 * field, and nothing else moves. The least that a move can cost in this browser on this machine, on such a page.
 */
function fillWithLeast(control?: string): void {
  const place =
    control === undefined
      ? document.body
      : document.querySelector(control)!.closest('section, figure, main')!;
  if (control === undefined) document.body.textContent = '';
  const [field, line] = [document.createElement('input'), document.createElement('p')];
  field.value = line.textContent = '0';
  place.prepend(field, line);
  let moves = 0;
  field.addEventListener('keydown', (event) => {
    event.preventDefault();
    moves++;
    field.value = String(moves % 2);
    line.firstChild!.nodeValue = String(moves);
  });
  field.focus();
}

/** Opens a page with all its islands, on another house than the built-in one, of which the page says that it is. */
async function ready(page: Page, address: string, { page: where, control, keys }: Control): Promise<void> {
  await page.goto(address + where, { waitUntil: 'networkidle' });
  await page.locator(control).first().scrollIntoViewIfNeeded();
  await page.locator(control).first().focus(); // the front page's line comes with the first hand on it
  await page.waitForFunction(
    (selector) => !document.querySelector(selector)!.closest('astro-island')!.hasAttribute('ssr'),
    control,
  );
  await page.locator(control).first().focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press(keys[0]);
}

await whileServed(async (address) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(
    `Chromium ${browser.version()}, 390 × 844: the main thread’s own time for one of ${MOVES} moves, by a key held (one in ${HELD} ms) and a pointer dragged (one in ${DRAGGED} ms).`,
  );
  const open = () => browser.newPage({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const leastOf = async (where: string, control?: string) => {
    const page = await open();
    await page.route(/\.js$/, (route) => route.abort());
    await page.goto(address + where, { waitUntil: 'load' });
    await page.evaluate(fillWithLeast, control);
    const least = await timeOf(page, hold(page, ['ArrowUp', 'ArrowDown']));
    await page.close();
    return least;
  };
  const empty = await leastOf('/no-such-page');
  console.log(`an empty page: ${empty.toFixed(1)} ms`);

  for (const each of controls.filter(({ what }) => what.includes(process.argv[2] ?? ''))) {
    const least = await leastOf(each.page, each.control);
    const page = await open();
    await ready(page, address, each);
    const held = await timeOf(page, hold(page, each.keys));
    const dragged = each.isDragged ? await timeOf(page, drag(page, each.control)) : undefined;
    await page.close();
    const isOver = held > MOST * least;
    if (isOver) process.exitCode = 1;
    console.log(
      `${each.what}: held ${held.toFixed(1)} ms, ${(held / least).toFixed(2)} times the least of its page (${least.toFixed(1)} ms), ${(held / empty).toFixed(2)} times an empty one${dragged === undefined ? '' : `; dragged ${dragged.toFixed(1)} ms`}${isOver ? ` — over ${MOST} times the least` : ''}`,
    );
  }
  await browser.close();
});
