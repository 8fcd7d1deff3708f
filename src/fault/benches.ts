// All benches of the fault desk, in the order of the work.
import type { Bench } from './bench.ts';
import { casks } from './casks.ts';
import { mash } from './mash.ts';
import { still } from './still.ts';
import { washback } from './washback.ts';

export const benches: readonly Bench[] = [mash, washback, still, casks] as unknown as readonly Bench[];
