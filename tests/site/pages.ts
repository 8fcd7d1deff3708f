// The pages of the built site, and what a test watches for on each.
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Page } from '@playwright/test';
import axe from 'axe-core';
import { quotableFigures, type QuotableName } from '../../src/core/cross-check/quoted.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');

/** Every page of the built site, as an address: "/", "/malting/", … */
export const addresses = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map(
    (file) =>
      `/${file
        .split(sep)
        .join('/')
        .replace(/index\.html$/, '')}`,
  )
  .sort();

/** The first page that has an island: wherever a part of the book is moved to, it is tried there. */
export function pageWith(island: string): string {
  const found = addresses.find((address) =>
    readFileSync(join(dist, address, 'index.html'), 'utf8').includes(`component-url="./${island}.`),
  );
  if (found === undefined) throw new RangeError(`No page has ${island}.`);
  return found;
}

/** The pages that each chapter has. */
export const parts = ['', 'work/', 'safe/', 'check/'] as const;
export const chapters = ['malting', 'milling', 'mashing', 'fermenting', 'distilling', 'maturing'] as const;

/** Collects what goes wrong on a page: console errors, exceptions, requests to anywhere else. */
export function watch(page: Page): string[] {
  const wrong: string[] = [];
  page.on('console', (message) => message.type() === 'error' && wrong.push(message.text().slice(0, 300)));
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (!['127.0.0.1', ''].includes(url.hostname)) wrong.push(`a request to ${url.hostname}`);
  });
  return wrong;
}

/** Waits until every island of the page has taken over from the built text. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

/** Adds up, in the page itself, how much its parts shift while it loads: an init script. */
export function addUpShifts(): void {
  new PerformanceObserver((list) => {
    const entries = list.getEntries() as unknown as readonly { value: number }[];
    const { dataset } = document.documentElement;
    dataset['shift'] = String(entries.reduce((all, { value }) => all + value, Number(dataset['shift'] ?? 0)));
  }).observe({ type: 'layout-shift', buffered: true });
}
export const shiftOf = async (page: Page) =>
  Number(await page.evaluate(() => document.documentElement.dataset['shift'] ?? '0'));

/** Opens a page and waits until it is ready. */
export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await ready(page);
}

/** What breaks the accessibility rules on a page as it stands, or in one part of it, in light and dark: each rule with its first places. */
export async function broken(page: Page, part = 'html'): Promise<readonly string[]> {
  const found: string[] = [];
  await page.evaluate(axe.source);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const violations = await page.evaluate(
      async ([within, onlyColours]) => {
        const result = await (window as unknown as { axe: typeof axe }).axe.run(within, {
          resultTypes: ['violations'], // what passes is not told place by place, which takes most of the time
          ...(onlyColours ? { runOnly: ['color-contrast'] } : {}),
        });
        return result.violations.map(({ id, nodes }) => ({
          id,
          places: nodes.slice(0, 3).map(({ target }) => target.join(' ')),
        }));
      },
      [part, colorScheme === 'dark'] as const, // only colours differ between the schemes
    );
    for (const { id, places } of violations) found.push(`${colorScheme}: ${id} at ${places.join(', ')}`);
  }
  return found;
}

/** Practice of one kind of a topic whose every draw is answered by a number: a topic alone may ask for a choice first. */
export const sumsOf = {
  mashing: '/practice/#kinds=strike-water',
  fermenting: '/practice/#kinds=carbon-dioxide',
} as const;

/** Quoted figures of which not all can be true, as a reader types them. */
export const contradiction: Readonly<Record<string, string>> = {
  maltPerMash: '9,400',
  wortVolume: '42,500',
  washStrength: '9.0',
  heartBegins: '74',
  heartEnds: '62.5',
  heartVolume: 'exactly 7,000',
};

/** Types quoted figures into the cross-check. */
export async function quote(page: Page, figures: Readonly<Record<string, string>>): Promise<void> {
  const lines = Object.entries(figures).map(
    ([name, text]) => `${quotableFigures[name as QuotableName].label}: ${text}`,
  );
  await page.locator('#quoted-text').fill(lines.join('\n'));
}
