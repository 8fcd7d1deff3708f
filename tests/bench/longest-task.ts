// The longest task of a page while it opens, by the main thread's own time: what other programs do at the same time is not in it.
import type { Browser, CDPSession } from '@playwright/test';

/** An event of the browser's tracing, as far as it is read here. */
interface Traced {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** The thread's own time, µs. */
  readonly tdur?: number;
}

async function tracedWhile(inspector: CDPSession, work: () => Promise<void>): Promise<readonly Traced[]> {
  const events: Traced[] = [];
  inspector.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Traced[])));
  await inspector.send('Tracing.start', { categories: 'toplevel,devtools.timeline', transferMode: 'ReportEvents' }); // prettier-ignore
  await work();
  const isComplete = new Promise((resolve) => inspector.once('Tracing.tracingComplete', resolve));
  await inspector.send('Tracing.end');
  await isComplete;
  return events;
}

/** Milliseconds of the longest task between a page's first byte and its rest, on a line as slow as given. */
export async function longestTask(
  browser: Browser,
  address: string,
  line: { latency: number; downloadThroughput: number; uploadThroughput: number },
): Promise<number> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const inspector = await context.newCDPSession(page);
  await inspector.send('Network.enable');
  await inspector.send('Network.emulateNetworkConditions', { offline: false, ...line });
  const events = await tracedWhile(inspector, async () => {
    await page.goto(address, { waitUntil: 'networkidle' });
    await page.waitForTimeout(500);
  });
  await context.close();
  const thread = ({ pid, tid }: Traced) => `${pid}/${tid}`;
  const main = new Set(events.filter(({ name }) => name === 'ParseHTML').map(thread));
  const tasks = events.filter((event) => event.name.includes('RunTask') && main.has(thread(event)));
  if (tasks.length === 0) throw new Error(`The browser told of no task at ${address}.`);
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}
