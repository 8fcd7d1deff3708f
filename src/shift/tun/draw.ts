// What a number draws for a shift at a mash tun. How often and how hard has no source: it is an exercise.
import type { TunEvents } from '../../core/shift/tun/rig.ts';
import { drawing, round } from '../seed.ts';

/** The events of one mash; of a bed that pulls and a request at least one comes. */
export function drawEvents(seed: number, mash: number): TunEvents {
  const { random, between } = drawing(seed, 2_000_000 + mash); // not the numbers of the other shifts
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const grist = round(between(4, 24), 0);
  const stands = round(between(0.9, 1.3), 2);
  const converts = round(between(18, 32), 0);
  const jar = round(between(20, 36), 1);
  const pulls = { at: round(between(0.3, 0.7), 2) };
  const asks = { at: round(between(50, 140), 0) };
  const [isPulled, isAsked] = [random() < 0.6, random() < 0.6];
  return {
    grist,
    stands,
    converts,
    jar,
    ...(isPulled && { pulls }),
    ...((isAsked || !isPulled) && { asks }),
  };
}
