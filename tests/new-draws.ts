// A share of what is drawn in each run of the tests is new every day: it is named by the day, and what failed names it.
import { seedOf } from '../src/exercises/seed.ts';

/** The day, or what `NEW_DRAWS` says, to draw again what another day drew. */
export const newDraws = process.env['NEW_DRAWS'] ?? new Date().toISOString().slice(0, 10);

/** A number by which that day's inputs are generated. */
export const newSeed = seedOf(newDraws) | 0;

/** Does what uses new draws; a failure says how to have them again. */
export function withNewDraws(check: () => void): void {
  try {
    check();
  } catch (problem) {
    const said = problem instanceof Error ? problem.message : String(problem);
    throw new Error(`With new draws; NEW_DRAWS=${newDraws} has them again. ${said}`, { cause: problem });
  }
}
