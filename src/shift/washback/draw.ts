// What a number draws for a shift at a washback. How often and how hard has no source: it is an exercise.
import type { WashbackEvents } from '../../core/shift/washback/rig.ts';
import { seededDrawing, roundedTo } from '../seed.ts';

/** The events of one washback of a house that keeps it for so many hours; of trip, fan and request at least one comes. */
export function drawWashbackEvents(seed: number, washback: number, hours: number): WashbackEvents {
  const { random, between } = seededDrawing(seed, 1_000_000 + washback); // not the numbers of the still
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const air = roundedTo(between(8, 22), 0);
  const hasCoil = random() < 0.6;
  const lively = roundedTo(between(1, 1.6), 2);
  const trips = { at: roundedTo(between(14, 19), 1) };
  const fan = { at: roundedTo(between(11, 22), 1), mended: roundedTo(between(1, 2), 1) };
  const asks = { at: roundedTo(between(0.4, 0.8) * hours, 1) };
  const jar = roundedTo(random() < 0.5 ? -between(1, 6) : 0, 1);
  const charger = roundedTo(between(-4, 4), 1);
  const [isTripped, isFan, isAsked] = [random() < 0.5, random() < 0.6, random() < 0.6];
  return {
    air,
    hasCoil,
    lively,
    ...(isTripped && { trips }),
    ...(isFan && { fan }),
    ...((isAsked || !(isTripped || isFan)) && { asks }),
    jar,
    charger,
  };
}
