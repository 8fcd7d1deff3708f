// How long "Check a talk" keeps the page from answering, with the processor slowed four times: `npm run talk-time`, after a build.
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../chromium.ts';
import { scriptOf } from '../talk/scripts.ts';
import { whileServed } from './served.ts';

const SLOWED = 4;
const LIMIT = 50; // ms: a task from which the browser speaks of a long one
const REST = 1500; // ms without a change after which all is taken to be done
const TALKS = [700, 5000]; // words
const FIELD = '#script-text';

/** A talk of so many words: those that the reader is judged by, one after another, and from the beginning again. */
function talkOf(count: number): string {
  const whole = ['chatty', 'evening', 'old-hand', 'long', 'new-guides', 'visiting-host']
    .map((name) => scriptOf(name).text)
    .join('\n\n');
  const pieces = whole.split(/(?<=\s)(?=\S)/); // a word with the space behind it
  return Array.from({ length: count }, (_, i) => pieces[i % pieces.length]).join('');
}

/** What was noted in a page, ms. */
interface Noted {
  begun: number;
  /** When the frame that shows the paste was over. */
  shown: number;
  /** How long the page does not answer at the paste itself, and at the longest after it. */
  pasted: number;
  longest: number;
  tasks: { at: number; lasted: number }[];
  changed: number;
}
const noted = (): Noted => (globalThis as unknown as { noted: Noted }).noted;

/** Notes in a page how long it does not answer, its long tasks, and when it last changed. */
function note(): void {
  const now = () => performance.now();
  const noted: Noted = { begun: now(), shown: Infinity, pasted: 0, longest: 0, tasks: [], changed: now() };
  Object.assign(globalThis, { noted });
  let last = now();
  setInterval(() => {
    noted.longest = Math.max(noted.longest, now() - last);
    last = now();
  });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      noted.tasks.push({ at: startTime, lasted: duration });
  }).observe({ type: 'longtask' });
  new MutationObserver(() => (noted.changed = now())).observe(document.body, {
    subtree: true,
    childList: true,
    characterData: true,
    attributes: true,
  });
  const rest = () =>
    setTimeout(() => Object.assign(noted, { shown: now(), pasted: noted.longest, longest: 0 }), 20);
  const begin = () => {
    Object.assign(noted, { begun: now(), longest: 0 });
    requestAnimationFrame(() => requestAnimationFrame(rest));
  };
  document.querySelector('textarea')!.addEventListener('beforeinput', begin, { once: true });
}

/** What a page does once a text is put into its field, with the processor slowed. */
async function cost(page: Page, text: string): Promise<Noted> {
  const inspector = await page.context().newCDPSession(page);
  await page.locator(FIELD).focus();
  await page.keyboard.press('Control+End');
  await page.evaluate(note);
  await inspector.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.keyboard.insertText(text);
  let found = await page.evaluate(noted);
  for (let before = -1; before !== found.changed; found = await page.evaluate(noted)) {
    before = found.changed;
    await page.waitForTimeout(REST);
  }
  await inspector.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return found;
}

function inWords({ begun, shown, pasted, longest, tasks, changed }: Noted, empty: Noted): string {
  const after = tasks.filter(({ at }) => at >= shown).map(({ lasted }) => lasted);
  return [
    `to take it in, ${pasted.toFixed(0)} ms (${(pasted / empty.pasted).toFixed(2)} times an empty page’s ${empty.pasted.toFixed(0)} ms)`,
    `after that the page does not answer for ${longest.toFixed(0)} ms at the longest (empty page ${empty.longest.toFixed(0)} ms)`,
    `${after.length} tasks of more than ${LIMIT} ms${after.length > 0 ? `: ${after.map((each) => each.toFixed(0)).join(', ')}` : ''}`,
    `all is there after ${(changed - begun).toFixed(0)} ms`,
  ].join('; ');
}

await whileServed(async (address) => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  const open = () => browser.newPage({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  console.log(`Chromium ${browser.version()}, 390 × 844, processor slowed ${SLOWED} times.`);
  for (const words of TALKS) {
    const talk = talkOf(words);
    const blank = await open();
    await blank.goto(`${address}/no-such-page`);
    await blank.evaluate(() => {
      document.body.innerHTML = '<textarea id="script-text" rows="8"></textarea>';
    });
    const page = await open();
    await page.goto(`${address}/script/`, { waitUntil: 'networkidle' });
    await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
    for (const [what, text] of [
      [`${words} words pasted`, talk],
      ['one word more', ' and 9 casks'],
    ] as const) {
      const least = await cost(blank, text);
      if (!(await page.locator(FIELD).isVisible())) await page.locator('.talk-box > summary').click();
      console.log(`${what}: ${inWords(await cost(page, text), least)}`);
    }
    await blank.close();
    await page.close();
  }
  await browser.close();
});
