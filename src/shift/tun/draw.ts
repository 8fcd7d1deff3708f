// What a number draws for a shift at a mash tun. How often and how hard has no source: it is an exercise.
import type { TunEvents } from '../../core/shift/tun/rig.ts';
import { seededDrawing, roundedTo } from '../seed.ts';

/** The events of one mash; of a bed that pulls and a request at least one comes. */
export function drawTunEvents(seed: number, mash: number): TunEvents {
  const { random, between } = seededDrawing(seed, 2_000_000 + mash); // not the numbers of the other shifts
  // Everything is drawn whether it is used or not, so that one event does not move the others.
  const grist = roundedTo(between(4, 24), 0);
  const stands = roundedTo(between(0.9, 1.3), 2);
  const converts = roundedTo(between(18, 32), 0);
  const jar = roundedTo(between(20, 36), 1);
  const pulls = { at: roundedTo(between(0.3, 0.7), 2) };
  const asks = { at: roundedTo(between(50, 140), 0) };
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
