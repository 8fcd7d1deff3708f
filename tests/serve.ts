// Serves the built site on this machine: `node tests/serve.ts [port]`; prints the address. Tests and benchmarks serve it themselves, on a port of their own.
import { hash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';

const DIST = join(import.meta.dirname, '..', 'dist');
const POLICY = /<meta http-equiv="content-security-policy"[^>]*>/;
const brotli = promisify(brotliCompress);
const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

/** How the site is served; by itself on a free port, at the root, as it was built. */
export interface Serving {
  /** Where the built site is; by itself `dist`. */
  readonly root?: string;
  /** Hears of every path that is asked for. */
  readonly hear?: (path: string) => void;
  readonly port?: number;
  /** The folders of the server that hold a copy of the site each, as `/` or `/some/folder/`. */
  readonly folders?: readonly string[];
  /** Leaves the pages' policy out. */
  readonly withoutPolicy?: boolean;
}
export interface Served {
  /** Where the site, or its first copy, begins, with its last slash. */
  readonly address: string;
  /** Stops serving. */
  readonly stop: () => void;
}

/** The file that a path under its folder stands for; a folder stands for its page. Nothing outside the site is reached. */
function fileOf(path: string, folders: readonly string[], root: string): string {
  const inside = normalize(join('/', decodeURIComponent(path)));
  const folder = folders.find((each) => inside.startsWith(each));
  if (folder === undefined) throw new RangeError('There is no such page.');
  const file = inside.slice(folder.length - 1);
  return join(root, file.endsWith('/') ? `${file}index.html` : file);
}

/** What was packed before: a suite asks for the same few files thousands of times. */
const packed = new Map<string, Buffer>();
async function pack(plain: Buffer): Promise<Buffer> {
  const name = hash('sha256', plain, 'base64');
  const body = packed.get(name) ?? (await brotli(plain, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }));
  packed.set(name, body);
  return body;
}

/** Answers as a good static server does: packed with Brotli, and kept for a year where the name carries the content. */
async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  { folders = ['/'], root = DIST, hear, withoutPolicy }: Serving,
): Promise<void> {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  hear?.(pathname);
  const file = fileOf(pathname, folders, root);
  const kept = await readFile(file);
  const plain =
    withoutPolicy && extname(file) === '.html' ? Buffer.from(kept.toString().replace(POLICY, '')) : kept;
  const packs = extname(file) !== '.woff2' && /\bbr\b/.test(String(request.headers['accept-encoding'] ?? ''));
  const body = packs ? await pack(plain) : plain;
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

/** Serves the site from this process, so that it stops whenever and however the process ends. */
export function serve(how: Serving = {}): Promise<Served> {
  const server = createServer((request, response) => {
    answer(request, response, how).catch(() =>
      response.writeHead(404, { 'content-type': 'text/plain' }).end('There is no such page.'),
    );
  });
  return new Promise((served, failed) => {
    server.on('error', failed);
    server.listen(how.port ?? 0, '127.0.0.1', () =>
      served({
        address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${how.folders?.[0] ?? '/'}`,
        stop: () => {
          server.close();
          server.closeAllConnections();
        },
      }),
    );
  });
}

if (import.meta.main) {
  const port = Number(process.argv[2] ?? 4321);
  try {
    const { address } = await serve({ port });
    console.log(`The handbook is at ${address} (stop it with Ctrl+C)`);
  } catch (error) {
    console.error(
      `The handbook cannot be served on port ${port}: ${(error as Error).message}. Try another: npm start -- 4322`,
    );
    process.exitCode = 1;
  }
}
