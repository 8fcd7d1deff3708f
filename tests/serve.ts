// Serves the built site on this machine: `node tests/serve.ts [port]`; prints the address. With `without-policy` it leaves the pages' policy out.
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';

const port = Number(process.argv[2] ?? 4321);
const POLICY =
  process.argv[3] === 'without-policy' ? /<meta http-equiv="content-security-policy"[^>]*>/ : undefined;
const brotli = promisify(brotliCompress);
const root = join(import.meta.dirname, '..', 'dist');
const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

/** The file that a path of the site stands for; a folder stands for its page. Nothing outside the site is reached. */
function fileOf(path: string): string {
  const inside = normalize(join('/', decodeURIComponent(path)));
  return join(root, inside.endsWith('/') ? `${inside}index.html` : inside);
}

/** Answers as a good static server does: packed with Brotli, and kept for a year where the name carries the content. */
async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  const file = fileOf(pathname);
  const kept = await readFile(file);
  const plain = POLICY && extname(file) === '.html' ? Buffer.from(kept.toString().replace(POLICY, '')) : kept;
  const packs = extname(file) !== '.woff2' && /\bbr\b/.test(String(request.headers['accept-encoding'] ?? ''));
  const body = packs ? await brotli(plain, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }) : plain;
  response
    .writeHead(200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      'content-length': body.length,
      'cache-control': pathname.includes('/_astro/') ? 'public, max-age=31536000, immutable' : 'no-cache',
      vary: 'accept-encoding',
      ...(packs ? { 'content-encoding': 'br' } : {}),
    })
    .end(body);
}

const server = createServer((request, response) => {
  answer(request, response).catch(() =>
    response.writeHead(404, { 'content-type': 'text/plain' }).end('There is no such page.'),
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
