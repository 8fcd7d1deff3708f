// Without a network: every page after one visit; a new build waits for the old pages to close; the app can be installed.
import { readFileSync, readdirSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { workerOf } from '../../src/build/offline.ts';
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
