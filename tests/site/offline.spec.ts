// Without a network: every page after one visit, however its address is written; a new build loses nothing, and fetches what changed; the app can be installed.
import { cpSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { writeWorker } from '../../src/build/finish.ts';
import { workerOf } from '../../src/build/offline.ts';
import { serve } from '../serve.ts';
import { addresses, open, ready } from './pages.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');

test.use({ serviceWorkers: 'allow' });

/** Waits until the worker has taken the whole book. */
async function kept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller) location.reload();
  });
  await page.waitForLoadState();
}

test('after one visit every page works with no network', async ({ page, context }) => {
  test.setTimeout(300_000); // all pages of the book, one after another
  await open(page, '/');
  await kept(page);
  await context.setOffline(true);
  for (const address of addresses) {
    await page.goto(address);
    await ready(page);
    await expect(page.locator('h1')).toHaveCount(1);
  }
  await page.goto('/search/');
  await ready(page);
  await page.locator('#search-words').fill('lyne arm');
  await expect(page.locator('.found li').first()).toBeVisible();
  await page.goto('/sheets/');
  await ready(page);
  await expect(page.locator('.preview .questions > li')).toHaveCount(10);
});

test('a page is found without a network by its address without the last slash, and by its file', async ({
  page,
  context,
}) => {
  const { address, stop } = await serve({ folders: ['/still/house/'] });
  try {
    await open(page, address);
    await kept(page);
    await context.setOffline(true);
    for (const [asked, shown] of [
      ['malting', 'malting/'],
      ['malting/index.html', 'malting/'],
      ['index.html', ''],
      ['maturing?print#house-yearsInWood', 'maturing/?print#house-yearsInWood'],
      ['search/index.html#for=washback', 'search/#for=washback'],
    ] as const) {
      await page.goto('about:blank');
      await page.goto(address + asked);
      await ready(page);
      expect(page.url()).toBe(address + shown);
      await expect(page.locator('h1')).toHaveCount(1);
      await expect(page.locator('html[data-script=lost]')).toHaveCount(0);
    }
  } finally {
    await context.setOffline(false);
    stop();
  }
});

/** A copy of the site, and a way to correct a page of it. */
function copyOfSite(root: string) {
  cpSync(dist, root, { recursive: true });
  const files = readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== 'offline.js')
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(root.length + 1)
        .replaceAll('\\', '/'),
    );
  return {
    async correct(chapter: string): Promise<void> {
      const page = join(root, chapter, 'index.html');
      writeFileSync(page, readFileSync(page, 'utf8').replace('</h1>', ', corrected</h1>'));
      await writeWorker(root, files);
    },
  };
}
const lookForNew = (page: Page) =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));

test('a corrected book can be taken at once, when no other tab is open', async ({ context }, info) => {
  const root = info.outputPath('site');
  const { correct } = copyOfSite(root);
  const { address, stop } = await serve({ root });
  try {
    const [one, two] = [await context.newPage(), await context.newPage()];
    await open(one!, `${address}malting/`);
    await one!.evaluate(() => navigator.serviceWorker.ready);
    await open(one!, `${address}malting/`); // from now on the worker answers
    await open(two!, `${address}mashing/`);
    const title = await one!.locator('h1').innerText();
    await correct('malting');
    await lookForNew(one!);
    const says = one!.locator('#corrected');
    await says.getByRole('button', { name: 'Open it now' }).click();
    await expect(says).toContainText('Another tab of the handbook is open');
    await expect(one!.locator('h1')).toHaveText(title);
    await two!.close();
    await says.getByRole('button', { name: 'Open it now' }).click();
    await expect(one!.locator('h1')).toHaveText(`${title}, corrected`);
    await expect(one!.locator('#corrected')).toHaveCount(0);
  } finally {
    stop();
    rmSync(root, { recursive: true });
  }
});

test('a corrected book: it is said, only what changed is fetched, and it comes with a page that is opened, never under the hands', async ({
  context,
}, info) => {
  const root = info.outputPath('site');
  const { correct } = copyOfSite(root);
  const asked: string[] = [];
  const { address, stop } = await serve({ root, hear: (path) => asked.push(path) });
  try {
    const [one, two] = [await context.newPage(), await context.newPage()];
    await open(one!, `${address}house/`);
    await one!.evaluate(() => navigator.serviceWorker.ready);
    await open(one!, `${address}house/`); // from now on the worker answers
    await open(two!, `${address}malting/`);
    const title = await two!.locator('h1').innerText();
    await correct('malting');
    asked.length = 0;
    await one!.locator('#house-name').fill('Thornwath'); // half typed
    await lookForNew(one!);
    for (const page of [one, two])
      await expect(page!.locator('#corrected')).toContainText('A corrected book is ready');
    expect(asked.filter((path) => path !== '/offline.js')).toEqual(['/malting/']);
    // While another page is open, it waits, and nothing moves under the hands.
    await two!.reload();
    await ready(two!);
    await expect(two!.locator('#corrected')).toBeAttached();
    await two!.waitForTimeout(500);
    await expect(two!.locator('h1')).toHaveText(title);
    await expect(one!.locator('#house-name')).toHaveValue('Thornwath');
    // The last page stays as it is, too; the next one that is opened is of the corrected book.
    await two!.close();
    await one!.locator('#house-heartEnd').fill('61');
    await one!.waitForTimeout(300);
    await expect(one!.locator('#house-heartEnd')).toHaveValue('61');
    await one!.close();
    const three = await context.newPage();
    await expect
      .poll(async () => {
        await three.goto(`${address}malting/`).catch(() => undefined); // the page may be opening itself anew just then
        return three.locator('h1').innerText();
      })
      .toBe(`${title}, corrected`);
    await open(three, `${address}house/`);
    await expect(three.locator('#house-heartEnd')).toHaveValue('61');
  } finally {
    stop();
    rmSync(root, { recursive: true });
  }
});

test('the book can be installed: manifest, icons, worker', async ({ page, request }) => {
  await page.goto('/');
  const href = await page.locator('link[rel=manifest]').evaluate((link) => (link as HTMLLinkElement).href);
  const manifest = (await (await request.get(href)).json()) as {
    start_url: string;
    display: string;
    name: string;
    icons: { src: string; sizes: string }[];
  };
  expect(manifest).toMatchObject({ display: 'standalone', start_url: './' });
  // An id is taken from the root of the server, so two copies in two folders would be one app; without it each is known by its start.
  expect(manifest).not.toHaveProperty('id');
  expect(manifest.icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
  for (const { src } of manifest.icons)
    expect((await request.get(new URL(src, href).href)).status(), src).toBe(200);
});

test('the worker knows every file of the build', () => {
  const worker = readFileSync(join(dist, 'offline.js'), 'utf8');
  for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || entry.name === 'offline.js') continue;
    const file = join(entry.parentPath, entry.name)
      .slice(dist.length + 1)
      .replaceAll('\\', '/');
    expect(worker, file).toContain(JSON.stringify(file.replace(/(^|\/)index\.html$/, '$1') || './'));
  }
});

/** A small site whose worker and page change with the build. */
function site(
  build: (path: string) => string,
): Promise<{ readonly server: Server; readonly origin: string }> {
  const page = (path: string) =>
    `<!doctype html><title>${build(path)}</title><p>${build(path)}</p><script src="start.js"></script>`;
  const server = createServer((request, response) => {
    const path = new URL(request.url!, 'http://x').pathname;
    const script = path.endsWith('offline.js')
      ? workerOf([
          ['index.html', build(path)],
          ['start.js', '1'],
        ])
      : path.endsWith('start.js')
        ? "navigator.serviceWorker.register('offline.js')"
        : undefined;
    response
      .writeHead(200, { 'content-type': script === undefined ? 'text/html' : 'text/javascript' })
      .end(script ?? page(path));
  });
  return new Promise((done) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      done({ server, origin: `http://127.0.0.1:${typeof address === 'object' ? address!.port : 0}/` });
    });
  });
}

test('a worker of an older build keeps its own pages whole until they are closed, then the new one takes over', async ({
  context,
}) => {
  let build = 'first';
  const { server, origin } = await site(() => build);
  try {
    const page = await context.newPage();
    await page.goto(origin);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload(); // from now on the worker answers
    build = 'second';
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect
      .poll(() =>
        page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting)),
      )
      .toBe(true);
    await page.reload();
    await expect(page.locator('p')).toHaveText('first');
    await page.goto('about:blank');
    await page.waitForTimeout(500);
    await page.goto(origin);
    await expect
      .poll(async () => {
        await page.reload();
        return page.locator('p').innerText();
      })
      .toBe('second');
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
  } finally {
    server.close();
  }
});

test('two copies of the handbook on one server keep a store each', async ({ context }) => {
  const { server, origin } = await site((path) => path.split('/')[1]!);
  try {
    for (const copy of ['one', 'two']) {
      const page = await context.newPage();
      await page.goto(`${origin}${copy}/`);
      await page.evaluate(() => navigator.serviceWorker.ready);
      await expect
        .poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state))
        .toBe('activated');
    }
    const page = context.pages().at(-1)!;
    const kept = await page.evaluate(async (address) => {
      const stores = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
      return Promise.all(
        ['one/', 'two/'].map(
          async (copy) =>
            (await Promise.all(stores.map((store) => store.match(address + copy)))).filter(Boolean).length,
        ),
      );
    }, origin);
    expect(kept).toEqual([1, 1]);
  } finally {
    server.close();
  }
});
