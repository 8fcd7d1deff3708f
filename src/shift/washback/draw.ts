// What a number draws for a shift at a washback. How often and how hard has no source: it is an exercise.
import type { WashbackEvents } from '../../core/shift/washback/rig.ts';
import { drawing, round } from '../seed.ts';

/** The events of one washback of a house that keeps it for so many hours; of trip, fan and request at least one comes. */
export function drawEvents(seed: number, washback: number, hours: number): WashbackEvents {
  const { random, between } = drawing(seed, 1_000_000 + washback); // not the numbers of the still
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const air = round(between(8, 22), 0);
  const hasCoil = random() < 0.6;
  const lively = round(between(1, 1.6), 2);
  const trips = { at: round(between(14, 19), 1) };
  const fan = { at: round(between(11, 22), 1), mended: round(between(1, 2), 1) };
  const asks = { at: round(between(0.4, 0.8) * hours, 1) };
  const jar = round(random() < 0.5 ? -between(1, 6) : 0, 1);
  const charger = round(between(-4, 4), 1);
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
