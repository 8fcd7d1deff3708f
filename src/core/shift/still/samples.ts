// What is done with a sample from the safe: a hydrometer read in it, and water put to it to see whether it hazes.
import { bracketedRoot } from '../../numerics/root.ts';
import { celsius, strength, type Quantity } from '../../quantity.ts';
import { refuse, type Refusal } from '../../refusal.ts';
import { densityAtMark } from '../../spirit/hydrometer.ts';
import { densityFromStrength, strengthFromDensity } from '../../spirit/strength.ts';
import { atSafe, type Rig } from './rig.ts';
import type { ShiftState } from './state.ts';
import { litresOver } from './step.ts';

export const DILUTED_TO = 45.7; // % vol to which a sample is let down for the haze test; from memory
const READ_TO = 40; // °C, to which the densities of OIML R 22 go

/**
 * Strength at 20 °C, % vol, of a spirit in which the glass stands at the mark `shown`, % vol, at a temperature of 0–40 °C.
 * A mark that stands lower than the glass would in water at that temperature counts as 0, one higher than in alcohol as 100.
 * @example correctedTo20(strength(60), celsius(20)) // 60.00 (at the glass’s own temperature)
 */
export function correctedTo20(
  shown: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
): Quantity<'strength'> {
  const there = densityAtMark(densityFromStrength(shown, celsius(20)), temperature);
  if (there >= densityFromStrength(strength(0), temperature)) return strength(0);
  if (there <= densityFromStrength(strength(100), temperature)) return strength(100);
  return strengthFromDensity(there, temperature);
}

/**
 * The mark, % vol, at which the glass stands in a spirit of a true strength at a temperature of 0–40 °C; undoes `correctedTo20`.
 * @example standsAt(strength(60), celsius(20)) // 60.00 (at the glass’s own temperature)
 */
export function standsAt(
  was: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
): Quantity<'strength'> {
  const there = densityFromStrength(was, temperature);
  const miss = (mark: number) =>
    densityAtMark(densityFromStrength(strength(mark), celsius(20)), temperature) - there;
  if (miss(0) < 0) return strength(0);
  return strength(miss(100) > 0 ? 100 : bracketedRoot(miss, 0, 100));
}

export interface Sample {
  readonly was: Quantity<'strength'>;
  readonly stands: Quantity<'strength'>;
  readonly temperature: Quantity<'temperature'>;
}

/**
 * A sample from the safe as it runs. Refuses when nothing runs, and a sample that is too warm to read.
 * @example sampleOfSafe({ events: { jar: 0 } }, { flow: 0 }) // refuses: Nothing runs (no flow, no sample)
 */
export function sampleOfSafe({ events }: Rig, { flow, vapour, safe }: ShiftState): Sample | Refusal {
  if (flow <= 0) return refuse('Nothing runs, so there is nothing to read.');
  const temperature = celsius(safe + events.jar);
  if (temperature > READ_TO)
    return refuse('The sample is too warm to read. Put on more water, or take steam off, and try again.');
  const was = atSafe(vapour);
  return { was, stands: standsAt(was, temperature), temperature };
}

/**
 * True while a sample, let down with water, hazes: in the foreshots, and again in the feints. That it does is common practice; where, the shift draws.
 * @example isHazy({ events: { clears: 1, hazesBelow: 1 }, goal: { foreshots: { volume: 10 } }, setup: { cuts: { heart: 60 } } }, { foreshots: { ethanol: 0, water: 0 }, heart: { ethanol: 0, water: 0 }, feints: { ethanol: 0, water: 0 }, lost: { ethanol: 0, water: 0 }, vapour: 0.7 }) // true (the foreshots have only begun)
 */
export function isHazy(rig: Rig, state: ShiftState): boolean {
  const { events, goal, setup } = rig;
  return (
    litresOver(state) < events.clears * goal.foreshots.volume ||
    atSafe(state.vapour) < setup.cuts.heart - events.hazesBelow
  );
}
