// Whether the starch swells: where malts begin to gelatinise, by two published laboratories.
import { percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Lowest and highest temperature, °C, at which a malt of the set began to gelatinise. */
export const ONSETS = {
  'patindol-2012': [58.5, 64.3], // 25 malts, by calorimetry; Patindol et al. 2012, abstract
  'rittenauer-2021': [54.5, 57.1], // small mashes; Rittenauer et al. 2021, abstract
} as const;

/**
 * Part of a laboratory’s malts, %, whose starch has begun to swell at a temperature of 0–100 °C, if their onsets
 * are spread evenly from the lowest to the highest. The spread is an assumption; the two ends are published.
 * @example maltsBegun('rittenauer-2021', celsius(55.8)) // 50.0 (half way from 54.5 to 57.1)
 */
export function maltsBegun(
  laboratory: keyof typeof ONSETS,
  temperature: Quantity<'temperature'>,
): Quantity<'percent'> {
  within('The temperature, °C,', temperature, 0, 100);
  const [low, high] = ONSETS[laboratory];
  return percent(100 * Math.min(1, Math.max(0, (temperature - low) / (high - low))));
}
