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

/** What a move costs, ms: to take it in, from the key to the end of its handlers; and the frame that shows it, from its beginning to after its paint. */
type Cost = readonly [taken: number, frame: number];

/** What TypeScript’s own library does not know yet: tasks with a priority (WICG, Prioritized Task Scheduling). */
interface Scheduling {
  readonly scheduler: {
    postTask(task: () => unknown, options: { readonly priority: 'user-blocking' }): Promise<unknown>;
  };
}

/** Notes the cost of each key. */
function watchFrames(): void {
  const frames: Cost[] = [];
  Object.assign(globalThis, { frames });
  let [pressed, handled] = [0, 0];
  addEventListener('keydown', () => (pressed = performance.now()), true);
  addEventListener('input', () => (handled = performance.now() - pressed)); // a slider moves after its key
  addEventListener('keydown', () => {
    handled = performance.now() - pressed;
    requestAnimationFrame(() => {
      const begun = performance.now();
      // Right after the paint, before anything else that waits.
      const noted = () => frames.push([handled, performance.now() - begun]);
      void (globalThis as unknown as Scheduling).scheduler.postTask(noted, { priority: 'user-blocking' });
    });
  });
}

async function costs(page: Page, keys: readonly string[]): Promise<readonly Cost[]> {
  for (let i = 0; i < MOVES; i++) {
    await page.keyboard.press(keys[i % 2]!);
    await page.waitForTimeout(300);
  }
  return page.evaluate(() => (globalThis as unknown as { frames: Cost[] }).frames.splice(0));
}

/** The cost in the middle and in 19 of 20 moves. */
function inWords(all: readonly Cost[], of: (cost: Cost) => number): string {
  const sorted = all.map(of).sort((a, b) => a - b);
  const [middle, most] = [0.5, 0.95].map((part) => sorted[Math.floor(part * (sorted.length - 1))]!);
  return `${middle!.toFixed(1)} and ${most!.toFixed(1)} ms (${(most! / FRAME).toFixed(2)} of a frame)`;
}

async function measure(page: Page, what: string, keys: readonly string[]): Promise<void> {
  await costs(page, keys); // the first moves bring the other islands and warm the code
  const inspector = await page.context().newCDPSession(page);
  await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const all = await costs(page, keys);
  console.log(
    `${what.padEnd(28)} taken in ${inWords(all, ([taken]) => taken)}, the frame ${inWords(all, ([, frame]) => frame)}, together ${inWords(all, ([taken, frame]) => taken + frame)}`,
  );
}

/** A page with nothing but a field and a word that follows it: the least that a move costs in this browser on this machine. */
function fillBlankPage(): void {
  document.body.innerHTML = '<input value="0"><p>0</p>';
  const [field, word] = [document.querySelector('input')!, document.querySelector('p')!.firstChild!];
  let moves = 0;
  field.addEventListener('keydown', (event) => {
    event.preventDefault();
    moves++;
    field.value = String(moves % 2);
    word.nodeValue = String(moves);
  });
  field.focus();
}

await whileServed(async (address) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(
    `Chromium ${browser.version()}, 390 × 844, processor slowed ${SLOWED} times; a frame is ${FRAME.toFixed(1)} ms. Each pair: in the middle and in 19 of 20 moves.`,
  );
  const blank = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await blank.addInitScript(watchFrames);
  await blank.goto(`${address}/no-such-page`);
  await blank.evaluate(fillBlankPage);
  await measure(blank, 'nothing but a field', ['ArrowUp', 'ArrowDown']);
  await blank.close();

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
    await measure(page, what, keys);
    await page.close();
  }
  await browser.close();
});
