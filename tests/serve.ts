// Serves the built site on this machine: `node tests/serve.ts [port]`; prints the address.
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const port = Number(process.argv[2] ?? 4321);
const root = join(import.meta.dirname, '..', 'dist');
const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

/** The file that a path of the site stands for; a folder stands for its page. */
function fileOf(path: string): string {
  const inside = normalize(decodeURIComponent(path)).replace(/^(\.\.[/\\])+/, '');
  return join(root, inside.endsWith('/') ? `${inside}index.html` : inside);
}

const server = createServer((request, response) => {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  void readFile(fileOf(pathname)).then(
    (body) =>
      response
        .writeHead(200, { 'content-type': types[extname(fileOf(pathname))] ?? 'application/octet-stream' })
        .end(body),
    () => response.writeHead(404, { 'content-type': 'text/plain' }).end('There is no such page.'),
  );
});
server.on('error', (error) => {
  console.error(
    `The handbook cannot be served on port ${port}: ${error.message}. Try another: npm start -- 4322`,
  );
  process.exitCode = 1;
});
server.listen(port, '127.0.0.1', () =>
  console.log(`The handbook is at http://127.0.0.1:${port}/ (stop it with Ctrl+C)`),
);
