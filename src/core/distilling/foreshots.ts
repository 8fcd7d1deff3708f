// How a house lets its foreshots end: its figures for each way, and what they are in the still.
import { litres20, share, type Quantity } from '../quantity.ts';
import type { ForeshotsEnd } from './cuts.ts';

export interface ForeshotsPlan {
  readonly foreshotsBy: 'share' | 'volume' | 'minutes' | 'strength';
  readonly foreshotsShare: Quantity<'percent'>;
  readonly foreshotsVolume: Quantity<'volume20'>;
  readonly foreshotsMinutes: Quantity<'minutes'>;
  readonly foreshotsFlow: Quantity<'volumeFlow'>;
  readonly foreshotsStrength: Quantity<'strength'>;
}

/** The figures that count for each way; the first is the one that a stillman moves. */
export const foreshotsFigures = {
  share: ['foreshotsShare'],
  volume: ['foreshotsVolume'],
  minutes: ['foreshotsMinutes', 'foreshotsFlow'],
  strength: ['foreshotsStrength'],
} as const satisfies Record<ForeshotsPlan['foreshotsBy'], readonly (keyof ForeshotsPlan)[]>;

/**
 * True for a figure that does not tell of foreshots, or that does as the house ends them.
 * @example foreshotsCount('foreshotsFlow', 'share') // false (a share of the alcohol asks for no flow)
 */
export function foreshotsCount(name: string, by: ForeshotsPlan['foreshotsBy']): boolean {
  const told = Object.values(foreshotsFigures).flat() as readonly string[];
  return !told.includes(name) || (foreshotsFigures[by] as readonly string[]).includes(name);
}

/** Litres at 20 °C that run in so many minutes at so many litres an hour. */
function litresIn(minutes: Quantity<'minutes'>, flow: Quantity<'volumeFlow'>): Quantity<'volume20'> {
  return litres20((minutes / 60) * flow);
}

/**
 * Where the foreshots end, as the still takes it.
 * @example foreshotsEnd({ ...house, foreshotsBy: 'share', foreshotsShare: percent(2) }) // { share: 0.02 } (two in a hundred)
 */
export function foreshotsEnd(plan: ForeshotsPlan): ForeshotsEnd {
  switch (plan.foreshotsBy) {
    case 'share':
      return { share: share(plan.foreshotsShare / 100) };
    case 'volume':
      return { volume: plan.foreshotsVolume };
    case 'minutes':
      return { volume: litresIn(plan.foreshotsMinutes, plan.foreshotsFlow) };
    case 'strength':
      return { strength: plan.foreshotsStrength };
  }
}

/**
 * Litres that are of one run, as those of so many together; foreshots that end otherwise end alike in each.
 * @example ofRuns({ volume: litres20(40) }, quantity('ratio', 2.5)) // { volume: 100 } (2.5 × 40)
 */
export function ofRuns(end: ForeshotsEnd, runs: Quantity<'ratio'>): ForeshotsEnd {
  return typeof end !== 'number' && 'volume' in end ? { volume: litres20(runs * end.volume) } : end;
}
