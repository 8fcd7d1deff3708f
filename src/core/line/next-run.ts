// What new cuts make of the charge that stands: the next run, before feints that have changed come round.
import { cutRun, type RunParts } from '../distilling/cuts.ts';
import { ofRuns } from '../distilling/foreshots.ts';
import { spiritCuts } from '../distilling/plan.ts';
import type { Portion } from '../quantity.ts';
import type { Refusal } from '../refusal.ts';
import type { House } from './house.ts';
import type { Line } from './line.ts';

/**
 * The spirit run of a line in balance, cut as another house cuts it. Refuses cuts that this charge never reaches.
 * @example nextRun(line, { ...house, heartEnd: strength(96) }) // refuses: is never reached (no pot still gives it)
 */
export function nextRun({ round }: Line, house: House): RunParts<Portion> | Refusal {
  const cuts = spiritCuts(house);
  return cutRun(round.spiritRun, { ...cuts, foreshots: ofRuns(cuts.foreshots, round.runs) });
}
