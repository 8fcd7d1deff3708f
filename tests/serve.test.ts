// The site served for tests: two runs at once, and nothing left behind when a run is stopped, however it is stopped.
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { serve } from './serve.ts';

const here = import.meta.dirname;

/** A run of tests as its runner begins it: serves the site, says where, and goes on until it is stopped. */
async function run(): Promise<{ readonly runner: ChildProcess; readonly addresses: readonly string[] }> {
  const script = `
    await (await import(${JSON.stringify(join(here, 'while-tested.ts'))})).default();
    console.log(process.env.SITE, process.env.SITE_WITHOUT_POLICY);`;
  const runner = spawn(process.execPath, ['--input-type=module', '-e', script], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [said] = (await once(runner.stdout, 'data')) as [Buffer];
  return { runner, addresses: said.toString().trim().split(' ') };
}
const answers = (address: string) =>
  fetch(address).then(
    () => true,
    () => false,
  );

test('two runs go on at once, each on ports of its own, and leave no server when they are stopped', async () => {
  const runs = await Promise.all([run(), run(), run()]);
  const all = runs.flatMap(({ addresses }) => addresses);
  expect(new Set(all).size).toBe(6);
  for (const address of all) expect(await answers(address), address).toBe(true);
  for (const [i, signal] of (['SIGINT', 'SIGTERM', 'SIGKILL'] as const).entries()) {
    const { runner, addresses } = runs[i]!;
    runner.kill(signal);
    await once(runner, 'exit');
    for (const address of addresses) expect(await answers(address), `${signal} ${address}`).toBe(false);
  }
});

test('a site under a folder is reached under it only', async () => {
  const { address, stop } = await serve({ folders: ['/some/folder/'] });
  try {
    expect(new URL(address).pathname).toBe('/some/folder/');
    expect((await fetch(new URL('/package.json', address))).status).toBe(404);
    expect((await fetch(new URL('/', address))).status).toBe(404);
  } finally {
    stop();
  }
});

test('no test and no benchmark names a port', () => {
  for (const file of readdirSync(here, { recursive: true, encoding: 'utf8' }).filter((each) =>
    /(?<!\.test)\.ts$/.test(each),
  ))
    expect(readFileSync(join(here, file), 'utf8'), file).not.toMatch(/\bPORT = [1-9]|127\.0\.0\.1:\d/);
});
