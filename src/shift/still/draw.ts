// What a seed draws for a shift: which events come, when, and how hard. The same seed and round draw the same everywhere.
import type { ShiftEvents } from '../../core/shift/still/rig.ts';
import { drawing, round } from '../seed.ts';

/**
 * The events of one charge. A charge is always lively when it begins to boil, and of the other three events at least one comes;
 * where none is drawn, it is the request. How often and how hard has no source: it is an exercise.
 */
export function drawEvents(seed: number, charge: number): ShiftEvents {
  const { random, between } = drawing(seed, charge);
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const lively = { stands: round(between(0.6, 0.9), 2), minutes: Math.round(between(12, 25)) };
  const warm = { at: round(between(0.15, 0.4), 3), rise: round(between(8, 12), 1) };
  const block = { at: round(between(0.6, 0.85), 3), open: round(between(0.1, 0.18), 3) };
  const asks = { at: round(between(0.45, 0.58), 3) };
  const jar = round(random() < 0.4 ? between(4, 10) : 0, 1);
  const clears = round(between(0.8, 1), 2);
  const hazesBelow = round(between(1, 4), 1);
  const [isWarm, isBlocked, isAsked] = [random() < 0.6, random() < 0.5, random() < 0.6];
  return {
    lively,
    ...(isWarm && { warm }),
    ...(isBlocked && { block }),
    ...((isAsked || !(isWarm || isBlocked)) && { asks }),
    jar,
    clears,
    hazesBelow,
  };
}
