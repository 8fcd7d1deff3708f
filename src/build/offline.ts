// The worker that keeps the whole handbook on the reader's machine: written at build time with the list of its files.
import { createHash } from 'node:crypto';

const NAME = 'malt-spirit-handbook-';

/** The address at which a file of the site is asked for: a page by its folder. */
const addressOf = (file: string) => file.replace(/(^|\/)index\.html$/, '$1');

/**
 * The worker's script. It takes every file when it is installed, and answers from what it took. A new build is
 * a new worker with a store of its own: it waits until no page of the old one is open, so that a page never
 * changes under a reader's hands, and then removes the old store.
 */
export function workerOf(files: readonly (readonly [file: string, hash: string])[]): string {
  const build = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  const addresses = files.map(([file]) => addressOf(file) || './');
  return `// Written at build time: keeps the handbook's files for use without a network.
const OWN = '${NAME}' + new URL(registration.scope).pathname + ' '; // two copies of the handbook may share a server
const STORE = OWN + '${build}';
const FILES = ${JSON.stringify(addresses)};
addEventListener('install', (event) => {
  event.waitUntil(
    caches.open(STORE).then((store) => store.addAll(FILES.map((file) => new Request(file, { cache: 'no-cache' })))),
  );
});
addEventListener('activate', (event) => {
  event.waitUntil(
    caches.keys().then((names) =>
      Promise.all(names.filter((name) => name.startsWith(OWN) && name !== STORE).map((name) => caches.delete(name))),
    ),
  );
});
addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return;
  event.respondWith(
    caches
      .open(STORE)
      .then((store) => store.match(request, { ignoreSearch: true }))
      .catch(() => undefined) // a store that the browser cannot open
      .then((kept) => kept ?? fetch(request)),
  );
});
`;
}
