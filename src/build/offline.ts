// The worker that keeps the whole handbook on the reader's machine: written at build time with the list of its files.
import { createHash } from 'node:crypto';

const NAME = 'malt-spirit-handbook-';

/** The address at which a file of the site is asked for: a page by its folder. */
const addressOf = (file: string) => file.replace(/(^|\/)index\.html$/, '$1');

/**
 * The worker's script. It takes every file when it is installed, those that did not change from what an older build took,
 * and answers from what it took. A new build is a new worker with a store of its own: it waits until no page of the old
 * one is open, or until a page that has just been opened, and is the only one, asks it to begin; so a page never changes
 * under a reader's hands. Then it removes the old store.
 */
export function workerOf(files: readonly (readonly [file: string, hash: string])[]): string {
  const build = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  const addresses = Object.fromEntries(files.map(([file, hash]) => [addressOf(file) || './', hash]));
  return `// Written at build time: keeps the handbook's files for use without a network.
const SCOPE = registration.scope;
const OWN = '${NAME}' + new URL(SCOPE).pathname + ' '; // two copies of the handbook may share a server
const STORE = OWN + '${build}';
const LIST = 'files-kept'; // address in a store of the list of its files, put there when all of them are
const FILES = ${JSON.stringify(addresses)};
const ownStores = async () => (await caches.keys()).filter((name) => name.startsWith(OWN));
/** For each address, the store of an older build that has the same file. */
async function unchanged() {
  const found = {};
  for (const name of await ownStores()) {
    const store = await caches.open(name);
    const list = (await (await store.match(LIST))?.json()) ?? {};
    for (const file of Object.keys(FILES)) if (list[file] === FILES[file]) found[file] = store;
  }
  return found;
}
addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const older = await unchanged();
      const store = await caches.open(STORE);
      const take = async (file) => {
        const kept = await older[file]?.match(file);
        if (kept) return store.put(file, kept);
        await store.add(new Request(file, { cache: 'no-cache' }));
      };
      await Promise.all(Object.keys(FILES).map(take));
      await store.put(LIST, new Response(JSON.stringify(FILES)));
    })(),
  );
});
addEventListener('activate', (event) => {
  event.waitUntil(
    ownStores().then((names) => Promise.all(names.filter((name) => name !== STORE).map((name) => caches.delete(name)))),
  );
});
addEventListener('message', (event) => {
  event.waitUntil(
    clients.matchAll({ type: 'window', includeUncontrolled: true }).then((all) => {
      const pages = all.filter(({ url }) => url.startsWith(SCOPE));
      if (event.data !== 'begin') return;
      if (pages.length === 1 && pages[0].id === event.source.id) return skipWaiting();
      event.source.postMessage('others');
    }),
  );
});
/** Where a page stands that is asked for without its last slash or by its file: from there its addresses lead on. */
function pageOf(address) {
  const { origin, pathname, search } = new URL(address);
  const path = pathname.replace(/index\\.html$/, '').replace(/([^/])$/, '$1/');
  return path !== pathname && origin + path + search;
}
async function answer(request) {
  const store = await caches.open(STORE);
  const kept = await store.match(request, { ignoreSearch: true });
  const page = request.mode === 'navigate' && !kept && pageOf(request.url);
  return page && (await store.match(page, { ignoreSearch: true })) ? Response.redirect(page) : kept;
}
addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  event.respondWith(
    answer(request)
      .catch(() => undefined) // a store that the browser cannot open
      .then((kept) => kept ?? fetch(request)),
  );
});
`;
}
