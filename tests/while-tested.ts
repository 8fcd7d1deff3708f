// Serves the built site while the browser tests run, from the runner itself: on ports of its own, and gone when it is gone.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { serve } from './serve.ts';

const RUNS = join(import.meta.dirname, '..', 'node_modules', '.cache', 'site-tests'); // a folder for each run, named for its process

function isRunning(id: string): boolean {
  try {
    return process.kill(Number(id), 0);
  } catch {
    return false;
  }
}

/** Removes what earlier runs left to be looked at. */
function removeEarlierRuns(): void {
  for (const run of existsSync(RUNS) ? readdirSync(RUNS) : [])
    if (!isRunning(run)) rmSync(join(RUNS, run), { recursive: true, force: true });
}

/** Firefox lets its driver run nothing in a page whose policy forbids evaluation, as the handbook's does. */
export default async function whileTested(): Promise<() => void> {
  removeEarlierRuns();
  const [site, withoutPolicy] = await Promise.all([serve(), serve({ withoutPolicy: true })]);
  process.env['SITE'] = site.address;
  process.env['SITE_WITHOUT_POLICY'] = withoutPolicy.address;
  return () => {
    site.stop();
    withoutPolicy.stop();
  };
}
