// What a script quotes: the figure of each quantity as it was settled or proposed, and the first telling of each that can be checked.
import type { Quoted, QuotableName, Said } from '../core/line/quoted.ts';
import type { FigureId } from './figures.ts';
import { quotableOf } from './labels.ts';
import type { ReadQuantity } from './script.ts';
import { NOT_OURS, type Settled } from './settled.ts';

/** The figure that a quantity is taken for: as the reader settled it, or else as it is proposed. */
export function figureIn({ start, figure }: ReadQuantity, settled: Settled): FigureId | undefined {
  const own = settled[start];
  return own === NOT_OURS ? undefined : (own ?? figure);
}

/** A quantity as it is quoted: its value in the figure's own unit. */
export function saidIn({ inFigure, value, range, approximate }: ReadQuantity): Said | undefined {
  const [low, high] = inFigure ?? range ?? (value === undefined ? [] : [value]);
  if (low === undefined) return undefined;
  if (high !== undefined && high !== low)
    return { as: 'range', low: Math.min(low, high), high: Math.max(low, high) };
  return approximate ? { as: 'about', value: low } : { as: 'rounded', value: low };
}

/** The figures of a script that can be checked, each as it is told first. */
export function quotedIn(quantities: readonly ReadQuantity[], settled: Settled): Quoted {
  const found: Partial<Record<QuotableName, Said>> = {};
  for (const quantity of quantities) {
    const figure = figureIn(quantity, settled);
    const name = figure && quotableOf(figure);
    const said = saidIn(quantity);
    if (name && said && !(name in found)) found[name] = said;
  }
  return found;
}
