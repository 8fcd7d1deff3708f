// The built site, served while something is measured on it.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

const PORT = 4398;

/** Serves the site, does the work with its address, and stops serving. */
export async function whileServed(work: (address: string) => Promise<void>): Promise<void> {
  const server = spawn(process.execPath, [join(import.meta.dirname, '..', 'serve.ts'), String(PORT)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await once(server.stdout, 'data'); // it prints its address once it listens
  try {
    await work(`http://127.0.0.1:${PORT}`);
  } finally {
    server.kill();
  }
}
