// Measures how well the cross-check finds one wrong figure in a thousand houses, and keeps the table for the accuracy page.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sizes, tally } from './core/planted.ts';

const HOUSES = 1000;
const SEED = 20_000;
const FIGURES = 12;

const rows = (['exact', 'about'] as const).flatMap((as) =>
  sizes.map((by) => ({ as, by, ...tally(SEED, HOUSES, by, as, FIGURES) })),
);
const kept = join(import.meta.dirname, 'planted-error.json');
writeFileSync(kept, `${JSON.stringify({ houses: HOUSES, figures: FIGURES, seed: SEED, rows }, null, 1)}\n`);
console.table(rows);
