// What a seed draws for a shift: which events come, when, and how hard. The same seed and round draw the same everywhere.
import type { ShiftEvents } from '../../core/shift/still/rig.ts';
import { seededDrawing, roundedTo } from '../seed.ts';

/**
 * The events of one charge. A charge is always lively when it begins to boil, and of the other three events at least one comes;
 * where none is drawn, it is the request. How often and how hard has no source: it is an exercise.
 */
export function drawStillEvents(seed: number, charge: number): ShiftEvents {
  const { random, between } = seededDrawing(seed, charge);
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const lively = { stands: roundedTo(between(0.6, 0.9), 2), minutes: Math.round(between(12, 25)) };
  const warm = { at: roundedTo(between(0.15, 0.4), 3), rise: roundedTo(between(8, 12), 1) };
  const block = { at: roundedTo(between(0.6, 0.85), 3), open: roundedTo(between(0.1, 0.18), 3) };
  const asks = { at: roundedTo(between(0.45, 0.58), 3) };
  const jar = roundedTo(random() < 0.4 ? between(4, 10) : 0, 1);
  const clears = roundedTo(between(0.8, 1), 2);
  const hazesBelow = roundedTo(between(1, 4), 1);
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
