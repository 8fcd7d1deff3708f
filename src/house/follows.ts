// What follows from one figure of the house: how the main figures move when it moves one step.
import { figureIds, figureTable, headOf, pathsOf } from '../core/figures/index.ts';
import { formatNumber } from '../core/format.ts';
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { numberFigures, type NumberName } from './figures.ts';
import { figureText, figureValue } from './prose.ts';

/** The figures looked at, in the order of the line, with how a sentence names them. */
const watched = figureIds
  .filter((id) => figureTable[id].watched)
  .map((id) => [pathsOf(id)[0]!, headOf(id)[0]!.toLowerCase() + headOf(id).slice(1)] as const);

export interface Consequence {
  readonly what: string;
  readonly from: string;
  readonly to: string;
}

const LEAST = 1e-6; // relative change below which a figure has not moved

/** One step up from where a figure stands, or down at the end of its range, and what moves with it. */
export function followsFrom(
  house: House,
  before: Line,
  name: NumberName,
): { readonly step: string; readonly moved: readonly Consequence[]; readonly refused?: string } {
  const { range, step, kind } = numberFigures[name];
  const value = house[name] + step <= range[1] ? house[name] + step : house[name] - step;
  const after = line({ ...house, [name]: value });
  const shown = formatNumber(value, kind === 'gravity' ? 3 : (String(step).split('.')[1]?.length ?? 0));
  if ('refused' in after) return { step: shown, moved: [], refused: after.refused };
  const moved = watched.flatMap(([path, what]) => {
    const [a, b] = [figureValue(before, path), figureValue(after, path)];
    if (Math.abs(b - a) <= LEAST * Math.abs(a)) return [];
    const digits = Math.min(3, Math.max(0, 1 - Math.floor(Math.log10(Math.abs(b - a)))));
    const [from, to] = [before, after].map((at) => figureText(at, path, 'mash', digits)) as [string, string];
    return from === to ? [] : [{ what, from, to }];
  });
  return { step: shown, moved };
}
