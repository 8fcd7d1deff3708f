// How much work a control's move takes before it is seen, with the processor slowed four times: `npm run repaint`, after a build.
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { costs, watchMoves, type Cost } from './moves.ts';
import { whileServed } from './served.ts';

const SLOWED = 4;
const FRAME = 1000 / 60; // ms
const HELD = 33; // ms between the repeats of a key that is held
const DRAGGED = 16; // ms between the moves of a pointer
const RESTED = 300; // ms between presses of a key, each from rest
const MOVES = 120; // of a gesture
const STRIDE = 6; // px by which a pointer moves
const MOST = 1.6; // a held move may take so many times the least that one takes on that page, with nothing that follows it

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

const press =
  (page: Page, keys: readonly string[], apart: number): Gesture =>
  async () => {
    for (let i = 0; i < MOVES; i++) {
      await page.keyboard.press(keys[i % 2]!);
      await page.waitForTimeout(apart);
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

const whole: (cost: Cost) => number = ([taken, frame]) => taken + frame;

/** The cost in the middle and in 19 of 20 moves. */
function middleAndMost(all: readonly Cost[], of: (cost: Cost) => number): readonly number[] {
  const sorted = all.map(of).sort((a, b) => a - b);
  return [0.5, 0.95].map((part) => sorted[Math.floor(part * (sorted.length - 1))]!);
}
function inWords(all: readonly Cost[], of: (cost: Cost) => number): string {
  const [middle, most] = middleAndMost(all, of);
  return `${middle!.toFixed(1)} and ${most!.toFixed(1)} ms (${(most! / FRAME).toFixed(2)} of a frame)`;
}

/** Measures gestures and prints each, as ratios to the `least` of its page and to an `empty` page too; returns the middle cost of each. */
async function measure(
  page: Page,
  gestures: Readonly<Record<string, Gesture>>,
  least: Readonly<Record<string, number>> = {},
  empty: Readonly<Record<string, number>> = {},
): Promise<Readonly<Record<string, number>>> {
  const middles: Record<string, number> = {};
  const inspector = await page.context().newCDPSession(page);
  for (const [how, gesture] of Object.entries(gestures)) {
    await gesture(); // the first moves bring the other islands and warm the code
    await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await costs(page);
    await gesture();
    const all = await costs(page);
    await inspector.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    middles[how] = middleAndMost(all, whole)[0]!;
    const times = (of: number | undefined) => (of === undefined ? '' : (middles[how]! / of).toFixed(2));
    const ratio =
      least[how] && `${times(least[how])} times its page, ${times(empty[how])} times an empty one: `;
    console.log(
      `  ${how.padEnd(8)} ${ratio ?? ''}${inWords(all, whole)}: taken in ${inWords(all, ([taken]) => taken)}, the frame ${inWords(all, ([, frame]) => frame)}`,
    );
  }
  return middles;
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
    `Chromium ${browser.version()}, 390 × 844, processor slowed ${SLOWED} times; a frame is ${FRAME.toFixed(1)} ms.`,
  );
  console.log(
    `From a move’s first event to after its paint, in the middle and in 19 of 20 moves: a key held (one in ${HELD} ms), pressed from rest (one in ${RESTED} ms), a pointer dragged (one in ${DRAGGED} ms).`,
  );
  const open = async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
    await watchMoves(page);
    return page;
  };
  const pressed = (page: Page, keys: readonly string[]) => ({
    pressed: press(page, keys, RESTED),
    held: press(page, keys, HELD),
  });

  const leastOf = async (where: string, control?: string) => {
    const page = await open();
    await page.route(/\.js$/, (route) => route.abort());
    await page.goto(address + where, { waitUntil: 'load' });
    await page.evaluate(fillWithLeast, control);
    const least = await measure(page, pressed(page, ['ArrowUp', 'ArrowDown']));
    await page.close();
    return least;
  };
  console.log('an empty page');
  const empty = await leastOf('/no-such-page');

  for (const each of controls.filter(({ what }) => what.includes(process.argv[2] ?? ''))) {
    console.log(each.what);
    console.log(' its page with nothing that follows');
    const least = await leastOf(each.page, each.control);
    const page = await open();
    await ready(page, address, each);
    console.log(' as it is');
    const middles = await measure(
      page,
      {
        ...pressed(page, each.keys),
        ...(each.isDragged ? { dragged: drag(page, each.control) } : {}),
      },
      least,
      empty,
    );
    if (middles['held']! > MOST * least['held']!) {
      console.log(`  over: a held move may take ${MOST} times the least of its page`);
      process.exitCode = 1;
    }
    await page.close();
  }
  await browser.close();
});
