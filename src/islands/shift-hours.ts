// Words that the shifts at a tun and at a washback share: the hours of the run, and the stem of a hydrometer for wort.
import { gravity, celsius } from '../core/quantity.ts';
import type { GravitySample } from '../core/shift/gravity-jar.ts';
import { gravityAt20 } from '../core/wort/warm-reading.ts';
import type { Jar, Stem } from './shift-post.ts';

/** Hours and minutes of the run: 38:05. */
export function hoursAt(hours: number): string {
  const minutes = Math.round(hours * 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

/** A hydrometer for wort, marked for each thousandth of gravity. */
export const gravityStem: Stem = { kind: 'gravity', limits: [0.98, 1.12], mark: 0.001, printed: 10, digits: 4, row: 0.01, unit: '', isDenserMore: true }; // prettier-ignore

/** A jar of wort or wash with the table that goes with it. */
export const gravityJar = (sample: GravitySample): Jar => ({
  ...sample,
  at20: (shown) => gravityAt20(gravity(shown), celsius(sample.temperature)),
});

export const SITE = 'The site’s own procedure and those licensed for the work come first.';
