// What follows from one figure of the house: how the main figures move when it moves one step.
import { formatNumber } from '../core/format.ts';
import { changeHouse } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { numberFigures, type NumberName } from './figures.ts';
import { lineIn } from './line-of.ts';
import { movedBetween, type MovedFigure } from './moved.ts';

export interface Consequences {
  /** The value looked at: one step up from where the figure stands, or down at the end of its range. */
  readonly step: string;
  readonly moved: readonly MovedFigure[];
  readonly refused?: string;
}

/** What moves when one figure moves one step. */
export function followsFrom(house: House, before: Line, name: NumberName): Consequences {
  const { range, step, kind } = numberFigures[name];
  const value = house[name] + step <= range[1] ? house[name] + step : house[name] - step;
  const shown = formatNumber(value, kind === 'gravity' ? 3 : (String(step).split('.')[1]?.length ?? 0));
  const changed = changeHouse(house, name, value as never);
  const after = isRefusal(changed) ? changed : lineIn(changed.house);
  if (isRefusal(after)) return { step: shown, moved: [], refused: after.refused };
  return { step: shown, moved: movedBetween(before, after) };
}
